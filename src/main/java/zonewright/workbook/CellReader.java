package zonewright.workbook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Reads what was typed into a cell; what is no number where one belongs is kept as it stands. */
final class CellReader {
  private final UnitSystem system;
  private final Notes notes;

  /** A sum of figures, not one figure alone: nothing that we write for a usual value. */
  private static final Pattern OWN_SUM =
      Pattern.compile("(?!\\(?-?[\\d.]+([eE][-+]?\\d+)?\\)?$)[\\d\\s.,+\\-*/^()%eE]+");

  private static final Pattern IN_PERCENT = Pattern.compile("\\((.*)\\)%");

  CellReader(UnitSystem system, Notes notes) {
    this.system = system;
    this.notes = notes;
  }

  /**
   * Reads a cell.
   *
   * @param cell the cell; null where nothing stands in it
   * @param unit the unit the file says its numbers have
   * @param usual whether our formula for what is usual stands there where nothing was typed
   */
  Entry read(Column column, SheetCell cell, Unit unit, boolean usual) {
    if (cell == null) {
      return Entry.BLANK;
    }
    return switch (cell.type()) {
      case NUMERIC -> numeric(column, cell, unit);
      case STRING -> text(column, cell, unit);
      case BOOLEAN -> odd(column, cell, cell.text(), "a truth value");
      case ERROR -> odd(column, cell, cell.text(), "an error");
      case FORMULA ->
          usual && !OWN_SUM.matcher(cell.text()).matches()
              ? Entry.BLANK
              : formula(column, cell, unit);
      default -> Entry.BLANK;
    };
  }

  private Entry numeric(Column column, SheetCell cell, Unit unit) {
    boolean calendar = column.content() == Column.Content.NUMBER && column.kind().onCalendar();
    if (cell.dated() && !calendar) {
      return odd(column, cell, cell.text(), "a date");
    }
    if (column.content() == Column.Content.NUMBER) {
      return figure(column, cell, unit);
    }
    return Entry.words(QuantityText.exact(cell.number()));
  }

  /** What is shown in percent is a ratio where its cell shows the sign %, else a percentage. */
  private Entry figure(Column column, SheetCell cell, Unit unit) {
    boolean percentage =
        column.kind().percent()
            && unit.equals(Units.ONE)
            && cell.format() != SheetCell.Format.PERCENT;
    Unit of = percentage ? Units.PERCENT : unit;
    return new Entry.Figure(of.convert(cell.number(), column.kind().unit(system)));
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

  private Entry formula(Column column, SheetCell cell, Unit unit) {
    if (column.content() == Column.Content.NUMBER && !Double.isNaN(cell.number())) {
      Optional<Entry> sum = sum(column, cell, unit);
      if (sum.isPresent()) {
        return sum.get();
      }
      note(
          column,
          cell,
          "the formula =%s of yours was taken as %s"
              .formatted(cell.text(), QuantityText.exact(cell.number())));
      return figure(column, cell, unit);
    }
    return odd(column, cell, "=" + cell.text(), "a formula");
  }

  /** Returns a formula where it is arithmetic with figures alone. */
  static Optional<String> arithmetic(String formula) {
    return Optional.of(formula).filter(text -> OWN_SUM.matcher(text).matches());
  }

  /** Returns arithmetic that stands in a cell as it was typed, or could have been here. */
  private Optional<Entry> sum(Column column, SheetCell cell, Unit unit) {
    String text = cell.text().strip();
    Matcher percent = IN_PERCENT.matcher(text);
    String typed = !column.kind().percent() ? text : percent.matches() ? percent.group(1) : "";
    if (!unit.equals(column.kind().unit(system)) || !OWN_SUM.matcher(typed).matches()) {
      return Optional.empty();
    }
    return Optional.of(Entries.read(column, "=" + typed, system))
        .filter(
            entry ->
                entry instanceof Entry.Figure figure
                    && figure.sum().equals("=" + typed)
                    && Math.abs(figure.value() - cell.number()) <= 1e-12 * Math.abs(cell.number()));
  }

  private void note(Column column, SheetCell cell, String sentence) {
    String place = Notes.cell(cell.row(), cell.column());
    notes.add(cell.sheet(), place, column.name() + ": " + sentence);
  }
}
