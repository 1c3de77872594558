package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Money;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookNames;

/**
 * Gives cells the decimals of another unit system or currency, where they still have those of the
 * old one.
 */
final class Reformat {
  private record Key(int style, String format) {}

  private final XSSFWorkbook workbook;
  private final Schema former;
  private final UnitSystem before;
  private final UnitSystem now;
  private final Map<Key, XSSFCellStyle> known = new HashMap<>();

  private Reformat(XSSFWorkbook workbook, Schema former, UnitSystem before, UnitSystem now) {
    this.workbook = workbook;
    this.former = former;
    this.before = before;
    this.now = now;
  }

  /**
   * Compares what a book is in now with what its file is in.
   *
   * @param before the unit system of the file
   */
  static Reformat of(XSSFWorkbook workbook, Book book, UnitSystem before) {
    Schema declared = book.declared();
    XSSFName name =
        workbook.getName(WorkbookNames.defined(declared.table(Sheets.ESTIMATE), JobFacts.CURRENCY));
    int decimals =
        name == null || name.isDeleted()
            ? Money.USUAL_DECIMALS
            : Money.decimals(text(workbook, new CellReference(name.getRefersToFormula())));
    return new Reformat(workbook, declared.withMoneyOf(decimals), before, book.system());
  }

  private static String text(XSSFWorkbook workbook, CellReference place) {
    XSSFSheet sheet = workbook.getSheet(place.getSheetName());
    XSSFRow row = sheet == null ? null : sheet.getRow(place.getRow());
    return new DataFormatter().formatCellValue(row == null ? null : row.getCell(place.getCol()));
  }

  /** Gives a cell of a column the format of the unit system in force, unless it has its own. */
  void cell(XSSFCell cell, Column column) {
    boolean money = column.kind().isMoney() && former.has(column.reference());
    if (column.content() != Column.Content.NUMBER || (before == now && !money)) {
      return;
    }
    Column then = money ? former.column(column.reference()) : column;
    String old = Styles.format(then, before);
    String fresh = Styles.format(column, now);
    XSSFCellStyle style = cell.getCellStyle();
    if (!old.equals(fresh) && style.getDataFormatString().equals(old)) {
      cell.setCellStyle(
          known.computeIfAbsent(
              new Key(style.getIndex(), fresh),
              key -> {
                XSSFCellStyle copy = workbook.createCellStyle();
                copy.cloneStyleFrom(style);
                copy.setDataFormat(workbook.createDataFormat().getFormat(fresh));
                return copy;
              }));
    }
  }
}
