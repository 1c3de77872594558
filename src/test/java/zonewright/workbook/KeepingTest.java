package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What a person adds to the file in another program is there when the program saves it again. */
class KeepingTest {
  @TempDir Path folder;
  private Path mine;

  @BeforeEach
  void aPersonAddsTheirOwn() {
    mine =
        WrittenOnce.copy(
            "own things",
            folder.resolve("mine.xlsx"),
            file -> OwnThings.add(WrittenOnce.demo(folder), file));
  }

  private static Optional<KeptFile> kept(DesignFile.Opened opened) {
    return Optional.of(opened.kept());
  }

  private XSSFWorkbook saved(DesignFile.Opened opened) throws DesignFileException, IOException {
    Path file = folder.resolve("saved.xlsx");
    DesignFile.Written written = DesignFile.save(opened.design(), file, kept(opened));
    assertThat(written.notes()).isEmpty();
    assertThat(Inputs.of(DesignFile.read(file).design())).isEqualTo(Inputs.of(opened.design()));
    return new XSSFWorkbook(Files.newInputStream(file));
  }

  /** What stands in the person's columns and below the table, row by row with the zone's name. */
  private static List<String> own(XSSFSheet sheet, int price) {
    List<String> lines = new ArrayList<>();
    for (Row row : sheet) {
      if (row.getRowNum() >= TableSheet.FIRST_ROW && row.getCell(0) != null) {
        lines.add(
            row.getCell(0)
                + " | "
                + words(row.getCell(price))
                + " | "
                + words(row.getCell(price + 2)));
      }
    }
    return lines;
  }

  private static String words(Cell cell) {
    return cell == null ? "" : cell.toString();
  }

