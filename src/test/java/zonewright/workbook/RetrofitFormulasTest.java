package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.savings.Cases;
import zonewright.savings.Savings;
import zonewright.savings.Worth;
import zonewright.savings.Years;
import zonewright.sheet.Book;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** The worth of a retrofit is what a spreadsheet program's own functions make of its cash. */
class RetrofitFormulasTest {
  private static final double A_CENT = 0.01;

  @TempDir Path folder;

  @Test
  void everyFormulaOfTheRetrofitIsTheEnginesInAnotherProgram()
      throws DesignFileException, IOException {
    LiveFormulasTest live = new LiveFormulasTest();
    live.folder = folder;
    live.everyCellHasTheEnginesNumberOrNone(Sample.CAMPUS_RETROFIT.design(UnitSystem.US));
  }

  @Test
  void presentValueRateOfReturnAndPaybackAreThoseOfTheProgramsOwnFunctions()
      throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.SI);
    Path file = WrittenOnce.campus(folder, UnitSystem.SI);
    Path asked = folder.resolve("asked.xlsx");
    ask(design, file, asked);
    Path answer = SpreadsheetProgram.recalculate(asked, folder);
    Book book = design.book();
    try (XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(answer))) {
      XSSFSheet sheet = theirs.getSheet("Asked");
      for (int at = 0; at < Cases.NAMES.size(); at++) {
        assertThat(book.number(Worth.NET_PRESENT_VALUE.reference(), at))
            .isCloseTo(sheet.getRow(at).getCell(0).getNumericCellValue(), offset(A_CENT));
        assertThat(book.number(Worth.RATE_OF_RETURN.reference(), at))
            .isCloseTo(sheet.getRow(at).getCell(1).getNumericCellValue(), offset(1e-9));
        assertThat(book.number(Worth.PAYBACK.reference(), at))
            .isCloseTo(sheet.getRow(at).getCell(2).getNumericCellValue(), offset(1e-9));
      }
    }
  }

  private static void ask(Design design, Path file, Path asked) throws IOException {
    Book book = design.book();
    WorkbookLayout layout = WorkbookLayout.of(book);
    WorkbookNames names = layout.names(book.schema().tables().get(0));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(asked)) {
      XSSFSheet sheet = workbook.createSheet("Asked");
      String rate = names.cell(Savings.DISCOUNT.reference());
      for (int at = 0; at < Cases.NAMES.size(); at++) {
        String cash = names.column(Years.CASH_OF_CASE.get(at).reference());
        List<String> formulas =
            List.of(
                "INDEX(%s,1)+NPV(%s,INDEX(%s,2):INDEX(%s,31))".formatted(cash, rate, cash, cash),
                "IRR(" + cash + ")",
                "-INDEX(%s,1)/INDEX(%s,2)".formatted(cash, cash));
        for (int column = 0; column < formulas.size(); column++) {
          if (column == 0) {
            sheet.createRow(at);
          }
          sheet.getRow(at).createCell(column).setCellFormula(formulas.get(column));
        }
      }
      workbook.write(stream);
    }
  }
}
