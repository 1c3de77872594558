package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * What is remembered between two looks never differs from what a first look at the same design
 * finds.
 */
class FindingsFollowEditsTest {
  private static final List<String> TYPED =
      List.of("", "1", "0", "7", "250", "1e9", "-3", "0.4", "a lot", "clay", "turf", "1", "12 m");

  @Property(tries = 8)
  void findingsAreThoseOfADesignLookedAtAnew(@ForAll long seed, @ForAll Sample sample) {
    Random random = new Random(seed);
    Design design = sample.design(UnitSystem.US);
    design.findings();
    List<Edit> done = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      change(design, random, done);
      if (random.nextInt(3) > 0) {
        assertThat(lines(design))
            .as("after %s", done)
            .isEqualTo(lines(Design.of(design.book().snapshot())));
      }
    }
  }

  private static List<String> lines(Design design) {
    return design.findings().stream()
        .map(
            found ->
                found.severity()
                    + " "
                    + found.line()
                    + " "
                    + found.remedy().map(remedy -> remedy.name()).orElse(""))
        .toList();
  }

  private static void change(Design design, Random random, List<Edit> done) {
    int kind = random.nextInt(12);
    if (kind == 0) {
      design.book().undo();
    } else if (kind == 1) {
      design.book().redo();
    } else {
      edit(design, random, kind)
          .ifPresent(
              edit -> {
                done.add(edit);
                design.book().perform(edit);
              });
    }
  }

  private static Optional<Edit> edit(Design design, Random random, int kind) {
    Edits edits = design.edits();
    List<TableDefinition> tables = design.book().schema().tables();
    TableDefinition table = tables.get(random.nextInt(tables.size()));
    int rows = design.book().rows(table.id());
    List<Column> inputs = table.columns().stream().filter(table::takesEntries).toList();
    if (rows == 0 || inputs.isEmpty()) {
      return Optional.empty();
    }
    int row = random.nextInt(rows);
    boolean free = table.rows() instanceof TableDefinition.Rows.Free;
    if (free && kind == 2) {
      return Optional.of(edits.removed(table.id(), row, 1));
    }
    if (free && kind == 3) {
      return Optional.of(edits.duplicated(table.id(), List.of(row)));
    }
    if (kind == 4) {
      boolean us = design.book().system() == UnitSystem.US;
      return Optional.of(edits.switched(us ? UnitSystem.SI : UnitSystem.US));
    }
    Column column = inputs.get(random.nextInt(kind == 5 ? 1 : inputs.size()));
    List<String> choices = design.book().choices(column);
    String text =
        choices.isEmpty() || random.nextInt(4) == 0
            ? TYPED.get(random.nextInt(TYPED.size()))
            : choices.get(random.nextInt(choices.size()));
    return Optional.of(edits.typed(column.reference(), row, text));
  }
}
