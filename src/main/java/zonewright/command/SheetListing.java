package zonewright.command;

import java.util.List;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.CsvText;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** The cells of one sheet as text, for people and for other programs. */
final class SheetListing {
  private final Book book;
  private final String table;

  SheetListing(Book book, String table) {
    this.book = book;
    this.table = table;
  }

  /** Returns a cell as it stands in the grid; a question mark where a number is lacking. */
  String shown(Column column, int row) {
    Outcome outcome = book.outcome(column.reference(), row);
    if (outcome instanceof Outcome.Amount amount) {
      return column.shown(amount.value(), book.system());
    }
    return outcome.lacks() ? "?" : words(outcome);
  }

  /**
   * Returns a cell for other programs: numbers in full, money as money, nothing where a number is
   * lacking.
   */
  String plain(Column column, int row) {
    Outcome outcome = book.outcome(column.reference(), row);
    if (outcome instanceof Outcome.Amount amount && column.wordsFor(amount.value()).isPresent()) {
      return column.shown(amount.value(), book.system());
    }
    if (outcome instanceof Outcome.Amount amount && column.kind().onCalendar()) {
      return QuantityText.typed(amount.value(), column.kind());
    }
    if (outcome instanceof Outcome.Amount amount && column.kind() == QuantityKind.MONEY) {
      return QuantityText.fixed(amount.value(), column.decimals(book.system(), amount.value()));
    }
    if (outcome instanceof Outcome.Amount amount) {
      double value =
          column.kind().percent()
              ? Units.ONE.convert(amount.value(), Units.PERCENT)
              : amount.value();
      return QuantityText.exact(value);
    }
    return outcome.lacks() ? "" : CsvText.harmless(words(outcome));
  }

  private static String words(Outcome outcome) {
    return outcome instanceof Outcome.NotApplicable not ? not.shown() : outcome.text();
  }

  /** Returns how many cells of some columns lack a number they should have. */
  long lacking(List<Column> columns) {
    long count = 0;
    for (Column column : columns) {
      for (int row = 0; row < book.rows(table); row++) {
        count += book.outcome(column.reference(), row).lacks() ? 1 : 0;
      }
    }
    return count;
  }

  /** Says whether a column holds nothing in any row. */
  boolean isBlank(Column column) {
    for (int row = 0; row < book.rows(table); row++) {
      if (!(book.outcome(column.reference(), row) instanceof Outcome.Blank)) {
        return false;
      }
    }
    return true;
  }

  /** Returns a column's heading with the unit of every number in it, percent included. */
  static String plainHeading(Column column, UnitSystem system) {
    return CsvText.harmless(
        column.kind().percent() ? column.name() + " (%)" : column.heading(system));
  }

  /** Returns the sheet as comma-separated lines, headings first. */
  String csv(List<Column> columns) {
    StringBuilder text = new StringBuilder();
    text.append(
        CsvText.line(columns.stream().map(column -> plainHeading(column, book.system())).toList()));
    for (int row = 0; row < book.rows(table); row++) {
      int at = row;
      text.append(CsvText.line(columns.stream().map(column -> plain(column, at)).toList()));
    }
    return text.toString();
  }

  /** Returns the columns side by side, a line for each row. */
  List<String> lines(List<Column> columns) {
    TextTable text = new TextTable();
    for (Column column : columns) {
      text.column(column.heading(book.system()), column.content() == Column.Content.NUMBER);
    }
    for (int row = 0; row < book.rows(table); row++) {
      int at = row;
      text.row(columns.stream().map(column -> shown(column, at)).toList());
    }
    return text.lines();
  }

  /** Returns the columns of a one-row sheet below each other, numbers with their units. */
  List<String> facts(List<Column> columns) {
    int width = columns.stream().mapToInt(column -> column.name().length()).max().orElse(0);
    return columns.stream()
        .map(
            column -> {
              Outcome outcome = book.outcome(column.reference(), 0);
              String value =
                  outcome instanceof Outcome.Blank ? "" : book.shown(column.reference(), outcome);
              return (column.name() + " ".repeat(width + 2 - column.name().length()) + value)
                  .stripTrailing();
            })
        .toList();
  }
}
