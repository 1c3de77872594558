package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.water.SiteRules;

/** What people do to the workbook in a spreadsheet program is understood, or told. */
class ForeignEditsTest extends ChangedGarden {
  @Test
  void numbersTypedAsTextWithUnitsAreReadAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Emitters.ZONE_FLOW, 0).removeFormula();
              zone(workbook, Emitters.ZONE_FLOW, 0).setCellValue("45.424941408 L/min");
              zone(workbook, Emitters.AREA, 1).setCellValue("1,5");
              zone(workbook, Emitters.AREA, 2).setCellValue("big");
            });
    assertThat(entry(opened, Emitters.ZONE_FLOW, 0)).isEqualTo(new Entry.Figure(12));
    assertThat(entry(opened, Emitters.AREA, 1)).isEqualTo(new Entry.Figure(1.5));
    assertThat(entry(opened, Emitters.AREA, 2))
        .isInstanceOfSatisfying(
            Entry.Unreadable.class, kept -> assertThat(kept.text()).isEqualTo("big"));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.contains("“45.424941408 L/min” was read as 12"))
        .anyMatch(line -> line.startsWith("Zones!D5") && line.contains("kept as it stands"));
  }

  @Test
  void datesTruthValuesAndErrorsAreKeptAsWordsAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              CellStyle date = workbook.createCellStyle();
              date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
              zone(workbook, Emitters.AREA, 0).setCellValue(LocalDate.of(2026, 5, 1));
              zone(workbook, Emitters.AREA, 0).setCellStyle(date);
              zone(workbook, Emitters.AREA, 1).setCellValue(true);
              zone(workbook, Emitters.AREA, 2).setCellErrorValue(FormulaError.NA);
              XSSFCell unfinished = zone(workbook, Emitters.AREA, 3);
              unfinished.setBlank();
              unfinished.setCellFormula("8*4");
            });
    List<String> texts = List.of("2026-05-01", "TRUE", "#N/A", "=8*4");
    for (int row = 0; row < texts.size(); row++) {
      String text = texts.get(row);
      assertThat(entry(opened, Emitters.AREA, row))
          .isInstanceOfSatisfying(
              Entry.Unreadable.class, kept -> assertThat(kept.text()).isEqualTo(text));
      assertThat(opened.report().lines()).anyMatch(line -> line.contains(text));
    }
  }

  @Test
  void aSumOfOnesOwnIsReadAsTypedAndStaysInTheFile() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Emitters.AREA, 0).setCellFormula("45*50");
              zone(workbook, Emitters.AREA, 0).setCellValue(2250);
              zone(workbook, Emitters.ZONE_FLOW, 3).setCellFormula("7+5");
              zone(workbook, Emitters.ZONE_FLOW, 3).setCellValue(12);
            });
    assertThat(entry(opened, Emitters.AREA, 0)).isEqualTo(new Entry.Figure(2250, "=45*50"));
    assertThat(entry(opened, Emitters.ZONE_FLOW, 3)).isEqualTo(new Entry.Figure(12, "=7+5"));
    Path saved = folder.resolve("saved.xlsx");
    DesignFile.save(opened.design(), saved, Optional.of(opened.kept()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
      assertThat(zone(workbook, Emitters.AREA, 0).getCellFormula()).isEqualTo("45*50");
      assertThat(zone(workbook, Emitters.ZONE_FLOW, 3).getCellFormula()).isEqualTo("7+5");
    }
  }

  @Test
  void aValueTypedOverAUsualOneIsTakenAsYoursAndHasAColumnOfItsOwnFromThen() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet zones = workbook.getSheet("Zones");
              assertThat(Headings.of(zones)).doesNotContain("Root depth, yours (in)");
              XSSFCell depth =
                  zones
                      .getRow(TableSheet.FIRST_ROW)
                      .getCell(Headings.value(zones, Plants.ROOT_DEPTH));
              depth.removeFormula();
              depth.setCellValue(14);
            });
    assertThat(entry(opened, Plants.ROOT_DEPTH, 0)).isEqualTo(new Entry.Figure(14));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.contains("typed over Root depth was taken as yours"));
    Path saved = folder.resolve("saved.xlsx");
    DesignFile.save(opened.design(), saved, Optional.of(opened.kept()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
      XSSFSheet zones = workbook.getSheet("Zones");
      assertThat(zone(workbook, Plants.ROOT_DEPTH, 0).getNumericCellValue()).isEqualTo(14);
      assertThat(
              zones.getRow(TableSheet.FIRST_ROW).getCell(Headings.value(zones, Plants.ROOT_DEPTH)))
          .asString()
          .contains("yours");
    }
  }

  @Test
  void aColumnAddedUnderItsHeadingIsRead() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet zones = workbook.getSheet("Zones");
              XSSFTable table = zones.getTables().get(0);
              int at = table.getEndColIndex() + 1;
              zones
                  .getRow(TableSheet.FIRST_ROW - 1)
                  .createCell(at)
                  .setCellValue("Head spacing (ft)");
              zones.getRow(TableSheet.FIRST_ROW).createCell(at).setCellValue(15);
              table.setArea(
                  new AreaReference(
                      table.getStartCellReference(),
                      new CellReference(table.getEndRowIndex(), at),
                      SpreadsheetVersion.EXCEL2007));
            });
    assertThat(entry(opened, Emitters.HEAD_SPACING, 0)).isEqualTo(new Entry.Figure(15));
  }

  /** Spreadsheets keep 65 % as 0.65 in a cell that is shown in hundredths. */
  @Test
  void aPercentageIsReadAsTheCellShowsIt() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              CellStyle percent = workbook.createCellStyle();
              percent.setDataFormat(workbook.createDataFormat().getFormat("0.0%"));
              XSSFCell shown = zone(workbook, Emitters.DISTRIBUTION_UNIFORMITY, 0);
              shown.setCellValue(0.65);
              shown.setCellStyle(percent);
              XSSFCell plain = zone(workbook, Emitters.DISTRIBUTION_UNIFORMITY, 1);
              plain.setCellValue(65);
              plain.setCellStyle(workbook.createCellStyle());
              XSSFCell factor = zone(workbook, Plants.PLANT_FACTOR, 2);
              factor.setCellValue(0.7);
              factor.setCellStyle(percent);
            });
    assertThat(entry(opened, Emitters.DISTRIBUTION_UNIFORMITY, 0))
        .isEqualTo(new Entry.Figure(0.65));
    assertThat(entry(opened, Emitters.DISTRIBUTION_UNIFORMITY, 1))
        .isEqualTo(new Entry.Figure(0.65));
    assertThat(entry(opened, Plants.PLANT_FACTOR, 2)).isEqualTo(new Entry.Figure(0.7));
    Path saved = folder.resolve("saved.xlsx");
    DesignFile.save(opened.design(), saved, Optional.of(opened.kept()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
      assertThat(zone(workbook, Emitters.DISTRIBUTION_UNIFORMITY, 0).getNumericCellValue())
          .isEqualTo(0.65);
    }
    assertThat(Inputs.of(DesignFile.read(saved).design())).isEqualTo(Inputs.of(opened.design()));
  }

  @Test
  void whatIsNoNumberInTheFileItselfIsThatCellsFaultAlone() throws Exception {
    for (String raw : List.of("NaN", "1e999", "12d", "0x1p3")) {
      DesignFile.Opened opened =
          after(workbook -> zone(workbook, Emitters.AREA, 0).getCTCell().setV(raw));
      assertThat(entry(opened, Emitters.AREA, 0))
          .isInstanceOfSatisfying(
              Entry.Unreadable.class, kept -> assertThat(kept.text()).isEqualTo(raw));
      assertThat(entry(opened, Emitters.AREA, 1))
          .isEqualTo(design.book().entry(Emitters.AREA.reference(), 1));
    }
  }

  @Test
  void clearingAnOverrideBringsTheDefaultBackAndTypingOneTakesItAway() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Plants.PLANT_FACTOR, 0).removeFormula();
              zone(workbook, Plants.PLANT_FACTOR, 0).setCellValue(0.7);
              zone(workbook, Plants.PLANT_FACTOR, 1).removeFormula();
              zone(workbook, Plants.PLANT_FACTOR, 1).setBlank();
              zone(workbook, Emitters.RATE_METHOD, 0).removeFormula();
              zone(workbook, Emitters.RATE_METHOD, 0).setCellValue("by spacing");
            });
    assertThat(entry(opened, Plants.PLANT_FACTOR, 0)).isEqualTo(new Entry.Figure(0.7));
    assertThat(entry(opened, Plants.PLANT_FACTOR, 1)).isEqualTo(Entry.BLANK);
    assertThat(entry(opened, Emitters.RATE_METHOD, 0)).isEqualTo(new Entry.Words("by spacing"));
    assertThat(entry(opened, Emitters.RATE_METHOD, 1)).isEqualTo(Entry.BLANK);
  }

  @Test
  void aColumnHeadedInTheOtherUnitsIsConvertedAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              int position = Headings.typed(workbook.getSheet("Zones"), Emitters.AREA);
              workbook.getSheet("Zones").getRow(1).getCell(position).setCellValue("Area (m²)");
              zone(workbook, Emitters.AREA, 0).setCellValue(92.90304);
            });
    assertThat(entry(opened, Emitters.AREA, 0)).isEqualTo(new Entry.Figure(1000));
    assertThat(opened.report().lines()).anyMatch(line -> line.contains("converted to ft²"));
  }

  @Test
  void columnsMayStandInAnotherOrderAndOnesOwnColumnsAndSheetsAreLeftAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet sheet = workbook.getSheet("Zones");
              int area = Headings.typed(sheet, Emitters.AREA);
              int note = Headings.typed(sheet, Facts.ZONE_NOTE);
              for (int row = 1; row <= sheet.getLastRowNum(); row++) {
                XSSFCell first = sheet.getRow(row).getCell(area);
                XSSFCell second = sheet.getRow(row).getCell(note);
                if (row == 1) {
                  String heading = first.getStringCellValue();
                  first.setCellValue("My remark");
                  second.setCellValue(heading);
                } else {
                  second.setCellValue(first.getNumericCellValue());
                  first.setCellValue("mine");
                }
              }
              workbook.createSheet("My sheet").createRow(0).createCell(0).setCellValue("mine");
            });
    assertThat(entry(opened, Emitters.AREA, 3)).isEqualTo(new Entry.Figure(4100));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.contains("“My remark”") && line.contains("is your own"))
        .anyMatch(line -> line.startsWith("My sheet: ") && line.contains("is your own"));
  }

  @Test
  void rowsTypedUnderTheTableAreTakenAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet sheet = workbook.getSheet("Zones");
              XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
              row.createCell(0).setCellValue(13);
              row.createCell(Headings.typed(sheet, Emitters.AREA)).setCellValue(777);
              sheet.createRow(row.getRowNum() + 2).createCell(0).setCellValue("checked by me");
            });
    assertThat(Designs.zones(opened.design())).isEqualTo(13);
    assertThat(entry(opened, Facts.ZONE_NAME, 12)).isEqualTo(new Entry.Words("13"));
    assertThat(entry(opened, Emitters.AREA, 12)).isEqualTo(new Entry.Figure(777));
    assertThat(opened.report().lines()).anyMatch(line -> line.contains("just under the table"));
  }

  @Test
  void aResultThatDiffersFromOursIsToldAndNotTaken() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Plants.LANDSCAPE_COEFFICIENT, 0).setCellValue(9.75);
              XSSFSheet zones = workbook.getSheet("Zones");
              int used = Headings.value(zones, Soils.INTAKE_RATE);
              zones.getRow(TableSheet.FIRST_ROW + 1).getCell(used).setCellValue(9.75);
            });
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    assertThat(opened.report().notes())
        .hasSize(2)
        .allMatch(note -> note.sentence().contains("shows 9.75 in the file"));
  }

  @Test
  void somethingTypedOverACalculatedCellIsLeftAndTold() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Plants.LANDSCAPE_COEFFICIENT, 0).removeFormula();
              zone(workbook, Plants.LANDSCAPE_COEFFICIENT, 0).setCellValue(5);
            });
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    assertThat(opened.report().lines()).anyMatch(line -> line.contains("typed over Landscape"));
  }

  @Test
  void aLineOfTheSiteInAnotherUnitIsConverted() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFRow row = line(workbook.getSheet("Site"), SiteRules.AVAILABLE_FLOW.name());
              SingleReading site = new SingleReading(workbook.getSheet("Site"));
              row.getCell(site.yoursColumn()).setCellValue(45.424941408);
              row.getCell(site.unitColumn()).setCellValue("L/min");
            });
    Outcome outcome = opened.design().book().outcome(SiteRules.AVAILABLE_FLOW.reference(), 0);
    assertThat(outcome.number()).isCloseTo(12, within(1e-12));
  }

  private static XSSFRow line(XSSFSheet sheet, String item) {
    for (int row = 0; row <= sheet.getLastRowNum(); row++) {
      XSSFCell cell = sheet.getRow(row).getCell(0);
      if (cell != null && cell.getStringCellValue().equals(item)) {
        return sheet.getRow(row);
      }
    }
    throw new AssertionError("no line " + item);
  }
}
