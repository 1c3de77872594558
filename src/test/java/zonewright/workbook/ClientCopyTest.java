package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Parts;
import zonewright.sheet.Book;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;

/** A client gets the price, and nothing of how the office came to it. */
class ClientCopyTest {
  private static final String NOTE = "agreed with the wholesaler by telephone";

  @TempDir Path folder;

  private final Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
  private Path file;

  @BeforeEach
  void written() {
    design.book().perform(design.edits().typed(Parts.NOTE.reference(), 1, NOTE));
    file =
        WrittenOnce.copy(
            "client's copy",
            folder.resolve("client.xlsx"),
            fresh -> DesignFile.write(design, fresh, PackOrder.forClient(), Optional.empty()));
  }

  @Test
  void noSheetOfTheOfficeIsInItAndNoFormulaAsksForOne() throws IOException {
    List<String> titles =
        ClientCopy.WITHHELD.stream()
            .map(table -> design.book().blueprint().table(table).title())
            .toList();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      assertThat(titles).allSatisfy(title -> assertThat(workbook.getSheet(title)).isNull());
      assertThat(workbook.getSheet("Zones")).isNotNull();
      assertThat(workbook.getSheet("Proposal")).isNotNull();
    }
    String everything = everything();
    for (String title : titles) {
      assertThat(everything).doesNotContain(">" + title + "_").doesNotContain("(" + title + "[");
    }
  }

  @Test
  void nothingTypedIntoThePriceBookIsLeftAnywhereInTheFile() throws IOException {
    assertThat(everything()).doesNotContain(NOTE);
  }

  @Test
  void thePriceIsInItAndAnotherProgramFindsNothingBroken() throws IOException {
    SpreadsheetProgram.require();
    Book book = design.book();
    double price = book.number(BuildUp.NET_PRICE.reference(), 0);
    assertThat(price).isPositive();
    Path again = SpreadsheetProgram.recalculate(file, folder);
    List<String> broken = new ArrayList<>();
    boolean found = false;
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(again))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            CellType type =
                cell.getCellType() == CellType.FORMULA
                    ? cell.getCachedFormulaResultType()
                    : cell.getCellType();
            if (type == CellType.ERROR) {
              broken.add(sheet.getSheetName() + " " + cell.getAddress());
            }
            found |=
                sheet.getSheetName().equals("Proposal")
                    && type == CellType.NUMERIC
                    && Math.abs(cell.getNumericCellValue() - price) < 0.005;
          }
        }
      }
    }
    assertThat(broken).isEmpty();
    assertThat(found).as("the proposal names the price %s", price).isTrue();
  }

  @Test
  void itOpensAsADesignWithTheZonesAsTheyWere() throws DesignFileException {
    Design back = DesignFile.read(file).design();
    assertThat(Designs.zones(back)).isEqualTo(Designs.zones(design));
  }

  private String everything() throws IOException {
    StringBuilder text = new StringBuilder();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        zip.transferTo(part);
        text.append(part.toString(StandardCharsets.UTF_8));
      }
    }
    return text.toString();
  }
}
