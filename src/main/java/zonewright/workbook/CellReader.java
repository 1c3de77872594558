package zonewright.workbook;

import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
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

  CellReader(UnitSystem system, Notes notes, ColumnFormulas formulas) {
    this.system = system;
    this.notes = notes;
    this.formulas = formulas;
  }

  /**
   * Reads a cell.
   *
   * @param unit the unit the file says its numbers have
   */
  Entry read(Column column, XSSFCell cell, Unit unit) {
    if (cell == null) {
      return Entry.BLANK;
    }
    return switch (cell.getCellType()) {
      case NUMERIC -> numeric(column, cell, unit);
      case STRING -> text(column, cell, unit);
      case BOOLEAN ->
          odd(column, cell, cell.getBooleanCellValue() ? "TRUE" : "FALSE", "a truth value");
      case ERROR ->
          odd(column, cell, FormulaError.forInt(cell.getErrorCellValue()).getString(), "an error");
      case FORMULA -> formula(column, cell);
      default -> Entry.BLANK;
    };
  }

  private Entry numeric(Column column, XSSFCell cell, Unit unit) {
    double value = cell.getNumericCellValue();
    boolean calendar = column.content() == Column.Content.NUMBER && column.kind().onCalendar();
    if (DateUtil.isCellDateFormatted(cell) && !calendar) {
      return odd(column, cell, new DataFormatter(Locale.ROOT).formatCellValue(cell), "a date");
    }
    if (column.content() == Column.Content.NUMBER) {
      return new Entry.Figure(unit.convert(value, column.kind().unit(system)));
    }
    return Entry.words(QuantityText.exact(value));
  }

  private Entry text(Column column, XSSFCell cell, Unit unit) {
    String text = cell.getStringCellValue();
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

  private Entry odd(Column column, XSSFCell cell, String text, String what) {
    note(column, cell, "holds %s, %s; kept as words".formatted(what, text));
    return column.content() == Column.Content.NUMBER
        ? new Entry.Unreadable(
            text,
            "“%s” is %s; write %s such as %s"
                .formatted(text, what, column.kind().wordsWithArticle(), column.kind().example()))
        : Entry.words(text);
  }

  private Entry formula(Column column, XSSFCell cell) {
    String text = cell.getCellFormula();
    Optional<String> own =
        column.role() == Column.Role.DEFAULTED
            ? Optional.of(formulas.text(column))
            : Optional.empty();
    boolean sum = text.matches("[\\d\\s.,+\\-*/^()%eE]+");
    if (own.isPresent() && (same(own.get(), text) || !sum || (fixed(own.get()) && fixed(text)))) {
      return Entry.BLANK;
    }
    return odd(column, cell, "=" + text, "a formula");
  }

  /** A fixed default, which other programs may write with fewer digits. */
  private static boolean fixed(String formula) {
    return formula.matches("\\(?-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?\\)?");
  }

  private static boolean same(String one, String other) {
    return one.replaceAll("\\s", "").equalsIgnoreCase(other.replaceAll("\\s", ""));
  }

  private void note(Column column, XSSFCell cell, String sentence) {
    String place = Notes.cell(cell.getRowIndex(), cell.getColumnIndex());
    notes.add(cell.getSheet().getSheetName(), place, column.name() + ": " + sentence);
  }

  /** Says whether nothing was typed into a cell and nothing is calculated in it. */
  static boolean empty(XSSFCell cell) {
    return cell == null
        || cell.getCellType() == CellType.BLANK
        || (cell.getCellType() == CellType.STRING && cell.getStringCellValue().isBlank());
  }
}
