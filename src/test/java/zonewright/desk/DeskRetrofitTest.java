package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Parts;
import zonewright.retrofit.Difference;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/** A retrofit in the window: from the zones as found to the proposal that is handed over. */
@Tag("window")
@CacioTest
class DeskRetrofitTest {
  private final DeskDriver desk = new DeskDriver();
  @TempDir Path folder;

  @AfterEach
  void close() {
    desk.close();
  }

  private double number(zonewright.sheet.Column column, int row) {
    return desk.ask(() -> desk.book().number(column.reference(), row));
  }

  private static boolean formShows() {
    return Arrays.stream(Window.getWindows())
        .anyMatch(window -> "list form".equals(window.getName()) && window.isShowing());
  }

  @Test
  void fromAsFoundToTheProposal() throws DesignFileException, IOException {
    Path campus = folder.resolve("campus.xlsx");
    DesignFile.write(Sample.CAMPUS_RETROFIT.design(UnitSystem.US), campus);
    desk.act(() -> desk.window().keeper().open(campus));
    desk.waitUntil("it is open", () -> desk.window().openDesign().name().equals("campus.xlsx"));
    double price = number(BuildUp.TOTAL, 0);

    desk.choose("Propose the zones as found");
    assertThat(number(Difference.HEADS_NEW, 0)).isZero();
    assertThat(number(BuildUp.TOTAL, 0)).isLessThan(price);

    desk.goTo(Emitters.EMITTER, 0);
    desk.type("rotor");
    assertThat(number(Difference.HEADS_NEW, 0)).isEqualTo(24);

    desk.questions.file = Optional.of(folder.resolve("prices.csv"));
    desk.choose("Write the price book …");
    desk.waitUntil("it is written", () -> Files.exists(folder.resolve("prices.csv")));
    desk.goTo(Parts.PRICE, 0);
    desk.type("999");
    desk.choose("Read a price book …");
    desk.waitUntil("what changes is told", DeskRetrofitTest::formShows);
    desk.press("ctrl ENTER");
    desk.waitUntil("the price is back", () -> number(Parts.PRICE, 0) == 180);

    desk.questions.file = Optional.of(folder.resolve("prices.xlsx"));
    desk.choose("Write the price book …");
    desk.waitUntil("it is written", () -> Files.exists(folder.resolve("prices.xlsx")));
    desk.goTo(Parts.PRICE, 0);
    desk.type("999");
    desk.choose("Read a price book …");
    desk.waitUntil("what changes is told", DeskRetrofitTest::formShows);
    desk.press("ctrl ENTER");
    desk.waitUntil("the price is back", () -> number(Parts.PRICE, 0) == 180);

    Path proposal = folder.resolve("proposal.xlsx");
    desk.questions.file = Optional.of(proposal);
    desk.choose("Copy for the client …");
    desk.waitUntil("it is handed over", () -> Files.exists(proposal));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(proposal))) {
      assertThat(workbook.getSheet("Proposal")).isNotNull();
      assertThat(workbook.getSheet("Retrofit")).isNotNull();
      assertThat(workbook.getSheet("Estimate details")).as("for the office only").isNull();
    }
    assertThat(desk.ask(() -> desk.book().rows(Sheets.FOUND))).isEqualTo(24);

    desk.goTo(Parts.PRICE, 0);
    desk.type("ask");
    Path without = folder.resolve("without.xlsx");
    desk.questions.file = Optional.of(without);
    desk.choose("Copy for the client …");
    assertThat(without).doesNotExist();
    desk.click("offer Copy without the proposal …");
    desk.waitUntil("it is handed over", () -> Files.exists(without));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(without))) {
      assertThat(workbook.getSheet("Proposal")).isNull();
      assertThat(workbook.getSheet("Parts")).isNull();
    }
  }
}
