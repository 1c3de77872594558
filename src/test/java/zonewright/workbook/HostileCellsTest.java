package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;

/** What may stand in a design's cells that nobody should put there: told, never lost, never 0. */
class HostileCellsTest extends ChangedGarden {
  /** The cell is kept as it stands, told, and what follows from it has no number. */
  private static void keptAndTold(DesignFile.Opened opened, int row, String text) {
    assertThat(entry(opened, Emitters.AREA, row))
        .isInstanceOfSatisfying(
            Entry.Unreadable.class, kept -> assertThat(kept.text()).isEqualTo(text));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.startsWith("Zones!D" + (TableSheet.FIRST_ROW + row + 1) + ":"));
    assertThat(opened.design().book().outcome(Emitters.RATE_BY_AREA.reference(), row))
        .isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void errorsAndWhatIsNoNumberAreKeptAsWordsAndNeverZero() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              zone(workbook, Emitters.AREA, 0).setCellErrorValue(FormulaError.NUM);
              zone(workbook, Emitters.AREA, 1).setCellErrorValue(FormulaError.DIV0);
              zone(workbook, Emitters.AREA, 2).setCellValue("NaN");
              zone(workbook, Emitters.AREA, 3).setCellValue("Infinity");
            });
    List<String> texts = List.of("#NUM!", "#DIV/0!", "NaN", "Infinity");
    for (int row = 0; row < texts.size(); row++) {
      keptAndTold(opened, row, texts.get(row));
    }
  }

  @Test
  void aNumberBeyondAllMeasureIsKeptAndRefused() throws Exception {
    DesignFile.Opened opened =
        after(workbook -> zone(workbook, Emitters.AREA, 0).setCellValue(1e308));
    assertThat(entry(opened, Emitters.AREA, 0)).isEqualTo(new Entry.Figure(1e308));
    assertThat(opened.design().book().outcome(Emitters.RATE_BY_AREA.reference(), 0))
        .isInstanceOf(Outcome.Refused.class);
    Path again = folder.resolve("again.xlsx");
    DesignFile.write(opened.design(), again);
    assertThat(Inputs.of(DesignFile.read(again).design())).isEqualTo(Inputs.of(opened.design()));
  }

  @Test
  void aDecimalCommaInACellOfWordsIsNotReadAsThousands() throws Exception {
    DesignFile.Opened opened =
        after(workbook -> zone(workbook, Emitters.EMITTER_FLOW, 0).setCellValue("1,5"));
    Entry entry = entry(opened, Emitters.EMITTER_FLOW, 0);
    assertThat(entry).isNotEqualTo(new Entry.Figure(15));
    assertThat(entry)
        .satisfiesAnyOf(
            one -> assertThat(one).isEqualTo(new Entry.Figure(1.5)),
            other -> assertThat(other).isInstanceOf(Entry.Unreadable.class));
    assertThat(opened.report().lines()).anyMatch(line -> line.contains("1,5"));
  }

  @Test
  void formulasThatGoInCirclesAreNotFollowed() throws Exception {
    List<String> cells = new ArrayList<>();
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFCell one = zone(workbook, Emitters.AREA, 0);
              XSSFCell other = zone(workbook, Emitters.AREA, 1);
              one.setBlank();
              other.setBlank();
              one.setCellFormula(other.getReference());
              other.setCellFormula(one.getReference());
              cells.add(one.getReference());
              cells.add(other.getReference());
              XSSFSheet own = workbook.createSheet("Mine");
              own.createRow(0).createCell(0).setCellFormula("B1");
              own.getRow(0).createCell(1).setCellFormula("A1");
            });
    keptAndTold(opened, 0, "=" + cells.get(1));
    keptAndTold(opened, 1, "=" + cells.get(0));
  }

  @Test
  void aHeadingThatStandsTwiceIsTakenOnceAndTheOtherToldAndKept() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet zones = workbook.getSheet("Zones");
              int beside = zones.getTables().get(0).getEndColIndex() + 1;
              zones.getTables().get(0).setArea(wider(zones));
              zones.getRow(1).createCell(beside).setCellValue("Area (ft²)");
              zones.getRow(2).createCell(beside).setCellValue(77);
            });
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
    assertThat(opened.report().lines())
        .anyMatch(line -> line.contains("“Area (ft²)”") && line.contains("not read"));
  }

  private static org.apache.poi.ss.util.AreaReference wider(XSSFSheet zones) {
    var table = zones.getTables().get(0);
    return new org.apache.poi.ss.util.AreaReference(
        new org.apache.poi.ss.util.CellReference(1, 0),
        new org.apache.poi.ss.util.CellReference(
            table.getEndRowIndex(), table.getEndColIndex() + 1),
        org.apache.poi.ss.SpreadsheetVersion.EXCEL2007);
  }

  @Test
  void cellsMergedOverTheTableLeaveTheOthersBlankNotZero() throws Exception {
    DesignFile.Opened opened =
        after(
            workbook -> {
              XSSFSheet zones = workbook.getSheet("Zones");
              int area = Headings.typed(zones, Emitters.AREA);
              // Programs that merge cells keep the first value and blank the others.
              zone(workbook, Emitters.AREA, 1).setBlank();
              zones.addMergedRegionUnsafe(new CellRangeAddress(2, 3, area, area));
            });
    assertThat(entry(opened, Emitters.AREA, 0))
        .isEqualTo(design.book().entry(Emitters.AREA.reference(), 0));
    assertThat(entry(opened, Emitters.AREA, 1)).isEqualTo(Entry.BLANK);
    assertThat(opened.design().book().outcome(Emitters.RATE_BY_AREA.reference(), 1))
        .isInstanceOf(Outcome.Missing.class);
    assertThat(entry(opened, Plants.PLANT, 1))
        .isEqualTo(design.book().entry(Plants.PLANT.reference(), 1));
  }

  /** Puts rows with nothing but a format below the zones. */
  private Path padded(int rows) throws IOException {
    Path padded = folder.resolve("padded.xlsx");
    String part;
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      part = workbook.getSheet("Zones").getPackagePart().getPartName().getName().substring(1);
    }
    try (ZipFile whole = new ZipFile(file.toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(padded))) {
      zip.setLevel(1);
      for (ZipEntry each : Collections.list(whole.entries())) {
        zip.putNextEntry(new ZipEntry(each.getName()));
        byte[] content = whole.getInputStream(each).readAllBytes();
        if (each.getName().equals(part)) {
          String text = new String(content, StandardCharsets.UTF_8);
          int end = text.indexOf("</sheetData>");
          zip.write(text.substring(0, end).getBytes(StandardCharsets.UTF_8));
          for (int row = 1000; row < 1000 + rows; row++) {
            String cells =
                "<row r=\"%s\" s=\"1\" customFormat=\"1\"><c r=\"A%s\" s=\"1\"/><c r=\"B%s\" s=\"1\"/></row>"
                    .formatted(row, row, row);
            zip.write(cells.getBytes(StandardCharsets.UTF_8));
          }
          zip.write(text.substring(end).getBytes(StandardCharsets.UTF_8));
        } else {
          zip.write(content);
        }
        zip.closeEntry();
      }
    }
    return padded;
  }

  @Test
  void manyRowsWithNothingButAFormatCostNothing() throws Exception {
    DesignFile.Opened opened = DesignFile.read(padded(250_000));
    assertThat(Inputs.of(opened.design())).isEqualTo(Inputs.of(design));
  }

  @Test
  void aMillionOfThemAreRefusedWithTheAmountThatIsRead() throws IOException {
    Path million = padded(1_000_000);
    assertThatThrownBy(() -> DesignFile.read(million))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContainingAll("padded.xlsx", "300000 rows", "delete what is not needed");
  }
}
