package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;

/**
 * A person's own column, comment and format on sheets of every kind, and a sheet of their own, come
 * through another program and through our own saving; columns of an earlier version do too.
 */
class EverySheetKeptTest {
  private static final List<String> TABLES =
      List.of("Zones", "Months", "Pipes", "Takeoff", "Found", "Parts", "Rates");
  private static final String HEADING = "My own";

  @TempDir Path folder;

  private static Design retrofit() {
    return Sample.named("campus-retrofit").orElseThrow().design(UnitSystem.US);
  }

  private static XSSFTable table(XSSFWorkbook workbook, String title) {
    return workbook.getSheet(title).getTables().get(0);
  }

  /** Adds a column to a table; returns where. */
  private static int column(XSSFTable table, String heading, String formula) {
    XSSFSheet sheet = table.getXSSFSheet();
    int position = table.getEndColIndex() + 1;
    int last = table.getEndRowIndex();
    int top = table.getStartRowIndex();
    sheet.getRow(top).createCell(position).setCellValue(heading);
    for (int row = top + 1; row <= last; row++) {
      XSSFCell cell = sheet.getRow(row).createCell(position);
      if (formula.isEmpty()) {
        cell.setCellValue("mine " + row);
      } else {
        cell.setCellFormula(formula);
      }
    }
    table.setArea(
        new AreaReference(
            new CellReference(top, 0),
            new CellReference(last, position),
            SpreadsheetVersion.EXCEL2007));
    table.updateHeaders();
    return position;
  }

  private static void remark(XSSFSheet sheet, XSSFCell cell, String words) {
    var help = sheet.getWorkbook().getCreationHelper();
    XSSFComment comment =
        sheet.createDrawingPatriarch().createCellComment(help.createClientAnchor());
    comment.setString(help.createRichTextString(words));
    cell.setCellComment(comment);
  }

  private Path marked(Path file) throws IOException {
    Path mine = folder.resolve("mine.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(mine)) {
      XSSFCellStyle bold = workbook.createCellStyle();
      XSSFFont font = workbook.createFont();
      font.setBold(true);
      font.setFontHeightInPoints((short) 19);
      bold.setFont(font);
      for (String title : TABLES) {
        XSSFTable table = table(workbook, title);
        XSSFSheet sheet = table.getXSSFSheet();
        int position = column(table, HEADING, "");
        XSSFCell cell = sheet.getRow(table.getStartRowIndex() + 1).getCell(position);
        cell.setCellStyle(bold);
        remark(sheet, cell, "seen on " + title);
      }
      XSSFSheet own = workbook.createSheet("Client talk");
      own.createRow(0).createCell(0).setCellValue("Wants roses");
      workbook.write(stream);
    }
    return mine;
  }

  private static void holdsMine(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (String title : TABLES) {
        XSSFTable table = table(workbook, title);
        XSSFSheet sheet = table.getXSSFSheet();
        int top = table.getStartRowIndex();
        int position = position(sheet, top, HEADING);
        assertThat(position).as("the column on %s", title).isNotNegative();
        XSSFCell cell = sheet.getRow(top + 1).getCell(position);
        assertThat(cell.getStringCellValue()).as(title).isEqualTo("mine " + (top + 1));
        assertThat(cell.getCellStyle().getFont().getBold()).as("format on %s", title).isTrue();
        assertThat(cell.getCellStyle().getFont().getFontHeightInPoints()).isEqualTo((short) 19);
        XSSFComment comment = sheet.getCellComment(new CellAddress(top + 1, position));
        assertThat(comment).as("comment on %s", title).isNotNull();
        assertThat(comment.getString().getString()).contains("seen on " + title);
      }
      assertThat(workbook.getSheet("Client talk").getRow(0).getCell(0)).hasToString("Wants roses");
    }
  }

  private static int position(XSSFSheet sheet, int row, String heading) {
    for (int i = 0; i < sheet.getRow(row).getLastCellNum(); i++) {
      XSSFCell cell = sheet.getRow(row).getCell(i);
      if (cell != null && cell.toString().equals(heading)) {
        return i;
      }
    }
    return -1;
  }

  @Test
  void everySheetComesThroughAnotherProgramAndOurs() throws Exception {
    SpreadsheetProgram.require();
    Design design = retrofit();
    Path file = WrittenOnce.campus(folder, UnitSystem.US);
    Path again = SpreadsheetProgram.save(marked(file), folder);
    DesignFile.Opened opened = DesignFile.read(again);
    assertThat(Inputs.differences(design, opened.design())).isEmpty();

    Path saved = folder.resolve("saved.xlsx");
    DesignFile.Written written =
        DesignFile.save(opened.design(), saved, Optional.of(opened.kept()));
    assertThat(written.notes()).isEmpty();
    holdsMine(saved);
    assertThat(Inputs.of(DesignFile.read(saved).design())).isEqualTo(Inputs.of(opened.design()));
  }

  @Test
  void calculatedColumnsOfAnEarlierVersionAreToldAndStay() throws Exception {
    Design design = retrofit();
    Path file = WrittenOnce.campus(folder, UnitSystem.US);
    Path older = folder.resolve("older.xlsx");
    List<String> gone = List.of("Rain on the area (gal)", "Allowance in proportion (gal)");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(older)) {
      workbook.setCellFormulaValidation(false);
      for (String heading : gone) {
        column(table(workbook, "Months"), heading, "Months[[#This Row],[Month]]&\"\"");
      }
      workbook.write(stream);
    }
    DesignFile.Opened opened = DesignFile.read(older);
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    for (String heading : gone) {
      assertThat(opened.report().lines())
          .anyMatch(line -> line.contains("“" + heading + "”") && line.contains("it is kept"));
    }
    Path saved = folder.resolve("saved.xlsx");
    DesignFile.save(opened.design(), saved, Optional.of(opened.kept()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
      for (String heading : gone) {
        assertThat(position(workbook.getSheet("Months"), 1, heading)).isNotNegative();
      }
    }
  }
}
