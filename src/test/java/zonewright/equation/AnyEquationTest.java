package zonewright.equation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.design.Synonyms;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;

/** Whatever is typed as an equation is either calculated or answered with a sentence. */
@Tag(Counts.LONG)
class AnyEquationTest {
  private static final long SEED = 11;
  private static final List<String> KINDS =
      List.of("plain number", "flow", "area", "time in minutes", "volume", "money");

  @Test
  void whateverIsTypedIsUnderstoodOrAnsweredWithASentence() {
    Random random = new Random(SEED);
    int understood = 0;
    int count = Counts.of(400, 10000);
    List<KnownColumns> sheets = List.of(on(Sheets.SITE), on(Sheets.ZONES), on(Sheets.MONTHS));
    for (int i = 0; i < count; i++) {
      KnownColumns known = sheets.get(i % sheets.size());
      String typed = new RandomEquations(random, known).next();
      QuantityKind kind = KindWords.named(KINDS.get(random.nextInt(KINDS.size()))).orElseThrow();
      EquationReading any = EquationReader.read(typed, known);
      if (any instanceof EquationReading.Understood one) {
        understood++;
        assertThat(one.formula().dimension()).as(typed).isNotNull();
      }
      judge(typed, any);
      judge(typed, EquationReader.read(typed, known, kind));
    }
    assertThat(understood).as("understood of %s", count).isGreaterThan(count / 20);
  }

  private static void judge(String typed, EquationReading reading) {
    if (reading instanceof EquationReading.Problem problem) {
      assertThat(problem.sentence()).as(typed).isNotBlank().doesNotContain("null", "Exception");
      assertThat(problem.from()).as(typed).isBetween(0, typed.length());
      assertThat(problem.to()).as(typed).isBetween(problem.from(), typed.length());
    }
  }

  private static KnownColumns on(String sheet) {
    return new KnownColumns(IrrigationSheets.schema(), Map.of(), sheet, Synonyms::of);
  }

  private static Entry words(String typed) {
    return typed.isBlank() ? Entry.BLANK : new Entry.Words(typed);
  }

  /** In a design they become columns, findings and workbook formulas, and never an exception. */
  @Test
  void aDesignTakesAnyEquations() {
    Random random = new Random(SEED);
    RandomEquations equations = new RandomEquations(random, on(Sheets.ZONES));
    for (int round = 0; round < Counts.of(1, 40); round++) {
      Design design = Demo.libraryGarden(UnitSystem.US);
      List<List<Entry>> rows = new ArrayList<>();
      for (int i = 0; i < 100; i++) {
        String equation = equations.next();
        // some name each other, in whatever circles
        String more = i % 3 == 0 ? "[Own %s] * 1".formatted(random.nextInt(100)) : equation;
        rows.add(
            List.of(
                new Entry.Words("Own " + i),
                new Entry.Words(i % 5 == 0 ? "Site" : "Zones"),
                new Entry.Words(KINDS.get(random.nextInt(KINDS.size()))),
                words(more),
                Entry.BLANK,
                words(equations.next()),
                Entry.BLANK,
                Entry.BLANK));
      }
      Book book = design.book();
      book.perform(design.edits().appended(Sheets.OWN_COLUMNS, rows));
      design.findings().forEach(finding -> assertThat(finding.sentence()).isNotBlank());
      assertThat(WorkbookLayout.of(book)).isNotNull();
      book.undo();
      assertThat(book.schema()).isSameAs(IrrigationSheets.schema());
    }
  }
}
