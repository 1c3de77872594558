package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.sheet.Entry;
import zonewright.sheet.Severity;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.water.Demand;
import zonewright.workbook.DesignFile;

/**
 * One whole job without a mouse: a new design, six zones, two findings put right, saved, exported.
 */
@Tag("window")
@CacioTest
class JobByKeyboardTest {
  private static final List<List<String>> ZONES =
      List.of(
          List.of(
              "1",
              "Front lawn",
              "900",
              "cool-season turf",
              "fixed spray",
              "10",
              "1.5",
              "loam",
              "2"),
          List.of(
              "2", "Side lawn", "600", "warm-season turf", "rotor", "3", "2.5", "sandy loam", "3"),
          List.of(
              "3",
              "Rose bed",
              "200",
              "annual flowers",
              "fixed spray",
              "6",
              "0.8",
              "clay lome",
              "1"),
          List.of(
              "3", "Hedge", "300", "shrubs (dry climate)", "drip line", "120", "0.01", "loam", "1"),
          List.of("5", "Bank", "400", "ground cover", "fixed spray", "5", "1.2", "clay", "12"),
          List.of("6", "Trees", "250", "trees (dry climate)", "bubbler", "6", "0.5", "loam", "0"));

  private final DeskDriver desk = new DeskDriver();
  @TempDir Path folder;

  @AfterEach
  void close() {
    desk.close();
  }

  private boolean formIsOpen() {
    return Arrays.stream(Window.getWindows())
        .anyMatch(window -> "start form".equals(window.getName()) && window.isShowing());
  }

  /** Returns the name of what has the keyboard. */
  private static String owner() {
    java.awt.Component owner =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner == null ? "" : String.valueOf(owner.getName());
  }

  private List<Finding> findings() {
    return desk.ask(() -> desk.window().openDesign().design().findings());
  }

  private void enter(String text) {
    desk.write(text);
    desk.press("ENTER");
  }

  @Test
  void aNewGardenIsDesignedSavedAndExportedWithoutAMouse() throws Exception {
    desk.press("ctrl N");
    desk.waitUntil("the form is open", this::formIsOpen);
    desk.waitUntil("the keyboard is in the form", () -> owner().equals("start site"));
    enter("Square garden");
    enter("CIMIS zone 8");
    desk.press("ENTER");
    desk.press("ENTER");
    desk.press("ENTER");
    desk.press("ENTER");
    desk.press("ENTER");
    enter("25");
    enter("fri, mon, wed");
    desk.press("F6");
    desk.waitUntil("the keyboard is in the zones", () -> owner().equals("start zones"));
    for (List<String> zone : ZONES) {
      for (int at = 0; at < zone.size(); at++) {
        desk.write(zone.get(at));
        desk.press(at + 1 < zone.size() ? "TAB" : "ENTER");
      }
    }
    desk.press("ctrl ENTER");
    desk.waitUntil("the form is closed", () -> !formIsOpen());
    desk.waitUntil(
        "the new design is there", () -> desk.window().openDesign().name().equals("New design"));

    assertThat(
            desk.ask(
                () ->
                    desk.book().contents().rows(Sheets.ZONES).stream()
                        .map(row -> row.entry(0) + " " + row.entry(1))
                        .toList()))
        .hasSize(ZONES.size());
    assertThat(desk.book().entry(Facts.PROJECT_NAME.reference(), 0))
        .isEqualTo(new Entry.Words("Square garden"));
    assertThat(findings()).filteredOn(finding -> finding.severity() == Severity.WRONG).hasSize(1);
    JTable list = (JTable) desk.named("findings list");
    desk.waitUntil("the findings are listed", () -> list.getRowCount() > 0);

    desk.press("F8");
    assertThat(desk.current().column()).isEqualTo(Soils.SOIL_TYPE.reference());
    desk.press("F9");
    assertThat(desk.book().entry(Soils.SOIL_TYPE.reference(), 2))
        .isEqualTo(new Entry.Words("clay loam"));
    desk.waitUntil(
        "the finding is gone",
        () -> findings().stream().noneMatch(finding -> finding.severity() == Severity.WRONG));
    int presses = 0;
    while (!desk.current().column().equals(Facts.ZONE_NAME.reference()) && presses < 30) {
      desk.press("F8");
      presses++;
    }
    desk.press("F9");
    assertThat(desk.book().entry(Facts.ZONE_NAME.reference(), 3))
        .isEqualTo(new Entry.Words("3 (2)"));
    for (int zone = 0; zone < ZONES.size(); zone++) {
      assertThat(desk.book().number(Demand.RUN_TIME.reference(), zone)).isPositive();
    }

    Path file = folder.resolve("square.xlsx");
    desk.questions.file = Optional.of(file);
    desk.press("ctrl S");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    assertThat(desk.questions.suggested).isEqualTo(Path.of("square-garden.xlsx"));
    Path picture = folder.resolve("water.png");
    desk.questions.file = Optional.of(picture);
    desk.press("ctrl E");
    desk.waitUntil("it is exported", () -> desk.shows("close message"));

    Design again = DesignFile.read(file).design();
    assertThat(again.book().snapshot().sameEntries(desk.ask(() -> desk.book().snapshot())))
        .isTrue();
    assertThat(ImageIO.read(picture.toFile()).getWidth()).isGreaterThan(900);
  }
}
