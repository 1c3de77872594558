package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.ColumnFormulas;

/** Reads what was typed into a cell; what is no number where one belongs is kept as it stands. */
final class CellReader {
  private final UnitSystem system;
  private final Notes notes;
  private final ColumnFormulas formulas;

  /** Which formulas were found to be defaults; a column has few that differ. */
  private final Map<Column, Map<String, Boolean>> defaults = new HashMap<>();

  CellReader(UnitSystem system, Notes notes, ColumnFormulas formulas) {
    this.system = system;
    this.notes = notes;
    this.formulas = formulas;
  }

  /**
   * Reads a cell.
   *
   * @param cell the cell; null where nothing stands in it
   * @param unit the unit the file says its numbers have
   */
  Entry read(Column column, SheetCell cell, Unit unit) {
    if (cell == null) {
      return Entry.BLANK;
    }
    return switch (cell.type()) {
      case NUMERIC -> numeric(column, cell, unit);
      case STRING -> text(column, cell, unit);
      case BOOLEAN -> odd(column, cell, cell.text(), "a truth value");
      case ERROR -> odd(column, cell, cell.text(), "an error");
      case FORMULA -> formula(column, cell);
      default -> Entry.BLANK;
    };
  }

  private Entry numeric(Column column, SheetCell cell, Unit unit) {
    boolean calendar = column.content() == Column.Content.NUMBER && column.kind().onCalendar();
    if (cell.dated() && !calendar) {
      return odd(column, cell, cell.text(), "a date");
    }
    if (column.content() == Column.Content.NUMBER) {
      return new Entry.Figure(unit.convert(cell.number(), column.kind().unit(system)));
    }
    return Entry.words(QuantityText.exact(cell.number()));
  }

  private Entry text(Column column, SheetCell cell, Unit unit) {
    String text = cell.text();
    if (column.content() != Column.Content.NUMBER) {
      return Entry.words(text);
    }
    UnitSystem other = system == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    boolean inOther =
        !unit.equals(column.kind().unit(system)) && unit.equals(column.kind().unit(other));
    Entry entry = Entries.read(column, text, inOther ? other : system);
    if (inOther) {
      entry = Entries.converted(column, entry, other, system);
    }
    if (entry instanceof Entry.Figure figure) {
      note(
          column,
          cell,
          "the text “%s” was read as %s"
              .formatted(text.strip(), QuantityText.typed(figure.value(), column.kind())));
    } else if (entry instanceof Entry.Unreadable unreadable) {
      note(column, cell, unreadable.problem() + "; kept as it stands");
    }
    return entry;
  }

  private Entry odd(Column column, SheetCell cell, String text, String what) {
    note(column, cell, "holds %s, %s; kept as words".formatted(what, text));
    return column.content() == Column.Content.NUMBER
        ? new Entry.Unreadable(
            text,
            "“%s” is %s; write %s such as %s"
                .formatted(text, what, column.kind().wordsWithArticle(), column.kind().example()))
        : Entry.words(text);
  }

  private Entry formula(Column column, SheetCell cell) {
    boolean ours =
        column.role() == Column.Role.DEFAULTED
            && defaults
                .computeIfAbsent(column, any -> new HashMap<>())
                .computeIfAbsent(cell.text(), text -> isDefault(column, text));
    return ours ? Entry.BLANK : odd(column, cell, "=" + cell.text(), "a formula");
  }

  /** Says whether a formula can be taken for the default of a column. */
  private boolean isDefault(Column column, String text) {
    String own = formulas.text(column);
    boolean sum = text.matches("[\\d\\s.,+\\-*/^()%eE]+");
    return same(own, text) || !sum || (fixed(own) && fixed(text));
  }

  /** A fixed default, which other programs may write with fewer digits. */
  private static boolean fixed(String formula) {
    return formula.matches("\\(?-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?\\)?");
  }

  private static boolean same(String one, String other) {
    return one.replaceAll("\\s", "").equalsIgnoreCase(other.replaceAll("\\s", ""));
  }

  private void note(Column column, SheetCell cell, String sentence) {
    String place = Notes.cell(cell.row(), cell.column());
    notes.add(cell.sheet(), place, column.name() + ": " + sentence);
  }
}
