package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.nights.SiteNights;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.units.UnitSystem;

/** What other programs make of a design's file, and how large one may be. */
class OpeningLimitsTest extends ChangedGarden {
  /** The day that is 0 in one system is 1,462 in the other: ECMA-376 part 1, 18.17.4.1. */
  private static final int DAYS_TO_1904 = 1462;

  private static XSSFCell firstNight(XSSFWorkbook workbook) {
    SingleReading reading = new SingleReading(workbook.getSheet("Site"));
    int row = reading.line(SiteNights.FIRST_NIGHT.name()).orElseThrow();
    return reading.sheet().getRow(row).getCell(reading.yoursColumn());
  }

  @Test
  void datesCountedFrom1904AreTheDaysTheyShowAndStaySoWhenSaved() throws Exception {
    LocalDate night = LocalDate.of(2027, 5, 3);
    DesignFile.Opened opened =
        after(
            workbook -> {
              workbook.getCTWorkbook().getWorkbookPr().setDate1904(true);
              firstNight(workbook).setCellValue(CalendarText.days(night) - DAYS_TO_1904);
              XSSFSheet own = workbook.createSheet("Visits");
              XSSFCell visit = own.createRow(0).createCell(0);
              XSSFCellStyle dated = workbook.createCellStyle();
              dated.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd hh:mm"));
              visit.setCellStyle(dated);
              visit.setCellValue(LocalDateTime.of(2027, 6, 1, 9, 30));
              assertThat(visit.getNumericCellValue()).isLessThan(CalendarText.days(night));
            });
    assertThat(entry(opened, SiteNights.FIRST_NIGHT, 0))
        .isEqualTo(new Entry.Figure(CalendarText.days(night)));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.contains("counts its dates from 1904"));
    Path again = folder.resolve("again.xlsx");
    DesignFile.save(opened.design(), again, Optional.of(opened.kept()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(again))) {
      assertThat(workbook.isDate1904()).isFalse();
      assertThat(firstNight(workbook).getLocalDateTimeCellValue().toLocalDate()).isEqualTo(night);
      assertThat(workbook.getSheet("Visits").getRow(0).getCell(0).getLocalDateTimeCellValue())
          .isEqualTo(LocalDateTime.of(2027, 6, 1, 9, 30));
    }
    assertThat(Inputs.of(DesignFile.read(again).design())).isEqualTo(Inputs.of(opened.design()));
  }

  /** Copies the file with one of its parts changed. */
  private Path with(String part, UnaryOperator<String> change) throws IOException {
    Path changed = folder.resolve("changed.xlsx");
    try (ZipFile whole = new ZipFile(file.toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(changed))) {
      for (ZipEntry each : Collections.list(whole.entries())) {
        zip.putNextEntry(new ZipEntry(each.getName()));
        byte[] content = whole.getInputStream(each).readAllBytes();
        zip.write(
            each.getName().equals(part)
                ? change
                    .apply(new String(content, StandardCharsets.UTF_8))
                    .getBytes(StandardCharsets.UTF_8)
                : content);
        zip.closeEntry();
      }
    }
    return changed;
  }

  private String partOf(String sheet) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return workbook.getSheet(sheet).getPackagePart().getPartName().getName().substring(1);
    }
  }

  private String tableOfZones() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return workbook
          .getSheet("Zones")
          .getTables()
          .get(0)
          .getPackagePart()
          .getPartName()
          .getName()
          .substring(1);
    }
  }

  /** Read row by row it took gigabytes; the zones are those that stand there. */
  @Test
  void aTableSaidToBeAsWideAsASheetHoldsWhatStandsInIt() throws Exception {
    for (String reference : List.of("A2:XFD1048576", "A1:XFD1048576")) {
      Path wide =
          with(
              tableOfZones(),
              part ->
                  part.replaceFirst(
                      " ref=\"[A-Z]+\\d+:[A-Z]+\\d+\"", " ref=\"" + reference + "\""));
      DesignFile.Opened opened = DesignFile.read(wide);
      assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
      assertThat(opened.report().lines())
          .anyMatch(
              line ->
                  line.startsWith("Zones!A2: the table Zones is said to stand in " + reference));
      Designs.type(opened.design(), Facts.ZONE_NOTE, 0, "typed since");
      DesignFile.Written written =
          DesignFile.save(opened.design(), wide, Optional.of(opened.kept()));
      assertThat(written.notes()).isEmpty();
      DesignFile.Opened again = DesignFile.read(wide);
      assertThat(Inputs.of(again.design())).isEqualTo(Inputs.of(opened.design()));
      assertThat(again.report().lines()).noneMatch(line -> line.contains("is said to stand"));
    }
  }

  @Test
  void onlyWhatIsDamagedIsCalledSo() throws Exception {
    Path torn = with(partOf("Zones"), part -> part.substring(0, part.length() / 2));
    assertThatThrownBy(() -> DesignFile.read(torn))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("is damaged or was cut short");
    Path strange = with(partOf("Zones"), part -> part.replaceAll(" t=\"[a-zA-Z]+\"", " t=\"zz\""));
    assertThatThrownBy(() -> DesignFile.read(strange))
        .isInstanceOf(DesignFileException.class)
        .hasMessage(
            strange
                + " is whole, but something in it is not as workbooks have it; open it in a spreadsheet program, save it again as .xlsx, and open that.");
  }

  /** The count before writing is what the file has: nothing is taken that is not opened again. */
  @ParameterizedTest
  @EnumSource(
      value = Sample.class,
      names = {"LIBRARY_GARDEN", "CAMPUS_RETROFIT"})
  void howManyCellsAFileTakesIsKnownBeforeItIsWritten(Sample sample) throws Exception {
    Design large = sample.design(UnitSystem.SI);
    large.book().start(large.edits().duplicated(Sheets.ZONES, List.of(0, 1, 2, 3, 4, 5, 6, 7)));
    Path written = folder.resolve("large.xlsx");
    DesignFile.write(large, written);
    long cells = cells(written);
    long before = cells(sample);
    assertThat(FileSize.cells(large.book()) - FileSize.cells(sample.design(UnitSystem.SI).book()))
        .as("cells of eight zones")
        .isBetween((long) (0.97 * (cells - before)), (long) (1.05 * (cells - before)));
  }

  /** The same limit as opening has, told when a list is taken, with how many zones there may be. */
  @Test
  @Tag(Counts.LONG)
  void moreZonesThanAFileMayHaveAreRefusedWhenTheyAreTaken() {
    Design blank = Design.blank(UnitSystem.US);
    List<Entry> zone = new ArrayList<>();
    for (Column column : blank.book().schema().table(Sheets.ZONES).columns()) {
      zone.add(column.equals(Emitters.AREA) ? new Entry.Figure(900) : Entry.BLANK);
    }
    int few = 60;
    Edit taken = blank.edits().appended(Sheets.ZONES, Collections.nCopies(few, zone));
    assertThat(FileSize.refused(blank.book(), taken)).isEmpty();
    blank.book().start(taken);
    long cells = FileSize.cells(blank.book());
    int most = (int) ((FileSize.MOST_CELLS - FileSize.REST) * few / cells);
    int more = Counts.of(0, most + 1);
    if (more > 0) {
      Design large = Design.blank(UnitSystem.US);
      assertThat(
              FileSize.refused(
                  large.book(),
                  large.edits().appended(Sheets.ZONES, Collections.nCopies(more, zone))))
          .hasValueSatisfying(
              sentence ->
                  assertThat(sentence)
                      .contains("no more than 300000 rows and 5000000 cells are")
                      .contains("divide it into several."));
    }
    assertThat(most).as("zones that fit").isBetween(5_000, 30_000);
  }

  private long cells(Sample sample) throws Exception {
    Path written = folder.resolve("small.xlsx");
    DesignFile.write(sample.design(UnitSystem.SI), written);
    return cells(written);
  }

  private static long cells(Path file) throws Exception {
    SheetScan scan = new SheetScan(false);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry part : Collections.list(zip.entries())) {
        if (part.getName().startsWith("xl/worksheets/sheet")) {
          try (InputStream stream = zip.getInputStream(part)) {
            scan.through(stream, any -> {});
          }
        }
      }
    }
    return scan.cells();
  }
}
