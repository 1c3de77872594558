package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.IrrigationSheets;
import zonewright.estimate.BuildUp;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookNames;

/** A file whose currency is changed shows its money by the new one, and by no other. */
class CurrencyFileTest {
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void write() throws Exception {
    file = WrittenOnce.campus(folder, UnitSystem.US);
  }

  private void currency(String code) throws Exception {
    DesignFile.Opened opened = DesignFile.read(file);
    Designs.type(opened.design(), JobFacts.CURRENCY, 0, code);
    DesignFile.save(opened.design(), file, Optional.of(opened.kept()));
  }

  private static XSSFCell cell(XSSFWorkbook workbook, Column column) {
    String table = column.reference().table();
    CellReference place =
        new CellReference(
            workbook
                .getName(WorkbookNames.defined(IrrigationSheets.schema().table(table), column))
                .getRefersToFormula());
    return workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
  }

  private String format(Column column) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return cell(workbook, column).getCellStyle().getDataFormatString();
    }
  }

  private String formatOfPrices() throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      int at = Headings.typed(workbook.getSheet("Parts"), Parts.PRICE);
      return workbook
          .getSheet("Parts")
          .getRow(TableSheet.FIRST_ROW)
          .getCell(at)
          .getCellStyle()
          .getDataFormatString();
    }
  }

  @Test
  void decimalsFollowTheCurrencyThereAndBack() throws Exception {
    String usual = format(BuildUp.TOTAL);
    String prices = formatOfPrices();
    assertThat(usual).isEqualTo("#,##0.00");
    currency("JPY");
    assertThat(format(BuildUp.TOTAL)).isEqualTo("#,##0");
    assertThat(formatOfPrices()).as("a price shows the decimals it has").isEqualTo("General");
    currency("KWD");
    assertThat(format(BuildUp.TOTAL)).isEqualTo("#,##0.000");
    currency("USD");
    assertThat(format(BuildUp.TOTAL)).isEqualTo(usual);
    assertThat(formatOfPrices()).isEqualTo(prices);
  }

  @Test
  void aFormatOfOnesOwnStays() throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFCell total = cell(workbook, BuildUp.TOTAL);
      XSSFCellStyle own = workbook.createCellStyle();
      own.cloneStyleFrom(total.getCellStyle());
      own.setDataFormat(workbook.createDataFormat().getFormat("0.0"));
      total.setCellStyle(own);
      try (var out = Files.newOutputStream(folder.resolve("own.xlsx"))) {
        workbook.write(out);
      }
    }
    file = folder.resolve("own.xlsx");
    currency("JPY");
    assertThat(format(BuildUp.TOTAL)).isEqualTo("0.0");
  }
}
