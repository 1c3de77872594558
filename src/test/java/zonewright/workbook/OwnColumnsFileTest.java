package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.OwnColumnRows;
import zonewright.design.OwnColumns;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Columns of one's own are in the file as all others are, and come back from it. */
class OwnColumnsFileTest {
  @TempDir Path folder;

  private static Design withSome() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    OwnColumnRows.addSome(design);
    return design;
  }

  private static List<Double> numbers(Book book) {
    List<Double> numbers = new ArrayList<>();
    OwnColumns own = OwnColumns.of(book);
    for (int row = 0; row < book.rows(Sheets.OWN_COLUMNS); row++) {
      Column column = own.column(row).orElseThrow();
      for (int at = 0; at < book.rows(column.reference().table()); at++) {
        numbers.add(book.number(column.reference(), at));
      }
    }
    return numbers;
  }

  @Test
  void aDesignWithColumnsOfOnesOwnIsTheSameWhenOpenedAndSavedAgain() throws Exception {
    Design design = withSome();
    Path file = folder.resolve("own.xlsx");
    DesignFile.write(design, file);
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(opened.report().notes()).isEmpty();
    assertThat(opened.design().book().snapshot().sameEntries(design.book().snapshot())).isTrue();
    assertThat(numbers(opened.design().book())).isEqualTo(numbers(design.book()));
    Path again = folder.resolve("again.xlsx");
    DesignFile.save(opened.design(), again, Optional.of(opened.kept()));
    DesignFile.Opened twice = DesignFile.read(again);
    assertThat(twice.report().notes()).isEmpty();
    assertThat(twice.design().book().snapshot().sameEntries(design.book().snapshot())).isTrue();
    assertThat(headings(again)).contains("Cost a year", "Share of the flow", "Half runs (min)");
  }

  @Test
  void aColumnTakenAwayIsNoStrangerInTheFile() throws Exception {
    Path file = folder.resolve("own.xlsx");
    DesignFile.write(withSome(), file);
    DesignFile.Opened opened = DesignFile.read(file);
    Design design = opened.design();
    design.book().perform(design.edits().removed(Sheets.OWN_COLUMNS, 0, 1));
    DesignFile.save(design, file, Optional.of(opened.kept()));
    assertThat(headings(file)).doesNotContain("Cost a year").contains("Share of the flow");
    DesignFile.Opened after = DesignFile.read(file);
    assertThat(after.report().notes()).isEmpty();
    assertThat(numbers(after.design().book())).isEqualTo(numbers(design.book()));
  }

  private static List<String> headings(Path file) throws IOException {
    List<String> headings = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFSheet sheet = workbook.getSheet("Zones");
      for (Cell cell : sheet.getRow(TableSheet.FIRST_ROW - 1)) {
        headings.add(cell.toString());
      }
    }
    return headings;
  }
}