  private static int price(XSSFSheet sheet) {
    for (Cell cell : sheet.getRow(1)) {
      if (cell.toString().equals(OwnThings.COLUMN)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("the person's column is gone");
  }

  @Test
  void everythingOfTheirOwnIsThereAfterAnEdit() throws Exception {
    DesignFile.Opened opened = DesignFile.read(mine);
    Designs.type(opened.design(), Emitters.AREA, 3, "4321");
    Designs.type(opened.design(), Plants.PLANT_FACTOR, 3, "0.61");
    try (XSSFWorkbook workbook = saved(opened)) {
      XSSFSheet talk = workbook.getSheet(OwnThings.SHEET);
      assertThat(talk.getRow(2).getCell(1).getCellStyle().getFont().getBold()).isTrue();
      assertThat(talk.getColumnWidth(1)).isEqualTo(30 * 256);
      assertThat(talk.getRow(2).getCell(2).getCTCell().getF().getStringValue())
          .isEqualTo("ROUND(SUM(Zones[Area (ft²)])*0.01,2)");
      XSSFSheet zones = workbook.getSheet("Zones");
      assertThat(zones.getColumnWidth(3)).isEqualTo(40 * 256);
      XSSFRow fourth = zones.getRow(TableSheet.FIRST_ROW + 3);
      assertThat(fourth.getCell(3).getNumericCellValue()).isEqualTo(4321);
      assertThat(fourth.getCell(3).getCellStyle().getFillForegroundXSSFColor()).isNotNull();
      XSSFComment comment = zones.getCellComment(new CellAddress(TableSheet.FIRST_ROW + 3, 3));
      assertThat(comment.getString().getString()).isEqualTo(OwnThings.REMARK);
      assertThat(zones.getTables().get(0).getColumns())
          .anyMatch(column -> column.getName().equals(OwnThings.COLUMN));
      assertThat(own(zones, price(zones)))
          .hasSize(13)
          .startsWith("1 | D3*0.5 | beside 1", "2 | D4*0.5 | beside 2")
          .endsWith(OwnThings.BELOW + " |  | ");
    }
  }

  @Test
  void whatStandsBesideAZoneGoesWithItWhereRowsAreMovedDeletedAndAdded() throws Exception {
    DesignFile.Opened opened = DesignFile.read(mine);
    Design design = opened.design();
    design.book().perform(design.edits().removed(Sheets.ZONES, 1, 1));
    design.book().perform(design.edits().moved(Sheets.ZONES, List.of(2), 0, true));
    design.book().perform(design.edits().inserted(Sheets.ZONES, 4, 3));
    try (XSSFWorkbook workbook = saved(opened)) {
      XSSFSheet zones = workbook.getSheet("Zones");
      int last = TableSheet.FIRST_ROW + 13;
      assertThat(own(zones, price(zones)))
          .startsWith(
              "4 | D3*0.5 | beside 4",
              "1 | D4*0.5 | beside 1",
              "3 | D5*0.5 | beside 3",
              "5 | D6*0.5 | beside 5")
          .contains("12 | D16*0.5 | beside 12", "13 | D7*0.5 | ")
          .endsWith(OwnThings.BELOW + " |  | ");
      assertThat(zones.getTables().get(0).getEndRowIndex()).isEqualTo(last);
      assertThat(zones.getCellComment(new CellAddress(TableSheet.FIRST_ROW, 3)).getString())
          .hasToString(OwnThings.REMARK);
      assertThat(zones.getCellComments()).hasSize(1);
      assertThat(workbook.getSheet(OwnThings.SHEET).getRow(2).getCell(3).getCellFormula())
          .as("a range over all zones grows with them")
          .isEqualTo("SUM(Zones!$D$3:$D$16)");
      assertThat(workbook.getSheet(OwnThings.SHEET).getRow(2).getCell(2).getCTCell().getF())
          .satisfies(f -> assertThat(f.getStringValue()).contains("Zones[Area (ft²)]"));
    }
  }

  @Test
  void switchingUnitsKeepsThemToo() throws Exception {
    DesignFile.Opened opened = DesignFile.read(mine);
    opened.design().book().perform(opened.design().edits().switched(UnitSystem.SI));
    try (XSSFWorkbook workbook = saved(opened)) {
      XSSFSheet zones = workbook.getSheet("Zones");
      assertThat(zones.getRow(1).getCell(Headings.typed(zones, Emitters.AREA)))
          .hasToString("Area (m²)");
      assertThat(own(zones, price(zones))).contains("12 | D14*0.5 | beside 12");
      assertThat(inUnits(workbook.getSheet("Site"))).isEqualTo("metric units");
    }
  }

  private static String inUnits(XSSFSheet site) {
    SingleReading reading = new SingleReading(site);
    int line = reading.line(SingleSheet.UNITS_LINE).orElseThrow();
    return site.getRow(line).getCell(reading.usedColumn()).getStringCellValue();
  }

  @Test
  void aColumnComesWhenSomebodyTypesIntoItAndStays() throws Exception {
    DesignFile.Opened opened = DesignFile.read(mine);
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(mine))) {
      assertThat(there(workbook, Emitters.HEAD_SPACING)).isFalse();
      assertThat(there(workbook, Emitters.AREA)).isTrue();
    }
    Designs.type(opened.design(), Emitters.HEAD_SPACING, 0, "15 ft");
    try (XSSFWorkbook workbook = saved(opened)) {
      XSSFSheet zones = workbook.getSheet("Zones");
      int spacing = Headings.typed(zones, Emitters.HEAD_SPACING);
      assertThat(zones.isColumnHidden(spacing)).isFalse();
      assertThat(zones.getRow(TableSheet.FIRST_ROW).getCell(spacing).getNumericCellValue())
          .isEqualTo(15);
      assertThat(there(workbook, Emitters.ROW_SPACING)).isFalse();
    }
    DesignFile.Opened again = DesignFile.read(folder.resolve("saved.xlsx"));
    Designs.type(again.design(), Emitters.HEAD_SPACING, 0, "");
    try (XSSFWorkbook workbook = saved(again)) {
      assertThat(there(workbook, Emitters.HEAD_SPACING)).isTrue();
    }
  }

