package zonewright.workbook;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.formula.ReferenceTable;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.ExcelTable;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Styles;

/**
 * A table of the trade as a sheet: what the design's formulas look up, each row with its source.
 */
final class ReferenceSheet {
  private static final int TEXT_WIDTH = 46;
  private static final int SOURCE_WIDTH = 70;
  private static final int SOURCE_LETTERS_A_LINE = 86;
  private static final int NUMBER_WIDTH = 12;

  private final XSSFWorkbook workbook;
  private final Styles styles;
  private final UnitSystem system;
  private final ReferenceCells cells;

  ReferenceSheet(XSSFWorkbook workbook, Styles styles, UnitSystem system, ReferenceCells cells) {
    this.workbook = workbook;
    this.styles = styles;
    this.system = system;
    this.cells = cells;
  }

  /** Writes the table into a new sheet. */
  XSSFSheet write(ReferenceTable table, int number, String project) {
    XSSFSheet sheet = workbook.createSheet(table.name());
    List<String> headings = table.headings();
    XSSFRow top = sheet.createRow(0);
    top.setHeightInPoints(42);
    for (int row = 0; row < table.size(); row++) {
      sheet.createRow(row + 1);
    }
    for (int position = 0; position < headings.size(); position++) {
      String heading = headings.get(position);
      Optional<ReferenceTable.Numbers> numbers = cells.numbers(table, heading);
      XSSFCell cell = top.createCell(position);
      cell.setCellStyle(styles.of(CellStyleName.HEADING));
      cell.setCellValue(numbers.map(column -> column.heading(system)).orElse(heading));
      boolean source = heading.equals("Source") || heading.equals("Status");
      int width =
          numbers.isPresent() ? NUMBER_WIDTH : source ? SOURCE_WIDTH : width(table, heading);
      sheet.setColumnWidth(position, width * 256);
      for (int row = 0; row < table.size(); row++) {
        cell(sheet.getRow(row + 1), position, table.text(row, heading), row, numbers, source);
      }
    }
    for (int row = 0; row < table.size(); row++) {
      int longest =
          Math.max(table.text(row, "Source").length(), table.text(row, "Status").length());
      int lines = 1 + longest / SOURCE_LETTERS_A_LINE;
      sheet.getRow(row + 1).setHeightInPoints(Math.max(15, lines * 11.5f + 4));
    }
    ExcelTable.make(sheet, table.name(), number, 0, table.size(), headings.size());
    sheet.createFreezePane(1, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    PageSetup.set(sheet, project, system, true, headings.size());
    return sheet;
  }

  private static int width(ReferenceTable table, String heading) {
    int width = heading.length() + 4;
    for (int row = 0; row < table.size(); row++) {
      width = Math.max(width, table.text(row, heading).length() + 4);
    }
    return Math.min(TEXT_WIDTH, width);
  }

  private void cell(
      XSSFRow row,
      int position,
      String text,
      int at,
      Optional<ReferenceTable.Numbers> numbers,
      boolean source) {
    XSSFCell cell = row.createCell(position);
    CellStyleName look =
        source ? CellStyleName.SMALL : position == 0 ? CellStyleName.NAME : CellStyleName.TABLE;
    Object content = cells.content(text, at, numbers);
    if (content instanceof Double number) {
      cell.setCellStyle(styles.of(look, format(numbers.orElseThrow(), text)));
      cell.setCellValue(number);
    } else {
      cell.setCellStyle(styles.of(look));
      cell.setCellValue(CellText.encoded((String) content));
    }
  }

  /** As many decimals as published, and those of the other system where converted. */
  private String format(ReferenceTable.Numbers column, String text) {
    QuantityKind kind = column.kind();
    boolean own = column.heading(system).equals(column.sourceHeading());
    int written = text.indexOf('.') < 0 ? 0 : text.length() - text.indexOf('.') - 1;
    int decimals = kind.percent() ? Math.max(0, written - 2) : written;
    return Styles.format(kind, own ? decimals : Math.max(kind.decimals(system), 1));
  }
}
