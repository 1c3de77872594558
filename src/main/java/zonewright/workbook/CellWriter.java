package zonewright.workbook;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Tint;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;

/** Puts what a book holds into cells: entries as they are, formulas with the result they have. */
final class CellWriter {
  private static final String WITHOUT_DECIMALS = "0";

  private final Book book;
  private final UnitSystem system;
  private final Styles styles;

  CellWriter(Book book, Styles styles) {
    this.book = book;
    this.system = book.system();
    this.styles = styles;
  }

  /**
   * Writes one cell of a table's sheet; {@code row} may be one past the end, for a row with nothing
   * in it.
   */
  void write(XSSFRow target, int position, TableDefinition table, SheetColumn column, int row) {
    XSSFCell cell = target.createCell(position);
    cell.setCellStyle(style(column));
    fill(cell, table, column, row);
  }

  /** Returns the style of a column's cells. */
  XSSFCellStyle style(SheetColumn column) {
    return switch (column.role()) {
      case TYPED -> styles.of(look(column), format(column));
      case VALUE, USUAL, CHECKED -> styles.of(CellStyleName.CALCULATED, format(column));
      case MISSING -> styles.of(CellStyleName.CALCULATED);
      case STEP -> styles.of(CellStyleName.CALCULATED, "General");
      case FILLED_IN, IDENTITY, JOIN, ROW -> styles.of(CellStyleName.CALCULATED, WITHOUT_DECIMALS);
    };
  }

  private String format(SheetColumn column) {
    return Styles.format(column.column().orElseThrow(), system);
  }

  /**
   * Puts what a book holds in place of what a cell holds; the cell keeps its own format, and a
   * person's formula where it still comes to what the book holds.
   */
  void renew(XSSFCell cell, TableDefinition table, SheetColumn column, int row) {
    double figure = Double.NaN;
    Optional<String> sum = Optional.empty();
    if (column.role() == SheetColumn.Role.TYPED && row < book.rows(table.id())) {
      Column of = column.column().orElseThrow();
      boolean percentage = of.kind().percent() && !SheetCell.percent(cell.getCellStyle());
      if (book.entry(of.reference(), row) instanceof Entry.Figure typed) {
        sum = sum(of, typed);
        figure = percentage ? Units.ONE.convert(typed.value(), Units.PERCENT) : typed.value();
      }
      SheetCell there = SheetCell.of(cell);
      boolean same = there != null && there.shown().equals(OptionalDouble.of(figure));
      if (same && sum.equals(CellReader.arithmetic(there.text()))) {
        return;
      }
    }
    boolean percentage =
        !Double.isNaN(figure)
            && column.column().orElseThrow().kind().percent()
            && !SheetCell.percent(cell.getCellStyle());
    empty(cell);
    fill(cell, table, column, row);
    if (percentage && cell.getCellType() == CellType.FORMULA) {
      cell.removeFormula();
    }
    if (!Double.isNaN(figure)) {
      cell.setCellValue(figure);
    }
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

  private void fill(XSSFCell cell, TableDefinition table, SheetColumn column, int row) {
    Content content = content(table, column, row);
    content.formula().ifPresent(cell::setCellFormula);
    if (content.literal()) {
      cell.setCellStyle(literal(column));
    }
    if (content.error()) {
      cell.setCellErrorValue(FormulaError.NA);
    } else if (!Double.isNaN(content.number())) {
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
   * @param error whether the formula has no result
   */
  record Content(
      Optional<String> formula,
      double number,
      Optional<String> words,
      boolean literal,
      boolean error) {
    private static Content of(Optional<String> formula, double number) {
      return new Content(formula, number, Optional.empty(), false, false);
    }

    private static Content of(Optional<String> formula, String words, boolean literal) {
      return new Content(formula, Double.NaN, Optional.of(CellText.encoded(words)), literal, false);
    }

    private static Content none(Optional<String> formula) {
      return new Content(formula, Double.NaN, Optional.empty(), false, true);
    }
  }

  /** Returns what belongs into a cell of a book; {@code row} may be one past the end. */
  Content content(TableDefinition table, SheetColumn column, int row) {
    if (row >= book.rows(table.id())) {
      return Content.of(column.formula(), Double.NaN);
    }
    return switch (column.role()) {
      case TYPED -> typed(column.column().orElseThrow(), row);
      case VALUE -> value(column, row);
      case IDENTITY ->
          Content.of(Optional.empty(), (double) (book.contents().row(table.id(), row).id() + 1));
      case FILLED_IN -> Content.of(column.formula(), book.counts(table.id(), row) ? 1 : 0);
      case JOIN -> Content.of(column.formula(), row + 1);
      // What stands in between is found again by whoever opens the file.
      case MISSING, CHECKED, ROW, USUAL, STEP -> Content.of(column.formula(), Double.NaN);
    };
  }

  private Content typed(Column column, int row) {
    Entry entry = book.entry(column.reference(), row);
    if (entry instanceof Entry.Figure figure) {
      return Content.of(sum(column, figure), figure.value());
    }
    if (entry instanceof Entry.Blank) {
      return Content.of(Optional.empty(), Double.NaN);
    }
    String words = Entries.typed(column, entry);
    return Content.of(Optional.empty(), words, CellText.looksLikeFormula(words));
  }

  /**
   * Returns the formula of arithmetic as it was typed; what is shown in percent counts hundredths.
   */
  private static Optional<String> sum(Column column, Entry.Figure figure) {
    return Optional.of(figure.sum())
        .filter(sum -> !sum.isEmpty())
        .map(sum -> sum.substring(1))
        .map(sum -> column.kind().percent() ? "(" + sum + ")%" : sum);
  }

  private Content value(SheetColumn place, int row) {
    Column column = place.column().orElseThrow();
    double number = book.number(column.reference(), row);
    if (column.content() == Column.Content.NUMBER) {
      return Double.isNaN(number)
          ? Content.none(place.formula())
          : Content.of(place.formula(), number);
    }
    Outcome outcome = book.outcome(column.reference(), row);
    if (outcome instanceof Outcome.Words words) {
      return Content.of(place.formula(), words.text(), false);
    }
    return outcome instanceof Outcome.Blank
        ? Content.of(place.formula(), "", false)
        : Content.none(place.formula());
  }

  /** Returns the style of a column's words that could be taken for a formula. */
  XSSFCellStyle literal(SheetColumn column) {
    return styles.literal(look(column));
  }

  /** Returns a style of a column's cells in a person's colour. */
  XSSFCellStyle tinted(XSSFCellStyle style, SheetColumn column, Tint tint) {
    return styles.grounded(style, style(column), tint);
  }

  private static CellStyleName look(SheetColumn column) {
    Column of = column.column().orElse(null);
    if (of == null || column.role() != SheetColumn.Role.TYPED) {
      return CellStyleName.CALCULATED;
    }
    return of.role() == Column.Role.DEFAULTED
        ? CellStyleName.DEFAULT
        : of.content() == Column.Content.NUMBER ? CellStyleName.INPUT : CellStyleName.INPUT_WORDS;
  }
}
