package zonewright.workbook;

import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellText;

/** Lists to choose from and ranges to keep to, with what to say about them. */
final class Validations {
  private static final int LONGEST_TITLE = 32;
  private static final int LONGEST_MESSAGE = 250;
  private static final int LONGEST_LIST = 250;

  private final UnitSystem system;
  private final Map<String, String> lists;

  /**
   * Prepares for one workbook.
   *
   * @param lists the cells that hold the words of a table, by the table's name
   */
  Validations(UnitSystem system, Map<String, String> lists) {
    this.system = system;
    this.lists = lists;
  }

  /** Lets cells of a column take only what the column allows, and tells what it means. */
  void add(XSSFSheet sheet, Column column, int firstRow, int lastRow, int position) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint constraint =
        constraint(helper, column, new CellReference(firstRow, position, false, false));
    DataValidation validation =
        helper.createValidation(
            constraint, new CellRangeAddressList(firstRow, lastRow, position, position));
    validation.setEmptyCellAllowed(true);
    validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
    validation.setShowErrorBox(column.content() != Column.Content.WORDS);
    validation.createErrorBox(CellText.shortened(column.name(), LONGEST_TITLE), wrong(column));
    validation.setShowPromptBox(true);
    validation.createPromptBox(
        CellText.shortened(column.name(), LONGEST_TITLE),
        CellText.shortened(column.meaning(), LONGEST_MESSAGE));
    // The library has this flag the wrong way round for the newer format.
    validation.setSuppressDropDownArrow(true);
    sheet.addValidationData(validation);
  }

  private DataValidationConstraint constraint(
      DataValidationHelper helper, Column column, CellReference first) {
    if (column.content() == Column.Content.CHOICE) {
      WordList words = column.words().orElseThrow();
      if (words instanceof WordList.Fixed fixed
          && String.join(",", fixed.words()).length() <= LONGEST_LIST) {
        return helper.createExplicitListConstraint(fixed.words().toArray(String[]::new));
      }
      String name =
          words instanceof WordList.Published published
              ? published.table().name()
              : words instanceof WordList.RowsOf rows ? rows.table() : "";
      if (lists.containsKey(name)) {
        return helper.createFormulaListConstraint(lists.get(name));
      }
    }
    String cell = first.formatAsString();
    return helper.createCustomConstraint(
        column.content() == Column.Content.NUMBER ? test(column, cell) : "LEN(" + cell + ")>0");
  }

  private String test(Column column, String cell) {
    Bounds bounds = column.bounds().orElse(null);
    if (bounds == null) {
      return "ISNUMBER(" + cell + ")";
    }
    String low = SpreadsheetText.number(bounds.low(column.kind(), system));
    String high = SpreadsheetText.number(bounds.high(column.kind(), system));
    String whole = bounds.whole() ? "," + cell + "=INT(" + cell + ")" : "";
    return "AND(ISNUMBER(%s),%s%s%s,%s<=%s%s)"
        .formatted(cell, cell, bounds.lowIncluded() ? ">=" : ">", low, cell, high, whole);
  }

  private String wrong(Column column) {
    if (column.content() == Column.Content.CHOICE) {
      return "Choose one of the list; the sheets of the same names hold them.";
    }
    String sentence =
        column
            .bounds()
            .map(
                bounds -> column.name() + " must be " + bounds.inWords(column.kind(), system) + ".")
            .orElse("Type a number.");
    return CellText.shortened(sentence, LONGEST_MESSAGE - 30);
  }

  /** Returns the words of a list as cells of a sheet. */
  static String cells(String sheet, int column, int firstRow, int lastRow) {
    String letter = CellReference.convertNumToColString(column);
    return "'%s'!$%s$%s:$%s$%s".formatted(sheet, letter, firstRow + 1, letter, lastRow + 1);
  }
}
