package zonewright.workbook;

import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** The result a file carries beside a formula; used to compare, never to calculate. */
final class ShownNumber {
  private static final double TOLERANCE = 1e-9;

  private ShownNumber() {}

  /** Returns the number a formula cell shows; none where it shows words, an error or nothing. */
  static OptionalDouble of(XSSFCell cell) {
    boolean number =
        cell != null
            && cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.NUMERIC
            && cell.getCTCell().isSetV();
    return number ? OptionalDouble.of(cell.getNumericCellValue()) : OptionalDouble.empty();
  }

  /** Says whether the file's number and ours are worth telling apart; ours may be no number. */
  static boolean differs(double file, double ours) {
    if (Double.isNaN(ours)) {
      return true;
    }
    return Math.abs(file - ours) > TOLERANCE * Math.max(Math.abs(file), Math.abs(ours));
  }
}