  private static boolean there(XSSFWorkbook workbook, Column column) {
    return Headings.of(workbook.getSheet("Zones")).contains(column.heading(UnitSystem.US));
  }

  @Test
  void allZonesMayGoAndOthersCome() throws Exception {
    DesignFile.Opened opened = DesignFile.read(mine);
    Design design = opened.design();
    design.book().perform(design.edits().removed(Sheets.ZONES, 0, 12));
    saved(opened).close();
    DesignFile.Opened none = DesignFile.read(folder.resolve("saved.xlsx"));
    assertThat(Designs.zones(none.design())).isZero();
    none.design().book().perform(none.design().edits().inserted(Sheets.ZONES, 0, 3));
    try (XSSFWorkbook workbook = saved(none)) {
      assertThat(own(workbook.getSheet("Zones"), price(workbook.getSheet("Zones"))))
          .startsWith("1 | D3*0.5 | ")
          .endsWith(OwnThings.BELOW + " |  | ");
    }
  }

  @Test
  @Tag(Counts.LONG)
  void aFileSavedManyTimesGathersNoStylesNamesOrParts() throws Exception {
    Path file = folder.resolve("again.xlsx");
    DesignFile.Opened opened = DesignFile.read(mine);
    KeptFile kept = DesignFile.save(opened.design(), file, kept(opened)).kept();
    String first = counts(file);
    for (int i = 0; i < Counts.of(1, 10); i++) {
      kept = DesignFile.save(opened.design(), file, Optional.of(kept)).kept();
    }
    assertThat(counts(file)).isEqualTo(first);
  }

  private static String counts(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return "%s fonts, %s names, %s sheets, %s validations, %s looks, %s parts, %s styles"
          .formatted(
              workbook.getNumberOfFonts(),
              workbook.getNumberOfNames(),
              workbook.getNumberOfSheets(),
              workbook.getSheet("Zones").getDataValidations().size(),
              workbook
                  .getSheet("Zones")
                  .getSheetConditionalFormatting()
                  .getNumConditionalFormattings(),
              workbook.getPackage().getParts().size(),
              workbook.getNumCellStyles());
    } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException problem) {
      throw new IOException(problem);
    }
  }

  @Test
  void anotherProgramMaySaveItInBetween() throws Exception {
    SpreadsheetProgram.require();
    DesignFile.Opened before = DesignFile.read(mine);
    Path again = SpreadsheetProgram.save(mine, folder);
    DesignFile.Opened opened = DesignFile.read(again);
    assertThat(Inputs.differences(before.design(), opened.design())).isEmpty();
    Designs.type(opened.design(), Facts.ZONE_NOTE, 0, "seen");
    opened.design().book().perform(opened.design().edits().removed(Sheets.ZONES, 4, 1));
    try (XSSFWorkbook workbook = saved(opened)) {
      XSSFSheet zones = workbook.getSheet("Zones");
      assertThat(own(zones, price(zones)))
          .contains("12 | D13*0.5 | beside 12", OwnThings.BELOW + " |  | ");
      assertThat(zones.getCellComments().values())
          .anyMatch(comment -> comment.getString().getString().contains(OwnThings.REMARK));
      assertThat(workbook.getSheet(OwnThings.SHEET).getRow(2).getCell(1)).hasToString("Fee");
    }
  }

  @Test
  void aChangedTableOfTheTradeIsToldAndPutRight() throws Exception {
    Path changed = folder.resolve("changed.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(mine));
        var stream = Files.newOutputStream(changed)) {
      workbook.getSheet("Plants").getRow(1).getCell(3).setCellValue(0.99);
      workbook.write(stream);
    }
    DesignFile.Opened opened = DesignFile.read(changed);
    assertThat(opened.report().lines())
        .anyMatch(line -> line.startsWith("Plants!D2: changed from "));
    try (XSSFWorkbook workbook = saved(opened)) {
      assertThat(workbook.getSheet("Plants").getRow(1).getCell(3).getNumericCellValue())
          .isNotEqualTo(0.99);
    }
  }
}
