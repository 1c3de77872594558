package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.Styles;

/** Gives cells the decimals of another unit system, where they still have those of the old one. */
final class Reformat {
  private record Key(int style, String format) {}

  private final XSSFWorkbook workbook;
  private final UnitSystem before;
  private final UnitSystem now;
  private final Map<Key, XSSFCellStyle> known = new HashMap<>();

  Reformat(XSSFWorkbook workbook, UnitSystem before, UnitSystem now) {
    this.workbook = workbook;
    this.before = before;
    this.now = now;
  }

  /** Gives a cell of a column the format of the unit system in force, unless it has its own. */
  void cell(XSSFCell cell, Column column) {
    if (before == now || column.content() != Column.Content.NUMBER) {
      return;
    }
    String old = Styles.format(column, before);
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
