package zonewright.workbook;

import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
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
    cell.setCellStyle(style(column));
    fill(cell, column, row);
  }

  /** Returns the style of a column's cells. */
  XSSFCellStyle style(Column column) {
    Look look = given(column) ? Look.CALCULATED : look(column);
    return styles.of(look, Styles.format(column, system));
  }

  /** Puts what a book holds in place of what a cell holds; the cell keeps its own format. */
  void renew(XSSFCell cell, Column column, int row) {
    empty(cell);
    fill(cell, column, row);
  }

  /** Takes words, number and formula out of a cell, and nothing else. */
  static void empty(XSSFCell cell) {
    CTCell content = cell.getCTCell();
    if (content.isSetF()) {
      content.unsetF();
    }
    if (content.isSetIs()) {
      content.unsetIs();
    }
    cell.setBlank();
  }

  private void fill(XSSFCell cell, Column column, int row) {
    Content content = content(column, row);
    content.formula().ifPresent(cell::setCellFormula);
    if (content.literal()) {
      cell.setCellStyle(styles.literal(look(column)));
    }
    if (!Double.isNaN(content.number())) {
      cell.setCellValue(content.number());
    } else if (content.words().isPresent()) {
      cell.setCellValue(content.words().get());
    }
  }

  /**
   * What belongs into a cell.
   *
   * @param formula the formula, without its equals sign
   * @param number the number typed, or the formula's result; not a number where there is none
   * @param words the words typed, or the formula's result, as a file keeps them
   * @param literal whether the words must be kept from being taken for a formula
   */
  record Content(Optional<String> formula, double number, Optional<String> words, boolean literal) {
    private static final Content NOTHING =
        new Content(Optional.empty(), Double.NaN, Optional.empty(), false);
  }

  /** Returns what belongs into a cell of a book; {@code row} may be one past the end. */
  Content content(Column column, int row) {
    boolean there = row < book.rows(column.reference().table());
    Entry entry =
        there && column.takesEntries() ? book.entry(column.reference(), row) : Entry.BLANK;
    if (entry instanceof Entry.Figure figure) {
      return new Content(Optional.empty(), figure.value(), Optional.empty(), false);
    }
    if (!(entry instanceof Entry.Blank)) {
      String words = Entries.typed(column, entry);
      return new Content(
          Optional.empty(),
          Double.NaN,
          Optional.of(CellText.encoded(words)),
          CellText.looksLikeFormula(words));
    }
    if (column.formula().isEmpty()) {
      return Content.NOTHING;
    }
    Optional<String> formula = Optional.of(formulas.text(column));
    if (!there) {
      return new Content(formula, Double.NaN, Optional.empty(), false);
    }
    double number = book.number(column.reference(), row);
    if (!Double.isNaN(number) && column.content() == Column.Content.NUMBER) {
      return new Content(formula, number, Optional.empty(), false);
    }
    String shown = CellText.encoded(shown(book.outcome(column.reference(), row)));
    return new Content(formula, Double.NaN, Optional.of(shown), false);
  }

  /** Returns the style of a column's words that could be taken for a formula. */
  XSSFCellStyle literal(Column column) {
    return styles.literal(look(column));
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
