package zonewright.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.emitters.Emitters;

/** What a person adds to the workbook in another program, and finding it again. */
final class OwnThings {
  static final String SHEET = "Client talk";
  static final String COLUMN = "Price each";
  static final String REMARK = "measured twice";
  static final String BELOW = "walked with the gardener";

  private OwnThings() {}

  /** Adds a sheet, a column in the table, one beside it, a comment, colours, widths, a note. */
  static void add(Path file, Path to) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(to)) {
      XSSFSheet own = workbook.createSheet(SHEET);
      XSSFRow row = own.createRow(2);
      row.createCell(1).setCellValue("Fee");
      row.createCell(2).setCellFormula("ROUND(SUM(Zones[Area (ft²)])*0.01,2)");
      row.createCell(3).setCellFormula("SUM(Zones!$D$3:$D$14)");
      XSSFCellStyle bold = workbook.createCellStyle();
      XSSFFont font = workbook.createFont();
      font.setBold(true);
      bold.setFont(font);
      row.getCell(1).setCellStyle(bold);
      own.setColumnWidth(1, 30 * 256);
      zones(workbook);
      workbook.write(stream);
    }
  }

  private static void zones(XSSFWorkbook workbook) {
    XSSFSheet sheet = workbook.getSheet("Zones");
    XSSFTable table = sheet.getTables().get(0);
    int price = table.getEndColIndex() + 1;
    int last = table.getEndRowIndex();
    CellStyle yellow = workbook.createCellStyle();
    yellow.setFillForegroundColor(IndexedColors.YELLOW.getIndex());
    yellow.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    sheet.getRow(1).createCell(price).setCellValue(COLUMN);
    for (int at = TableSheet.FIRST_ROW; at <= last; at++) {
      XSSFRow row = sheet.getRow(at);
      XSSFCell cell = row.createCell(price);
      cell.setCellFormula("D" + (at + 1) + "*0.5");
      cell.setCellStyle(yellow);
      row.createCell(price + 2).setCellValue("beside " + row.getCell(0).getStringCellValue());
    }
    table.setArea(
        new AreaReference(
            new CellReference(1, 0), new CellReference(last, price), SpreadsheetVersion.EXCEL2007));
    table
        .getCTTable()
        .getTableColumns()
        .getTableColumnArray(price)
        .addNewCalculatedColumnFormula()
        .setStringValue("D3*0.5");
    sheet.setColumnWidth(3, 40 * 256);
    XSSFCell area =
        sheet.getRow(TableSheet.FIRST_ROW + 3).getCell(Headings.typed(sheet, Emitters.AREA));
    area.setCellStyle(yellow);
    ClientAnchor anchor = workbook.getCreationHelper().createClientAnchor();
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(workbook.getCreationHelper().createRichTextString(REMARK));
    comment.setAuthor("A person");
    area.setCellComment(comment);
    sheet.createRow(last + 3).createCell(0).setCellValue(BELOW);
  }
}
