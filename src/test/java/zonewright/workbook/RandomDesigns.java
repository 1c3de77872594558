package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import zonewright.design.Design;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * Designs filled by chance, from the declared columns alone: mostly good entries, some blank, some
 * out of range, some no numbers, some words that no list holds. New columns come in by themselves.
 */
public final class RandomDesigns {
  private final Random random;
  private final Design design;
  private final UnitSystem system;

  /** How many entries of a hundred are spoilt. */
  private final int spoilt;

  /** Nobody types more than six decimals; spreadsheets drop more where they compare as text. */
  private static final double TYPED_PLACES = 1e6;

  private RandomDesigns(UnitSystem system, long seed, int spoilt) {
    this.random = new Random(seed);
    this.design = Design.blank(system);
    this.system = system;
    this.spoilt = spoilt;
  }

  /**
   * Returns a design.
   *
   * @param spoilt how many entries of a hundred are no good
   */
  public static Design of(UnitSystem system, int rows, long seed, int spoilt) {
    RandomDesigns maker = new RandomDesigns(system, seed, spoilt);
    for (TableDefinition table : maker.design.book().schema().tables()) {
      if (table.rows() instanceof TableDefinition.Rows.Free) {
        maker.free(table, rows);
      } else {
        maker.fixed(table);
      }
    }
    return maker.design;
  }

  private void free(TableDefinition table, int rows) {
    int fresh = Math.max(0, rows - design.book().rows(table.id()));
    if (table.columns().size() < 10) {
      fresh = Math.min(fresh, 3);
    }
    List<List<Entry>> made = new ArrayList<>();
    for (int i = 0; i < fresh; i++) {
      List<Entry> entries = new ArrayList<>();
      for (Column column : table.columns()) {
        boolean key = entries.isEmpty();
        entries.add(key ? new Entry.Words("row " + (i + 1)) : entry(column));
      }
      made.add(entries);
    }
    design.book().start(design.edits().appended(table.id(), made));
  }

  private void fixed(TableDefinition table) {
    List<Edit> parts = new ArrayList<>();
    for (int row = 0; row < design.book().rows(table.id()); row++) {
      for (Column column : table.inputs()) {
        boolean key = !table.single() && column.equals(table.columns().get(0));
        if (!key && design.book().entry(column.reference(), row) instanceof Entry.Blank) {
          parts.add(design.edits().set(column.reference(), row, entry(column)));
        }
      }
    }
    design.book().start(new Edit.Several("chance", parts));
  }

  private Entry entry(Column column) {
    boolean defaulted = column.role() == Column.Role.DEFAULTED;
    if (!column.takesEntries() || (defaulted && random.nextInt(100) < 70)) {
      return Entry.BLANK;
    }
    boolean bad = random.nextInt(100) < spoilt;
    if (bad && random.nextInt(3) == 0) {
      return Entry.BLANK;
    }
    return switch (column.content()) {
      case WORDS -> new Entry.Words("words " + random.nextInt(9));
      case CHOICE -> new Entry.Words(bad ? "unheard of" : chosen(design.book().choices(column)));
      case NUMBER -> bad ? badNumber(column) : new Entry.Figure(number(column));
    };
  }

  private String chosen(List<String> words) {
    String word = words.isEmpty() ? "" : words.get(random.nextInt(words.size()));
    return word.isBlank() ? "unheard of" : word;
  }

  private Entry badNumber(Column column) {
    return random.nextInt(3) == 0
        ? new Entry.Unreadable("about " + random.nextInt(99), "is no number")
        : new Entry.Figure(
            column.bounds().map(bounds -> bounds.low(column.kind(), system)).orElse(0.0) - 1.5);
  }

  /** A number within the range; more often a small one where the range is wide. */
  private double number(Column column) {
    Bounds bounds = column.bounds().orElse(Bounds.above(0, 100, column.kind().unit(system)));
    double low = bounds.low(column.kind(), system);
    double high = bounds.high(column.kind(), system);
    double part = random.nextDouble();
    double value = low + (high - low) * (high - low > 1000 ? Math.pow(part, 6) : part);
    double typed = Math.rint(value * TYPED_PLACES) / TYPED_PLACES;
    boolean within = typed >= low && typed <= high;
    return bounds.whole() ? Math.max(Math.ceil(low), Math.rint(value)) : within ? typed : value;
  }
}
