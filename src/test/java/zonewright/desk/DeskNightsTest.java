package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.fieldwork.CatchTests;
import zonewright.trade.Sheets;
import zonewright.water.Controller;

/** The nights in a window of their own and as a calendar, the menu of the field, the groups. */
@Tag("window")
@CacioTest
class DeskNightsTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private static <T extends Component> Optional<T> in(Container container, Class<T> kind) {
    for (Component component : container.getComponents()) {
      if (kind.isInstance(component)) {
        return Optional.of(kind.cast(component));
      }
      if (component instanceof Container inner) {
        Optional<T> found = in(inner, kind);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<JDialog> nights() {
    return window("nights");
  }

  private static Optional<JDialog> window(String name) {
    return Arrays.stream(Window.getWindows())
        .filter(window -> window.isShowing() && name.equals(window.getName()))
        .map(JDialog.class::cast)
        .findFirst();
  }

  private JMenu menu(String name) {
    return desk.ask(
        () -> {
          var bar = desk.window().frame().getJMenuBar();
          for (int i = 0; i < bar.getMenuCount(); i++) {
            if (bar.getMenu(i).getText().equals(name)) {
              return bar.getMenu(i);
            }
          }
          throw new AssertionError("no menu " + name);
        });
  }

  private void choose(String menu, String item) {
    JMenu found = menu(menu);
    desk.act(
        () ->
            Arrays.stream(found.getMenuComponents())
                .filter(part -> part instanceof javax.swing.JMenuItem)
                .map(javax.swing.JMenuItem.class::cast)
                .filter(part -> part.getText().equals(item))
                .findFirst()
                .orElseThrow()
                .doClick(0));
  }

  @Test
  void theNightsOpenByTheirKeyAndCloseByEscape() {
    desk.press("ctrl T");
    desk.waitUntil("the window of the nights", () -> nights().isPresent());
    JList<?> list = desk.ask(() -> in(nights().orElseThrow(), JList.class).orElseThrow());
    desk.waitUntil("a night that waters", () -> list.getModel().getSize() > 0);
    assertThat(desk.ask(() -> list.getSelectedIndex())).isNotNegative();
    JTable zones = desk.ask(() -> in(nights().orElseThrow(), JTable.class).orElseThrow());
    assertThat(desk.ask(zones::getRowCount)).isEqualTo(desk.book().rows(Sheets.ZONES));
    assertThat(desk.ask(() -> zones.getValueAt(10, 3) + " of " + zones.getValueAt(10, 2)))
        .as("the slope, for whose cycles the controller has too few starts")
        .isEqualTo("44 of 99");
    assertThat(desk.ask(() -> in(nights().orElseThrow(), JButton.class))).isPresent();
    desk.press("ESCAPE");
    desk.waitUntil("no window of the nights", () -> nights().isEmpty());
  }

  @Test
  void afterTheFirstWeeksWhatIsSeenIsChosenZoneByZone() {
    int before = desk.ask(() -> desk.book().rows(Sheets.VERDICTS));
    choose("Design", "After the first weeks");
    desk.waitUntil("the page", () -> window("first weeks").isPresent());
    JTable zones =
        desk.ask(() -> in(window("first weeks").orElseThrow(), JTable.class).orElseThrow());
    assertThat(desk.ask(zones::getRowCount)).isEqualTo(desk.book().rows(Sheets.ZONES));
    desk.act(() -> zones.setValueAt("too dry", 0, 5));
    assertThat(desk.ask(() -> desk.book().rows(Sheets.VERDICTS))).isEqualTo(before + 1);
    desk.waitUntil("what was seen", () -> "too dry".equals(zones.getValueAt(0, 4)));
    desk.act(() -> desk.book().undo());
    desk.waitUntil("taken back", () -> !"too dry".equals(zones.getValueAt(0, 5)));
  }

  @Test
  void theNightsGoOutAsACalendarFile(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("garden.ics");
    desk.questions.file = Optional.of(file);
    desk.choose("Nights as a calendar …");
    desk.waitUntil("the file", () -> Files.exists(file) && Files.size(file) > 0);
    assertThat(Files.readString(file))
        .startsWith("BEGIN:VCALENDAR\r\n")
        .contains("RRULE:FREQ=WEEKLY")
        .endsWith("END:VCALENDAR\r\n");
    assertThat(desk.questions.asked).anyMatch(name -> name.endsWith("-nights.ics"));
  }

  @Test
  void theFieldMenuSaysWhereToStandFirst() {
    desk.goTo(zonewright.emitters.Emitters.AREA, 0);
    for (String item :
        java.util.List.of(
            "Paste cans from a grid",
            "Let the zone go by this test",
            "No longer go by this test")) {
      choose("Field", item);
      assertThat(desk.text("message")).as(item).contains("in the sheet Tests first");
    }
  }

  @Test
  void aTestIsTakenForItsZoneAndGivenUpAgain() {
    desk.act(() -> desk.window().deck().enter(Sheets.TESTS));
    assertThat(desk.book().rows(Sheets.TESTS)).isPositive();
    desk.goTo(CatchTests.NAME, 0);
    var before = desk.ask(() -> desk.book().snapshot());
    choose("Field", "No longer go by this test");
    choose("Field", "Let the zone go by this test");
    assertThat(desk.ask(() -> desk.book().journal().toUndo())).isPresent();
    desk.press("ctrl Z");
    desk.press("ctrl Z");
    assertThat(desk.ask(() -> desk.book().snapshot().sameEntries(before))).isTrue();
  }

  @Test
  void groupsAndSheetsAreReachedByKeys() {
    desk.press("ctrl 8");
    assertThat(desk.ask(() -> desk.window().deck().frontTable())).isEqualTo(Sheets.SAVINGS);
    desk.press("ctrl PAGE_DOWN");
    assertThat(desk.ask(() -> desk.window().deck().frontTable())).isEqualTo(Sheets.USE);
    desk.press("ctrl 2");
    assertThat(desk.ask(() -> desk.window().deck().frontTable())).isEqualTo(Sheets.ZONES);
    desk.press("ctrl PAGE_UP");
    desk.press("ctrl 8");
    assertThat(desk.ask(() -> desk.window().deck().frontTable())).isEqualTo(Sheets.USE);
  }

  @Test
  void whatIsKeyedInIsTickedAndKeptWithTheDesign() {
    desk.choose("Key this in");
    JDialog window =
        Arrays.stream(Window.getWindows())
            .filter(each -> each.isShowing() && "key in".equals(each.getName()))
            .map(JDialog.class::cast)
            .findFirst()
            .orElseThrow();
    desk.waitUntil(
        "steps to key in", () -> desk.ask(() -> in(window, JCheckBox.class).isPresent()));
    JCheckBox box = desk.ask(() -> in(window, JCheckBox.class).orElseThrow());
    desk.act(box::doClick);
    String kept = desk.ask(() -> desk.book().outcome(Controller.KEYED_IN.reference(), 0).text());
    assertThat(kept).endsWith(box.getText().replace(';', ','));
    desk.act(() -> desk.book().undo());
    desk.waitUntil(
        "the tick is taken back",
        () -> desk.ask(() -> !in(window, JCheckBox.class).orElseThrow().isSelected()));
  }
}
