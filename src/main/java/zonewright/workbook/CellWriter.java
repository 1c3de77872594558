package zonewright.workbook;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.ColumnFormulas;
import zonewright.workbook.kit.Look;
import zonewright.workbook.kit.Styles;

/** Puts what a book holds into cells: entries as they are, formulas with the result they have. */
final class CellWriter {
  private final Book book;
  private final UnitSystem system;
  private final ColumnFormulas formulas;
  private final Styles styles;

  CellWriter(Book book, ColumnFormulas formulas, Styles styles) {
    this.book = book;
    this.system = book.system();
    this.formulas = formulas;
    this.styles = styles;
  }

  /**
   * Writes one cell of a book; {@code row} may be one past the end, for a row with nothing in it.
   */
  void write(XSSFRow target, int position, Column column, int row) {
    XSSFCell cell = target.createCell(position);
    Look look = given(column) ? Look.CALCULATED : look(column);
    cell.setCellStyle(styles.of(look, Styles.format(column, system)));
    boolean there = row < book.rows(column.reference().table());
    Entry entry =
        there && column.takesEntries() ? book.entry(column.reference(), row) : Entry.BLANK;
    if (entry instanceof Entry.Figure figure) {
      cell.setCellValue(figure.value());
    } else if (!(entry instanceof Entry.Blank)) {
      words(cell, Entries.typed(column, entry), look);
    } else if (column.formula().isPresent()) {
      cell.setCellFormula(formulas.text(column));
      if (there) {
        result(cell, column, row);
      }
    }
  }

  /** Says whether a column holds names that nobody types. */
  private boolean given(Column column) {
    return column.takesEntries()
        && !book.blueprint().table(column.reference().table()).takesEntries(column);
  }

  private static Look look(Column column) {
    return switch (column.role()) {
      case CALCULATED -> Look.CALCULATED;
      case DEFAULTED -> Look.DEFAULT;
      case INPUT -> column.content() == Column.Content.NUMBER ? Look.INPUT : Look.INPUT_WORDS;
    };
  }

  /** Writes words, never as a formula. */
  void words(XSSFCell cell, String words, Look look) {
    if (CellText.looksLikeFormula(words)) {
      cell.setCellStyle(styles.literal(look));
    }
    cell.setCellValue(CellText.encoded(words));
  }

  private void result(XSSFCell cell, Column column, int row) {
    double number = book.number(column.reference(), row);
    if (!Double.isNaN(number) && column.content() == Column.Content.NUMBER) {
      cell.setCellValue(number);
      return;
    }
    cell.setCellValue(CellText.encoded(shown(book.outcome(column.reference(), row))));
  }

  private static String shown(Outcome outcome) {
    if (outcome instanceof Outcome.Words words) {
      return words.text();
    }
    if (outcome instanceof Outcome.NotApplicable not) {
      return not.shown();
    }
    if (outcome instanceof Outcome.Missing missing) {
      return "needs "
          + String.join(
              ", ", missing.needs().stream().map(cell -> cell.column().name()).distinct().toList());
    }
    return outcome instanceof Outcome.Refused refused
        ? "needs " + refused.where().column().name()
        : "";
  }
}
