package zonewright.workbook;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidations;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import zonewright.sheet.Blueprint;
import zonewright.trade.Sheets;

/**
 * What a client does not get: the price book, labour, overhead and profit. Those sheets are not
 * written at all, and whatever is calculated from them stands as the value it had.
 */
final class ClientCopy {
  /** The tables of the estimator's own office. */
  static final Set<String> WITHHELD =
      Set.of(
          Sheets.TAKEOFF,
          Sheets.COUNTS,
          Sheets.PARTS,
          Sheets.SECTIONS,
          Sheets.EXTRAS,
          Sheets.ESTIMATE);

  private final Pattern withheld;

  private ClientCopy(Blueprint blueprint) {
    String titles =
        WITHHELD.stream()
            .map(table -> Pattern.quote(blueprint.table(table).title()))
            .collect(Collectors.joining("|"));
    // A table's column, a named cell, or a sheet, which may stand in quotation marks.
    withheld = Pattern.compile("(?<![A-Za-z0-9_.])(" + titles + ")(\\[|_|!|'!)");
  }

  /**
   * Turns every formula that asks for a sheet withheld into its value, and drops such rules.
   *
   * @return which formulas those are, for rows that are not written yet
   */
  static Predicate<String> settle(XSSFWorkbook workbook, Blueprint blueprint) {
    ClientCopy copy = new ClientCopy(blueprint);
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      copy.cells(sheet);
      sheet.getTables().forEach(copy::columns);
      copy.rules(sheet.getCTWorksheet());
    }
    for (XSSFName name : List.copyOf(workbook.getAllNames())) {
      if (copy.asks(name.getRefersToFormula())) {
        workbook.removeName(name);
      }
    }
    return copy::asks;
  }

  private boolean asks(String formula) {
    return formula != null && withheld.matcher(formula).find();
  }

  private void cells(XSSFSheet sheet) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        // The text as it is kept: reading it as a formula would look for the sheet.
        if (cell.getCellType() == CellType.FORMULA
            && asks(((XSSFCell) cell).getCTCell().getF().getStringValue())) {
          cell.removeFormula();
        }
      }
    }
  }

  private void columns(XSSFTable table) {
    for (CTTableColumn column : table.getCTTable().getTableColumns().getTableColumnArray()) {
      if (column.isSetCalculatedColumnFormula()
          && asks(column.getCalculatedColumnFormula().getStringValue())) {
        column.unsetCalculatedColumnFormula();
      }
    }
  }

  private void rules(CTWorksheet sheet) {
    for (int i = sheet.sizeOfConditionalFormattingArray() - 1; i >= 0; i--) {
      CTConditionalFormatting marks = sheet.getConditionalFormattingArray(i);
      for (int j = marks.sizeOfCfRuleArray() - 1; j >= 0; j--) {
        if (marks.getCfRuleArray(j).getFormulaList().stream().anyMatch(this::asks)) {
          marks.removeCfRule(j);
        }
      }
      if (marks.sizeOfCfRuleArray() == 0) {
        sheet.removeConditionalFormatting(i);
      }
    }
    if (sheet.isSetDataValidations()) {
      CTDataValidations lists = sheet.getDataValidations();
      for (int i = lists.sizeOfDataValidationArray() - 1; i >= 0; i--) {
        if (asks(lists.getDataValidationArray(i).getFormula1())) {
          lists.removeDataValidation(i);
        }
      }
      lists.setCount(lists.sizeOfDataValidationArray());
      if (lists.sizeOfDataValidationArray() == 0) {
        sheet.unsetDataValidations();
      }
    }
  }
}
