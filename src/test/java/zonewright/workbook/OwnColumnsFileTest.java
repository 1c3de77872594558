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
import zonewright.design.OwnColumnDraft;
import zonewright.design.OwnColumnRows;
import zonewright.design.OwnColumnSheet;
import zonewright.design.OwnColumns;
import zonewright.design.Sample;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Remark;
import zonewright.sheet.Tint;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookNames;

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
    assertThat(marks(again)).hasSize(1);
    assertThat(headings(again)).contains("Cost a year", "Share of the flow", "Half runs (min)");
  }

  private static void remark(Design design, String column, String words, Tint tint) {
    Reference reference = reference(design.book(), column);
    int last = design.book().rows(reference.table()) - 1;
    design.book().perform(design.edits().noted(reference, last, words));
    design.book().perform(design.edits().tinted(List.of(reference), List.of(last), tint));
  }

  private static Reference reference(Book book, String column) {
    return book.schema().tables().stream()
        .flatMap(table -> table.columns().stream())
        .filter(each -> each.name().equals(column))
        .map(Column::reference)
        .findFirst()
        .orElseThrow();
  }

  private static int comments(Path file, String sheet) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return workbook.getSheet(sheet).getCellComments().size();
    }
  }

  /** Beside other columns, in a new file and in one that was opened. */
  @Test
  void notesAndColoursStandInTheFileAndGoWithAnotherName() throws Exception {
    Design design = withSome();
    remark(design, "Share of the flow", "most of it", Tint.GREEN);
    remark(design, "Water price", "asked the utility", Tint.NONE);
    Path file = folder.resolve("noted.xlsx");
    DesignFile.write(design, file);
    assertThat(comments(file, "Zones")).isEqualTo(1);
    assertThat(comments(file, "Site")).isEqualTo(1);
    DesignFile.Opened opened = DesignFile.read(file);
    Design read = opened.design();
    assertThat(read.book().snapshot().sameEntries(design.book().snapshot())).isTrue();
    read.book().perform(read.edits().typed(OwnColumnSheet.NAME.reference(), 2, "Part of flow"));
    read.book().perform(OwnColumnDraft.removed(read.book(), 1));
    read.book().perform(read.edits().removed(Sheets.ZONES, 0, 1));
    DesignFile.save(read, file, Optional.of(opened.kept()));
    assertThat(comments(file, "Zones")).isEqualTo(1);
    assertThat(comments(file, "Site")).as("its column is gone").isZero();
    Design again = DesignFile.read(file).design();
    assertThat(again.book().snapshot().sameEntries(read.book().snapshot())).isTrue();
    assertThat(
            again
                .book()
                .remark(reference(again.book(), "Part of flow"), again.book().rows("zones") - 1))
        .isEqualTo(new Remark("most of it", Tint.GREEN));
  }

  @Test
  void aColumnTakenAwayIsNoStrangerInTheFile() throws Exception {
    Path file = folder.resolve("own.xlsx");
    DesignFile.write(withSome(), file);
    DesignFile.Opened opened = DesignFile.read(file);
    Design design = opened.design();
    design.book().perform(design.edits().removed(Sheets.OWN_COLUMNS, 0, 1));
    design.book().perform(design.edits().typed(OwnColumnSheet.AT_MOST.reference(), 1, ""));
    DesignFile.save(design, file, Optional.of(opened.kept()));
    assertThat(marks(file)).as("the limit is gone, and its mark with it").isEmpty();
    assertThat(headings(file)).doesNotContain("Cost a year").contains("Share of the flow");
    DesignFile.Opened after = DesignFile.read(file);
    assertThat(after.report().notes()).isEmpty();
    assertThat(numbers(after.design().book())).isEqualTo(numbers(design.book()));
  }

  /** Whatever a name may hold, it stands in the file once, and what the file needs is refused. */
  @Test
  void namesAreToldApartInTheFile() throws Exception {
    Design design = Sample.HOMEWORK.design(UnitSystem.US);
    List<String> names =
        List.of(
            "A+B",
            "A-B",
            "Größe & mehr",
            "It's 50% × 2.5",
            "水",
            "Area used",
            "Area checked",
            "Area row",
            "Available flow from",
            "Zones row",
            "A+B step 1",
            WorkbookNames.MISSING,
            WorkbookNames.FILLED_IN,
            WorkbookNames.IDENTITY,
            SingleSheet.UNITS_LINE,
            "Water used");
    for (String sheet : List.of("Site", "Zones")) {
      names.forEach(name -> OwnColumnRows.add(design, name, sheet, "plain number", "1 + 1"));
    }
    OwnColumns own = OwnColumns.of(design.book());
    List<String> taken = new ArrayList<>();
    for (int row = names.size(); row < 2 * names.size(); row++) {
      own.column(row).map(Column::name).ifPresent(taken::add);
    }
    assertThat(taken)
        .contains("A+B", "Größe & mehr", "It's 50% × 2.5", "水", "Water used")
        .doesNotContain("A-B", "Area used", "Area checked", "Area row", "Zones row", "A+B step 1")
        .doesNotContain(WorkbookNames.MISSING)
        .doesNotContain(WorkbookNames.FILLED_IN, WorkbookNames.IDENTITY, SingleSheet.UNITS_LINE);
    Path file = folder.resolve("names.xlsx");
    DesignFile.write(design, file);
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(opened.report().notes()).isEmpty();
    assertThat(opened.design().book().snapshot().sameEntries(design.book().snapshot())).isTrue();
  }

  /** The conditions of the marks of limits on columns of one's own among the zones. */
  private static List<String> marks(Path file) throws IOException {
    List<String> marks = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      var formats = workbook.getSheet("Zones").getSheetConditionalFormatting();
      for (int i = 0; i < formats.getNumConditionalFormattings(); i++) {
        String formula = formats.getConditionalFormattingAt(i).getRule(0).getFormula1();
        if (formula.contains("zones.own-")) {
          marks.add(formula);
        }
      }
    }
    return marks;
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
