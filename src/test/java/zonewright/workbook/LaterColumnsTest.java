package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.design.OwnColumnRows;
import zonewright.design.OwnColumns;
import zonewright.emitters.Emitters;
import zonewright.estimate.Currencies;
import zonewright.estimate.Parts;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.InputRange;

/** What comes on view in a file after it was first written is printed as all else is. */
class LaterColumnsTest {
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void write() throws Exception {
    file = WrittenOnce.campus(folder, UnitSystem.US);
  }

  private Design change(Consumer<Design> change) throws Exception {
    DesignFile.Opened opened = DesignFile.read(file);
    change.accept(opened.design());
    DesignFile.save(opened.design(), file, Optional.of(opened.kept()));
    return opened.design();
  }

  private void printed(String name, Column column) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFSheet sheet = workbook.getSheet(name);
      assertThat(workbook.isSheetHidden(workbook.getSheetIndex(sheet))).as(name).isFalse();
      int at = Headings.typed(sheet, column);
      assertThat(sheet.isColumnHidden(at)).as("it is on view").isFalse();
      assertThat(at).isLessThanOrEqualTo(lastPrinted(workbook, name));
    }
  }

  private static int lastPrinted(XSSFWorkbook workbook, String name) {
    String area = workbook.getPrintArea(workbook.getSheetIndex(name));
    return CellReference.convertColStringToIndex(area.replaceFirst(".*:\\$([A-Z]+).*", "$1"));
  }

  @Test
  void aColumnOfOnesOwn() throws Exception {
    Design design =
        change(each -> OwnColumnRows.add(each, "Half of it", "Zones", "area", "Area / 2"));
    printed("Zones", OwnColumns.of(design.book()).column(0).orElseThrow());
  }

  @Test
  void rangesTypedOneAfterTheOther() throws Exception {
    for (Column input : List.of(Emitters.AREA, Soils.AVAILABLE_WATER, Soils.INTAKE_RATE)) {
      Column least = InputRange.of(input.reference()).orElseThrow().least();
      change(design -> Designs.type(design, least, 0, "0.1"));
      printed("Ranges", least);
    }
  }

  /** The column is in the file from the start, closed. */
  @Test
  void whatIsTypedIntoAColumnThatWasClosed() throws Exception {
    TableDefinition alternatives = IrrigationSheets.schema().table(Sheets.ALTERNATIVES);
    Column name = alternatives.columns().get(0);
    Column tries = alternatives.column("about").orElseThrow();
    change(
        design -> {
          design.book().perform(design.edits().inserted(Sheets.ALTERNATIVES, 0, 1));
          Designs.type(design, name, 0, "Drip in the beds");
        });
    change(design -> Designs.type(design, tries, 0, "less runoff"));
    printed("Alternatives", tries);
  }

  @Test
  void whatAPersonSetToBePrintedStays() throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      workbook.setPrintArea(workbook.getSheetIndex("Ranges"), "$A$1:$A$9");
      try (var out = Files.newOutputStream(folder.resolve("own.xlsx"))) {
        workbook.write(out);
      }
    }
    file = folder.resolve("own.xlsx");
    Column least = InputRange.of(Emitters.AREA.reference()).orElseThrow().least();
    change(design -> Designs.type(design, least, 0, "100"));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      assertThat(workbook.getPrintArea(workbook.getSheetIndex("Ranges"))).endsWith("$A$1:$A$9");
    }
  }

  @Test
  void currenciesOfPrices() throws Exception {
    change(
        design -> {
          design.book().perform(design.edits().inserted(Sheets.CURRENCIES, 0, 1));
          Designs.type(design, Currencies.CODE, 0, "EUR");
          Designs.type(design, Parts.PRICE_IN, 0, "EUR");
        });
    printed("Parts", Parts.PRICE_IN);
    printed("Currencies", Currencies.CODE);
  }
}
