package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidation;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidations;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.WorkbookNames;

/** Lists to choose from and ranges to keep to, with what to say about them. */
final class Validations {
  private static final int LONGEST_TITLE = 32;
  private static final int LONGEST_MESSAGE = 250;
  private static final int LONGEST_LIST = 250;

  private final Schema schema;
  private final UnitSystem system;
  private final Map<String, String> lists;

  /**
   * Prepares for one workbook.
   *
   * @param lists the cells that hold the words of a table, by the table's name
   */
  Validations(Schema schema, UnitSystem system, Map<String, String> lists) {
    this.schema = schema;
    this.system = system;
    this.lists = lists;
  }

  /** Does the same where earlier ones of ours stand; a person's own stay. */
  void renew(XSSFSheet sheet, Column column, int firstRow, int lastRow, int position) {
    String title = CellText.shortened(column.name(), LONGEST_TITLE);
    if (sheet.getCTWorksheet().isSetDataValidations()) {
      CTDataValidations all = sheet.getCTWorksheet().getDataValidations();
      for (int i = all.sizeOfDataValidationArray() - 1; i >= 0; i--) {
        CTDataValidation each = all.getDataValidationArray(i);
        boolean here = ranges(each).stream().anyMatch(range -> range.isInRange(firstRow, position));
        if (here && title.equals(each.getPromptTitle())) {
          all.removeDataValidation(i);
        }
      }
      all.setCount(all.sizeOfDataValidationArray());
    }
    add(sheet, column, firstRow, lastRow, position);
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

  /** Returns the cells a validation holds for. */
  static List<CellRangeAddress> ranges(CTDataValidation validation) {
    List<CellRangeAddress> ranges = new ArrayList<>();
    for (Object range : validation.getSqref()) {
      ranges.add(CellRangeAddress.valueOf(range.toString()));
    }
    return ranges;
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
    TableDefinition table = schema.table(column.reference().table());
    Bounds bounds = column.bounds().orElse(null);
    if (bounds == null) {
      return "ISNUMBER(" + cell + ")";
    }
    String within = cell + "," + WorkbookNames.limit(table, column, "from");
    if (!Double.isInfinite(bounds.high())) {
      within += "," + cell + "," + WorkbookNames.limit(table, column, "to");
    }
    String whole = bounds.whole() ? "," + cell + "=INT(" + cell + ")" : "";
    return "AND(ISNUMBER(%s),COUNTIFS(%s)=1%s)".formatted(cell, within, whole);
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
