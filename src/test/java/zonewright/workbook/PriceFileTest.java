package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.estimate.Parts;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Price books as workbooks: our own, a supplier's, and the one in another design. */
class PriceFileTest {
  @TempDir Path folder;

  private static Book read(Path file) throws DesignFileException, PriceBook.Unreadable {
    Book book = Design.blank(UnitSystem.US).book();
    book.perform(new PriceBook(book).edit(PriceFile.read(file)));
    return book;
  }

  @Test
  void whatIsWrittenReadsBackTheSame() throws DesignFileException, PriceBook.Unreadable {
    Design campus = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
    campus.book().perform(campus.edits().typed(Parts.NOTE.reference(), 0, "=1+1"));
    campus.book().perform(campus.edits().typed(Parts.NOTE.reference(), 1, "'quoted"));
    Path file = folder.resolve("prices.xlsx");
    PriceFile.write(campus.book(), file);
    Book again = read(file);
    assertThat(new PriceBook(again).lines()).isEqualTo(new PriceBook(campus.book()).lines());
    assertThat(again.rows(Sheets.PARTS)).isEqualTo(campus.book().rows(Sheets.PARTS));
  }

  @Test
  void theBookOfAnotherDesignIsWhatWasTypedThere()
      throws DesignFileException, PriceBook.Unreadable {
    Design campus = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
    Path file = WrittenOnce.campus(folder, UnitSystem.US);
    Book again = read(file);
    assertThat(new PriceBook(again).text()).isEqualTo(new PriceBook(campus.book()).text());
    assertThat(again.entry(Parts.WASTE.reference(), 0))
        .as("what stood as a default there is none typed here")
        .isEqualTo(Entry.BLANK);
  }

  private Path supplier(String heading) throws IOException {
    Path file = folder.resolve("supplier.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.createSheet("Terms").createRow(0).createCell(0).setCellValue("Invented terms");
      XSSFSheet sheet = workbook.createSheet("List");
      sheet.createRow(0).createCell(0).setCellValue("Prices of spring (invented)");
      XSSFRow head = sheet.createRow(3);
      head.createCell(1).setCellValue("Item");
      head.createCell(2).setCellValue(heading);
      head.createCell(3).setCellValue("Waste");
      XSSFRow row = sheet.createRow(4);
      row.createCell(1).setCellValue("Valve, 1 in");
      row.createCell(2).setCellFormula("20*1.1");
      workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(2));
      XSSFCellStyle percent = workbook.createCellStyle();
      percent.setDataFormat(workbook.createDataFormat().getFormat("0.0%"));
      row.createCell(3).setCellValue(0.05);
      row.getCell(3).setCellStyle(percent);
      workbook.write(stream);
    }
    return file;
  }

  @Test
  void aSuppliersListIsFoundBelowItsTitleAndReadAsItShows()
      throws IOException, DesignFileException, PriceBook.Unreadable {
    Book book = read(supplier("Price"));
    assertThat(book.rows(Sheets.PARTS)).isEqualTo(1);
    assertThat(book.entry(Parts.ITEM_NAME.reference(), 0))
        .isEqualTo(new Entry.Words("Valve, 1 in"));
    assertThat(book.number(Parts.PRICE.reference(), 0)).isEqualTo(22);
    assertThat(book.number(Parts.WASTE.reference(), 0)).isEqualTo(0.05);
  }

  @Test
  void whatIsNoPriceBookIsRefused() throws IOException {
    Path odd = supplier("Cost per piece");
    assertThatThrownBy(() -> read(odd))
        .isInstanceOf(PriceBook.Unreadable.class)
        .hasMessageContaining("has a column “Cost per piece”");
    Path text = Files.writeString(folder.resolve("text.xlsx"), "Item,Price\n");
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("is not an .xlsx workbook");
    assertThatThrownBy(() -> read(folder.resolve("gone.xlsx")))
        .isInstanceOf(DesignFileException.class)
        .hasMessageContaining("There is no file");
  }
}
