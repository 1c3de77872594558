package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;

/** Somebody's list of zones is shown beside our columns before anything is taken. Invented. */
@Tag("window")
@CacioTest
class ListFormTest {
  private static final String LIST =
      """
      Zone name;Watered area (m²);Ground;Heads;Phone
      North bed;100,5;clay;12;555 0101
      South bed;20;sand;4;555 0102
      """;

  private final DeskDriver desk = new DeskDriver();
  @TempDir Path folder;

  @AfterEach
  void close() {
    desk.close();
  }

  private Optional<Window> form() {
    return Arrays.stream(Window.getWindows())
        .filter(window -> "list form".equals(window.getName()) && window.isShowing())
        .findFirst();
  }

  private void open(String list) throws IOException {
    Path file = folder.resolve("client.csv");
    Files.writeString(file, list, StandardCharsets.UTF_8);
    desk.questions.file = Optional.of(file);
    EventQueue.invokeLater(() -> desk.item("From a list (CSV) …").doClick(0));
    desk.waitUntil("the form is there", () -> form().isPresent());
  }

  private Component part(String name) {
    return find(form().orElseThrow(), name);
  }

  private static Component find(Container container, String name) {
    for (Component component : container.getComponents()) {
      if (name.equals(component.getName())) {
        return component;
      }
      if (component instanceof Container inner) {
        Component found = find(inner, name);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  private String target(String theirs) {
    return desk.ask(() -> (String) ((JComboBox<?>) part("goes into " + theirs)).getSelectedItem());
  }

  @Test
  void headingsUnitsAndWordsOfTheListsSayWhereColumnsGo() throws IOException {
    open(LIST);
    assertThat(target("Zone name")).isEqualTo("Zone");
    assertThat(target("Watered area (m²)")).isEqualTo("Area (ft²)");
    assertThat(target("Ground")).isEqualTo(Soils.SOIL_TYPE.name());
    assertThat(target("Phone")).isEqualTo("left out");
    assertThat(desk.ask(() -> ((JTextComponent) part("list outcome")).getText()))
        .contains("Left out:", "“Phone”");
    JTable preview = (JTable) part("list preview");
    assertThat(desk.ask(() -> preview.getValueAt(0, 0))).isEqualTo("North bed");
    assertThat(desk.ask(() -> preview.getColumnName(1))).isEqualTo("Area (ft²)");
    assertThat(desk.ask(() -> (String) preview.getValueAt(0, 1))).isEqualTo("1,082");
  }

  @Test
  void whatIsAddedIsTakenBackByOneUndo() throws IOException {
    open(LIST);
    int before = desk.ask(() -> desk.book().rows(Sheets.ZONES));
    desk.act(
        () ->
            ((JComboBox<?>) part("goes into Heads"))
                .setSelectedItem(Emitters.EMITTER_COUNT.heading(desk.book().system())));
    desk.press("ctrl ENTER");
    desk.waitUntil("the form is gone", () -> form().isEmpty());
    assertThat(desk.book().rows(Sheets.ZONES)).isEqualTo(before + 2);
    assertThat(desk.book().entry(Facts.ZONE_NAME.reference(), before))
        .isEqualTo(Entry.words("North bed"));
    assertThat(desk.book().entry(Emitters.EMITTER_COUNT.reference(), before + 1))
        .isEqualTo(new Entry.Figure(4));
    desk.click("button Undo");
    assertThat(desk.book().rows(Sheets.ZONES)).isEqualTo(before);
  }

  @Test
  void escapeAddsNothing() throws IOException {
    open(LIST);
    int before = desk.ask(() -> desk.book().rows(Sheets.ZONES));
    assertThat(desk.ask(() -> ((JButton) part("add list")).getText())).isEqualTo("Add 2 zones");
    desk.press("ESCAPE");
    desk.waitUntil("the form is gone", () -> form().isEmpty());
    assertThat(desk.book().rows(Sheets.ZONES)).isEqualTo(before);
  }

  @Test
  void oneOfOurColumnsTakesOneOfTheirsOnly() throws IOException {
    open(LIST);
    desk.act(() -> ((JComboBox<?>) part("goes into Phone")).setSelectedItem("Zone"));
    assertThat(target("Zone name")).isEqualTo("left out");
    assertThat(target("Phone")).isEqualTo("Zone");
  }

  @Test
  void cellsCopiedInAnotherProgramAreTakenTheSameWay() {
    StringSelection copied =
        new StringSelection("Station\tDescription\n21\tHerb bed\n22\tOrchard\n");
    desk.act(() -> Toolkit.getDefaultToolkit().getSystemClipboard().setContents(copied, null));
    int before = desk.ask(() -> desk.book().rows(Sheets.ZONES));
    EventQueue.invokeLater(() -> desk.item("From what was copied …").doClick(0));
    desk.waitUntil("the form is there", () -> form().isPresent());
    assertThat(target("Station")).isEqualTo("Zone");
    desk.press("ctrl ENTER");
    desk.waitUntil("the form is gone", () -> form().isEmpty());
    assertThat(desk.book().entry(Facts.ZONE_PLACE.reference(), before + 1))
        .isEqualTo(Entry.words("Orchard"));
  }

  @Test
  void aListWithoutRowsIsToldInTheWindow() throws IOException {
    Path file = folder.resolve("empty.csv");
    Files.writeString(file, "Zone;Area\n", StandardCharsets.UTF_8);
    desk.questions.file = Optional.of(file);
    desk.choose("From a list (CSV) …");
    desk.waitUntil("it is told", () -> desk.shows("close message"));
    assertThat(desk.text("message")).contains("empty.csv", "no rows");
  }
}
