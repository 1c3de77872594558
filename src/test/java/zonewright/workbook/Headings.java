package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.TypedHeadings;

/** Where a column stands in a sheet, found as a person finds it: by its heading. */
final class Headings {
  private Headings() {}

  /** Returns the position of the cells a person types the column's values into. */
  static int typed(XSSFSheet sheet, Column column) {
    return position(sheet, column, true);
  }

  /** Returns the position of the cells that hold the column's values. */
  static int value(XSSFSheet sheet, Column column) {
    return position(sheet, column, false);
  }

  /** Returns all headings of a sheet. */
  static List<String> of(XSSFSheet sheet) {
    XSSFRow headings = sheet.getRow(TableSheet.FIRST_ROW - 1);
    List<String> texts = new ArrayList<>();
    headings.forEach(cell -> texts.add(cell.toString()));
    return texts;
  }

  private static int position(XSSFSheet sheet, Column column, boolean typed) {
    List<String> texts = of(sheet);
    for (boolean yours : typed ? new boolean[] {true, false} : new boolean[] {false}) {
      for (UnitSystem system : UnitSystem.values()) {
        String heading = column.heading(system);
        for (int at = 0; at < texts.size(); at++) {
          String text = texts.get(at);
          if (TypedHeadings.yours(text) == yours && TypedHeadings.plain(text).equals(heading)) {
            return at;
          }
        }
      }
    }
    throw new AssertionError(column + " is not among " + texts);
  }
}
