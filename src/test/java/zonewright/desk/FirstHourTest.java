package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.AtAGlance;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;
import zonewright.water.Demand;

/** What somebody meets who opens the window for the first time. */
@Tag("window")
@CacioTest
class FirstHourTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private List<String> shown() {
    return desk.ask(
        () ->
            desk
                .window()
                .deck()
                .front()
                .grid()
                .orElseThrow()
                .columns()
                .arrangement()
                .columns()
                .stream()
                .map(column -> column.id())
                .toList());
  }

  @Test
  void zonesOpenOnWhatIsTypedAtTheLeftAndAnswersAtTheRight() {
    List<Column> opening = AtAGlance.opening(desk.book().schema().table(Sheets.ZONES));
    assertThat(shown())
        .isEqualTo(opening.stream().map(column -> column.reference().column()).toList())
        .hasSizeBetween(10, 14);
    assertThat(opening.indexOf(Emitters.EMITTER)).isLessThan(opening.indexOf(Demand.RUN_TIME));
  }

  @Test
  void theRestIsAClickAwayByPurpose() {
    List<String> views =
        desk.ask(
            () ->
                java.util.Arrays.stream(desk.window().deck().tools().menu().getComponents())
                    .filter(javax.swing.JMenuItem.class::isInstance)
                    .map(item -> ((javax.swing.JMenuItem) item).getText())
                    .toList());
    assertThat(views).contains("At a glance", "Designer", "Soil", "Application", "All columns");
  }

  @Test
  void sheetsNobodyUsesStandBack() {
    Component site = desk.named("group Site");
    Component savings = desk.named("group Savings");
    desk.waitUntil("it is known", () -> !site.getForeground().equals(savings.getForeground()));
    assertThat(desk.ask(savings::getForeground))
        .isEqualTo(desk.ask(() -> javax.swing.UIManager.getColor("Zonewright.muted")));
  }

  @Test
  void sixFindingsAreSeenAtATimeEachOnAtMostTwoLines() {
    JTable list = (JTable) desk.named("findings list");
    desk.waitUntil("the findings are there", () -> list.getRowCount() > 8);
    int line = desk.ask(() -> list.getFontMetrics(list.getFont()).getHeight());
    int seen = 0;
    for (int row = 0; row < desk.ask(list::getRowCount); row++) {
      int at = row;
      assertThat(desk.ask(() -> list.getRowHeight(at))).isLessThan(3 * line);
      boolean whole = desk.ask(() -> list.getVisibleRect().contains(list.getCellRect(at, 0, true)));
      boolean finding = desk.ask(() -> !String.valueOf(list.getValueAt(at, 2)).isEmpty());
      seen += whole && finding ? 1 : 0;
    }
    assertThat(seen).isGreaterThanOrEqualTo(6);
  }

  @Test
  void aMessageMovesNothing() {
    desk.goTo(Demand.RUN_TIME, 0);
    java.awt.Point before = desk.ask(() -> desk.shown("sheets").getLocationOnScreen());
    desk.write("3");
    assertThat(desk.shows("message bar")).isTrue();
    assertThat(desk.ask(() -> desk.shown("sheets").getLocationOnScreen())).isEqualTo(before);
    assertThat(desk.ask(() -> desk.shown("message").getHeight())).isPositive();
  }

  @Test
  void aFileThatWasWrittenIsToldWithItsFolder(@TempDir Path folder) {
    desk.questions.file = java.util.Optional.of(folder.resolve("garden.xlsx"));
    desk.choose("Save as …");
    desk.waitUntil(
        "it is told", () -> desk.window().messages().sentence().contains(folder.toString()));
  }

  @Test
  void aSheetIsLaidOutAsWantedBeforeItIsPrinted(@TempDir Path folder) {
    desk.questions.file = java.util.Optional.of(folder.resolve("zones.pdf"));
    desk.act(
        () ->
            desk.window()
                .deck()
                .front()
                .grid()
                .orElseThrow()
                .columns()
                .show(desk.book().schema().table(Sheets.ZONES).columns(), true));
    desk.press("ctrl P");
    desk.waitUntil("the pages are shown", () -> desk.dialogIsOpen("print preview"));
    String many =
        desk.ask(
            () -> ((javax.swing.JLabel) desk.inDialog("print preview", "page number")).getText());
    desk.act(
        () ->
            ((javax.swing.JComboBox<?>) desk.inDialog("print preview", "paper scale"))
                .setSelectedIndex(1));
    assertThat(many).isNotEqualTo("Page 1 of 1");
    assertThat(
            desk.ask(
                () ->
                    ((javax.swing.JLabel) desk.inDialog("print preview", "page number")).getText()))
        .isEqualTo("Page 1 of 1");
    desk.act(
        () ->
            ((javax.swing.JComboBox<?>) desk.inDialog("print preview", "paper lies"))
                .setSelectedIndex(1));
    desk.act(
        () ->
            ((javax.swing.AbstractButton) desk.inDialog("print preview", "paper columns"))
                .doClick());
    desk.act(
        () ->
            ((javax.swing.AbstractButton) desk.inDialog("print preview", "save pages")).doClick());
    desk.waitUntil("it is told", () -> desk.window().messages().sentence().contains("zones.pdf"));
    assertThat(folder.resolve("zones.pdf")).isNotEmptyFile();
  }

  @Test
  void aLongChoiceIsATableOfCasesWithTheOneTakenMarked() {
    desk.act(
        () -> desk.window().deck().goTo(new Place(Emitters.PRECIPITATION_RATE.reference(), 0)));
    desk.waitUntil("the cases are there", () -> desk.shown("case taken") != null);
    assertThat(desk.ask(() -> desk.shown("case taken").getAccessibleContext().getAccessibleName()))
        .contains("Rate by area");
  }
}
