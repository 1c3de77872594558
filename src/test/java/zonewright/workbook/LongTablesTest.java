package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/** Long tables go row by row through the file, and nothing in them is another for it. */
class LongTablesTest {
  @TempDir Path folder;

  private static List<String> cells(XSSFWorkbook workbook) {
    List<String> cells = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell each : row) {
          XSSFCell cell = (XSSFCell) each;
          String formula =
              cell.getCTCell().isSetF() ? cell.getCTCell().getF().getStringValue() : "";
          cells.add(
              "%s!%s %s =%s %s %s"
                  .formatted(
                      sheet.getSheetName(),
                      cell.getReference(),
                      cell.getCellType(),
                      formula,
                      SheetCell.of(cell),
                      look(cell.getCellStyle())));
        }
      }
    }
    return cells;
  }

  private static String look(XSSFCellStyle style) {
    return "%s %s %s %s %s"
        .formatted(
            style.getDataFormatString(),
            style.getLocked(),
            style.getQuotePrefixed(),
            style.getFont().getItalic(),
            style.getFillForegroundXSSFColor() == null
                ? "-"
                : style.getFillForegroundXSSFColor().getARGBHex());
  }

  private static void same(XSSFWorkbook one, XSSFWorkbook other) {
    List<String> left = cells(one);
    List<String> right = cells(other);
    assertThat(left).hasSameSizeAs(right);
    for (int i = 0; i < left.size(); i++) {
      assertThat(left.get(i)).isEqualTo(right.get(i));
    }
  }

  private static XSSFWorkbook written(Design design, PackOrder order, int longerThan)
      throws IOException {
    LaterRows later = new LaterRows(longerThan);
    try (XSSFWorkbook workbook = DesignWorkbook.of(design, order, later)) {
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      later.write(workbook, file, Progress.UNWATCHED);
      return new XSSFWorkbook(new ByteArrayInputStream(file.toByteArray()));
    }
  }

  @Test
  void rowsWrittenOneByOneAreTheSameCells() throws IOException {
    for (UnitSystem system : UnitSystem.values()) {
      Design design = Designs.broken(system);
      PackOrder order = PackOrder.of(PackSheets.standing());
      try (XSSFWorkbook plain = written(design, order, Integer.MAX_VALUE);
          XSSFWorkbook later = written(design, order, 0)) {
        same(later, plain);
        assertThat(later.getSheet("Zones").getCTWorksheet().getDimension().getRef())
            .isEqualTo(plain.getSheet("Zones").getCTWorksheet().getDimension().getRef());
      }
    }
  }

  @Test
  void cellsReadAsTheyGoByAreTheSame() throws IOException, DesignFileException {
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(Designs.broken(UnitSystem.US), file);
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet each : workbook) {
        XSSFSheet sheet = (XSSFSheet) each;
        SheetCells whole = SheetCells.of(sheet);
        SheetCells streamed;
        try (InputStream part = sheet.getPackagePart().getInputStream()) {
          streamed = LongSheet.read(workbook, sheet, false, part, bytes -> {});
        }
        for (int row = 0; row <= sheet.getLastRowNum(); row++) {
          for (int column = 0; column < 120; column++) {
            assertThat(streamed.at(row, column)).isEqualTo(whole.at(row, column));
          }
        }
      }
    }
  }

  @Test
  void aSheetWithoutMostOfItsRowsKeepsWhatStandsAroundThem() throws Exception {
    StringBuilder sheet = new StringBuilder("<worksheet><sheetData>");
    for (int row = 1; row <= 9000; row++) {
      sheet.append("<row r=\"%s\"><c r=\"A%s\"><v>%s</v></c></row>".formatted(row, row, row));
    }
    sheet.append("</sheetData><pageMargins/></worksheet>");
    byte[] part = sheet.toString().getBytes(StandardCharsets.UTF_8);
    SheetScan scan = new SheetScan(true);
    scan.through(new ByteArrayInputStream(part), seen -> {});
    assertThat(scan.rows()).isEqualTo(9000);
    assertThat(scan.cells()).isEqualTo(9000);
    assertThat(scan.bytes()).isEqualTo(part.length);
    assertThat(new String(scan.left(), StandardCharsets.UTF_8))
        .startsWith("<worksheet><sheetData><row r=\"1\">")
        .endsWith("<v>40</v></c></row></sheetData><pageMargins/></worksheet>");
  }

  @Test
  void threeHundredZonesComeBackAndCanBeBrokenOff() throws Exception {
    Design design = threeHundred();
    Path file = folder.resolve("many.xlsx");
    List<Long> told = new ArrayList<>();
    DesignFile.save(design, file, Optional.empty(), (done, of) -> told.add(100 * done / of));
    assertThat(told).isSorted().endsWith(100L);

    assertThatThrownBy(() -> DesignFile.read(file, LongTablesTest::halfWay))
        .isInstanceOf(Progress.BrokenOff.class);
    DesignFile.Opened opened = DesignFile.read(file, (done, of) -> told.add(done));
    assertThat(Inputs.differences(design, opened.design())).isEmpty();

    Designs.type(opened.design(), Emitters.AREA, 299, "4321");
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(
            () -> DesignFile.save(opened.design(), file, Optional.empty(), LongTablesTest::halfWay))
        .isInstanceOf(Progress.BrokenOff.class);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
    assertThat(opened.design().book().entry(Emitters.AREA.reference(), 299))
        .isEqualTo(new Entry.Figure(4321));
  }

  private static Design threeHundred() {
    Design design = Designs.broken(UnitSystem.US);
    List<Integer> all = IntStream.range(0, Designs.zones(design)).boxed().toList();
    while (Designs.zones(design) < 300) {
      design.book().start(design.edits().duplicated(Sheets.ZONES, all));
    }
    return design;
  }

  private static void halfWay(long done, long of) {
    if (2 * done > of) {
      throw new Progress.BrokenOff();
    }
  }

  @Test
  void aClientsCopyHasTheSameInLongTables() throws IOException {
    Design design = Designs.demo(UnitSystem.US);
    PackOrder order = PackOrder.forClient().withoutProposal();
    try (XSSFWorkbook plain = written(design, order, Integer.MAX_VALUE);
        XSSFWorkbook later = written(design, order, 0)) {
      same(later, plain);
    }
  }
}
