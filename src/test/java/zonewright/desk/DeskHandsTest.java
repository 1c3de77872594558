package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;
import zonewright.water.Demand;

/** What people who know spreadsheets expect of the window around the cells. */
@Tag("window")
@CacioTest
class DeskHandsTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private String said() {
    return desk.ask(() -> desk.window().messages().sentence());
  }

  @Test
  void typingIntoACalculatedCellSaysWhyAndLeadsToWhatItComesFrom() {
    desk.goTo(Plants.LANDSCAPE_COEFFICIENT, 0);
    desk.write("3");
    assertThat(said()).contains("Landscape coefficient").contains("calculated");
    desk.click("offer Plant factor");
    assertThat(desk.current()).isEqualTo(new Place(Plants.PLANT_FACTOR.reference(), 0));
  }

  @Test
  void aKnownRateIsTypedOverTheOneCalculated() {
    desk.goTo(Emitters.PRECIPITATION_RATE, 0);
    desk.type("0.6");
    assertThat(desk.ask(() -> desk.book().number(Emitters.PRECIPITATION_RATE.reference(), 0)))
        .isEqualTo(0.6);
    double minutes = desk.ask(() -> desk.book().number(Demand.RUN_TIME.reference(), 0));
    desk.goTo(Emitters.PRECIPITATION_RATE, 0);
    desk.press("DELETE");
    assertThat(desk.ask(() -> desk.book().number(Demand.RUN_TIME.reference(), 0)))
        .isNotEqualTo(minutes);
  }

  @Test
  void undoGoesToWhereItUndidAndSaysWhat() {
    desk.goTo(Emitters.AREA, 2);
    desk.type("95");
    desk.act(() -> desk.window().deck().show(Sheets.SITE));
    desk.press("ctrl Z");
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 2));
    assertThat(desk.ask(() -> ((JLabel) desk.named("news")).getText()))
        .contains("Taken back")
        .contains("Area");
    desk.goTo(Plants.PLANT, 0);
    desk.press("ctrl Y");
    assertThat(desk.current()).isEqualTo(new Place(Emitters.AREA.reference(), 2));
    assertThat(desk.ask(() -> desk.book().entry(Emitters.AREA.reference(), 2)))
        .isEqualTo(new Entry.Figure(95));
  }

  @Test
  void whatWasPastedWithHeadingsIsOfferedToBeMatched() {
    int before = desk.ask(() -> desk.book().rows(Sheets.ZONES));
    desk.act(() -> desk.window().deck().goTo(new Place(Emitters.AREA.reference(), 0)));
    Toolkit.getDefaultToolkit()
        .getSystemClipboard()
        .setContents(
            new StringSelection("Station\tSize\tHeads\nA\t500\t8\nB\t700\t9\n"),
            (clipboard, contents) -> {});
    desk.press("ctrl V");
    assertThat(said()).contains("headings");
    assertThat(desk.shows("offer Choose where each column goes …")).isTrue();
    assertThat(desk.ask(() -> desk.book().journal().toUndo())).isEmpty();
    desk.click("offer Paste it as it is");
    assertThat(desk.ask(() -> desk.book().journal().toUndo())).isPresent();
    assertThat(desk.ask(() -> desk.book().rows(Sheets.ZONES))).isEqualTo(before);
  }

  @Test
  void aRemedyIsOneClick() {
    JTable list = (JTable) desk.named("findings list");
    desk.goTo(Plants.PLANT, 1);
    desk.type("shrubs (dri climate)");
    desk.waitUntil(
        "the finding is there",
        () -> list.getRowCount() > 1 && String.valueOf(list.getValueAt(1, 2)).contains("dri clim"));
    desk.clickRemedy(1);
    assertThat(desk.ask(() -> desk.book().entry(Plants.PLANT.reference(), 1)))
        .isEqualTo(new Entry.Words("shrubs (dry climate)"));
  }

  @Test
  void noCountOfFindingsIsToldBeforeItIsKnown() {
    desk.waitUntil(
        "they are known",
        () ->
            !((AbstractButton) desk.named("filter " + Severity.WRONG.word()))
                .getText()
                .contains("looking"));
    desk.act(() -> ((zonewright.desk.findings.FindingsPane) desk.named("findings")).looking());
    for (Severity severity : Severity.values()) {
      assertThat(
              desk.ask(() -> ((AbstractButton) desk.named("filter " + severity.word())).getText()))
          .contains("looking")
          .doesNotContain("0");
    }
  }
}
