package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.estimate.Currencies;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

/** What an office keeps for all its designs, taken from its workbook. Its figures are invented. */
class OfficeCommandTest {
  @TempDir private Path folder;
  private Path office;

  @BeforeEach
  void keep() throws Exception {
    office = folder.resolve("office.xlsx");
    Design tables = Design.blank(UnitSystem.US);
    Book book = tables.book();
    add(tables, Sheets.OWN_PLANTS, 0, "Meadow mix", "cool-season turf", "0.55");
    add(tables, Sheets.PARTS, 0, "Valve box");
    type(tables, Parts.PRICE, 0, "23.40");
    type(tables, JobFacts.LABOUR_RATE, 0, "61");
    type(tables, Facts.PROJECT_NAME, 0, "Tables of the office");
    assertThat(book.rows(Sheets.PARTS)).isEqualTo(1);
    DesignFile.write(tables, office);
  }

  private static void add(Design design, String table, int row, String... texts) {
    design.book().perform(design.edits().inserted(table, row, 1));
    for (int i = 0; i < texts.length; i++) {
      type(design, design.book().declared().table(table).columns().get(i), row, texts[i]);
    }
  }

  private static void type(Design design, Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
  }

  private static Design read(Path file) throws Exception {
    return DesignFile.read(file).design();
  }

  private static String words(Design design, Column column, int row) {
    return design.book().entry(column.reference(), row) instanceof Entry.Words words
        ? words.text()
        : "";
  }

  @Test
  void aNewDesignBeginsWithAllOfItInEitherUnits() throws Exception {
    Path into = folder.resolve("new.xlsx");
    CommandRun run =
        CommandRun.of("office", office.toString(), "--units", "si", "--into", into.toString());
    assertThat(run.code()).isZero();
    Design begun = read(into);
    assertThat(begun.book().system()).isEqualTo(UnitSystem.SI);
    assertThat(begun.book().number(JobFacts.LABOUR_RATE.reference(), 0)).isEqualTo(61);
    assertThat(words(begun, Facts.OFFICE, 0)).isEqualTo("office.xlsx");
    Column from = begun.book().declared().table(Sheets.OWN_PLANTS).columns().get(6);
    assertThat(words(begun, from, 0)).isEqualTo("office.xlsx");
  }

  @Test
  void aDesignTakesWhatItHasNotAndKeepsWhatItHas() throws Exception {
    Design garden = Design.blank(UnitSystem.SI);
    add(garden, Sheets.PARTS, 0, "valve box");
    type(garden, Parts.PRICE, 0, "19");
    type(garden, Facts.PROJECT_NAME, 0, "Garden");
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(garden, file);
    CommandRun run =
        CommandRun.of(
            "office",
            office.toString(),
            "--from",
            file.toString(),
            "--into",
            file.toString(),
            "--replace");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("OwnPlants: 1 row taken from office.xlsx.")
        .contains("Estimate: 1 cell filled in as in office.xlsx.")
        .contains("Here with other values, and left (--changed takes them): Parts: Valve box.");
    Design taken = read(file);
    assertThat(taken.book().number(Parts.PRICE.reference(), 0)).isEqualTo(19);
    assertThat(taken.book().number(JobFacts.LABOUR_RATE.reference(), 0)).isEqualTo(61);
    assertThat(words(taken, Facts.PROJECT_NAME, 0)).isEqualTo("Garden");
    CommandRun.of(
        "office",
        office.toString(),
        "--from",
        file.toString(),
        "--into",
        file.toString(),
        "--replace",
        "--changed");
    assertThat(read(file).book().number(Parts.PRICE.reference(), 0)).isEqualTo(23.4);
  }

  @Test
  void pricesOfAnOfficeInOtherMoneySaySo() throws Exception {
    Design tables = read(office);
    type(tables, JobFacts.CURRENCY, 0, "USD");
    add(tables, Sheets.CREWS, 0, "Two people");
    DesignFile.write(tables, office);
    Design garden = Design.blank(UnitSystem.SI);
    type(garden, JobFacts.CURRENCY, 0, "mxn");
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(garden, file);
    CommandRun run =
        CommandRun.of(
            "office",
            office.toString(),
            "--from",
            file.toString(),
            "--into",
            file.toString(),
            "--replace");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Currencies: prices of office.xlsx are in USD; type what one is worth.")
        .contains("Crews: not taken, for its money is in USD.");
    Design taken = read(file);
    assertThat(words(taken, Parts.PRICE_IN, 0)).isEqualTo("USD");
    assertThat(words(taken, Currencies.CODE, 0)).isEqualTo("USD");
    assertThat(taken.book().entry(JobFacts.LABOUR_RATE.reference(), 0)).isEqualTo(Entry.BLANK);
    assertThat(words(taken, JobFacts.CURRENCY, 0)).isEqualTo("mxn");
  }
}
