package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.sheet.Tint;

/** The cells of a sheet: those the library holds, or those of a long sheet read one by one. */
final class SheetCells {
  private final XSSFSheet sheet;
  private final Map<Integer, SheetCell[]> rows = new HashMap<>();
  private final Map<Integer, Map<Integer, Tint>> tints = new HashMap<>();
  private final Map<Integer, Tint> ofStyles = new HashMap<>();
  private final boolean streamed;
  private int last;

  private SheetCells(XSSFSheet sheet, boolean streamed) {
    this.sheet = sheet;
    this.streamed = streamed;
  }

  /** Returns the cells the library holds. */
  static SheetCells of(XSSFSheet sheet) {
    return new SheetCells(sheet, false);
  }

  /** Returns an empty sheet that {@link #put} fills. */
  static SheetCells streamed(XSSFSheet sheet) {
    return new SheetCells(sheet, true);
  }

  XSSFSheet sheet() {
    return sheet;
  }

  /** Takes the cells of a row by their columns, null where nothing stands. */
  void put(int row, SheetCell[] cells) {
    rows.put(row, cells);
    last = Math.max(last, row);
  }

  /** Returns a cell; null where nothing stands. */
  SheetCell at(int row, int column) {
    if (streamed) {
      SheetCell[] cells = rows.get(row);
      return cells == null || column < 0 || column >= cells.length ? null : cells[column];
    }
    XSSFRow cells = sheet.getRow(row);
    return cells == null || column < 0 ? null : SheetCell.of(cells.getCell(column));
  }

  /** Takes the colour of a cell in which something or nothing stands. */
  void tint(int row, int column, XSSFCellStyle style) {
    Tint tint = of(style);
    if (tint != Tint.NONE) {
      tints.computeIfAbsent(row, any -> new HashMap<>()).put(column, tint);
    }
  }

  /** Returns the colour a person gave a cell. */
  Tint tint(int row, int column) {
    if (streamed) {
      return tints.getOrDefault(row, Map.of()).getOrDefault(column, Tint.NONE);
    }
    XSSFRow cells = sheet.getRow(row);
    XSSFCell cell = cells == null || column < 0 ? null : cells.getCell(column);
    return cell == null ? Tint.NONE : of(cell.getCellStyle());
  }

  private Tint of(XSSFCellStyle style) {
    return ofStyles.computeIfAbsent((int) style.getIndex(), any -> CellRemarks.tint(style));
  }

  /** Returns the last row in which something may stand, counted from 0. */
  int lastRow() {
    return streamed ? last : sheet.getLastRowNum();
  }
}
