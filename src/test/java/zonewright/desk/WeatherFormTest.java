package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.EventQueue;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.climate.Climate;
import zonewright.climate.WeatherSite;
import zonewright.sheet.Entry;

/** A weather file is looked at before its months go into the design. Invented weather. */
@Tag("window")
@CacioTest
class WeatherFormTest {
  private final DeskDriver desk = new DeskDriver();
  @TempDir Path folder;

  @AfterEach
  void close() {
    desk.close();
  }

  private static boolean shown() {
    return Arrays.stream(Window.getWindows())
        .anyMatch(window -> "weather form".equals(window.getName()) && window.isShowing());
  }

  @Test
  void aPlaceIsFoundByItsCountryOrByWhatIsNearest() {
    EventQueue.invokeLater(() -> desk.item("Find a climate place").doClick(0));
    desk.waitUntil("the form is there", () -> desk.dialogIsOpen("place form"));
    desk.act(() -> desk.dialogField("place form", "place Name, state or country").setText("ethi"));
    JList<?> places = (JList<?>) desk.ask(() -> desk.inDialog("place form", "places"));
    assertThat(desk.ask(() -> places.getModel().getSize())).isEqualTo(1);
    desk.act(() -> desk.dialogField("place form", "place Name, state or country").setText(""));
    desk.act(() -> desk.dialogField("place form", "place Latitude, °").setText("38.0"));
    desk.act(() -> desk.dialogField("place form", "place Longitude, °").setText("-110"));
    assertThat(desk.ask(() -> places.getModel().getElementAt(0).toString())).contains("Moab");
    desk.clickInDialog("place form", "take place");
    assertThat(desk.ask(() -> desk.book().outcome(Climate.PLACE.reference(), 0).text()))
        .isEqualTo("Moab");
    desk.act(() -> desk.book().undo());
    assertThat(desk.ask(() -> desk.book().outcome(Climate.PLACE.reference(), 0).text()))
        .isEqualTo("CIMIS zone 8");
  }

  @Test
  void aPlaceWorkedOutBringsItsWeatherAlongAndOneUndoTakesItBack() {
    Entry before = desk.book().entry(WeatherSite.ET_METHOD.reference(), 0);
    EventQueue.invokeLater(() -> desk.item("Find a climate place").doClick(0));
    desk.waitUntil("the form is there", () -> desk.dialogIsOpen("place form"));
    desk.act(
        () -> desk.dialogField("place form", "place Name, state or country").setText("oklahoma c"));
    desk.clickInDialog("place form", "take place");
    assertThat(desk.ask(() -> desk.book().outcome(WeatherSite.WEATHER_FROM.reference(), 0).text()))
        .contains("Oklahoma City")
        .contains("Penman-Monteith");
    desk.act(() -> desk.book().undo());
    assertThat(desk.book().entry(WeatherSite.ET_METHOD.reference(), 0)).isEqualTo(before);
  }

  @Test
  void aFileIsReadAndItsMonthsAreTaken() throws IOException {
    StringBuilder text = new StringBuilder("Date,ET (mm)\n");
    for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2003; day = day.plusDays(1)) {
      text.append(day).append(",4\n");
    }
    Path file = Files.writeString(folder.resolve("station.csv"), text);
    desk.questions.file = Optional.of(file);
    EventQueue.invokeLater(() -> desk.item("Read weather …").doClick(0));
    desk.waitUntil("the form is there", WeatherFormTest::shown);
    JTable months = desk.dialogTable("weather form", "weather months");
    assertThat(months.getValueAt(6, 0)).isEqualTo("July");
    assertThat(months.getValueAt(6, 1)).isEqualTo("2");
    EventQueue.invokeLater(
        () -> ((AbstractButton) desk.inDialog("weather form", "weather pictures")).doClick());
    desk.waitUntil("the pictures are there", () -> desk.dialogIsOpen("weather pictures"));
    desk.act(
        () ->
            ((JComboBox<?>) desk.inDialog("weather pictures", "weather picture"))
                .setSelectedIndex(2));
    assertThat(
            desk.ask(
                () ->
                    desk.inDialog("weather pictures", "picture")
                        .getAccessibleContext()
                        .getAccessibleDescription()))
        .contains("most is asked on 1 January");
    desk.act(
        () ->
            SwingUtilities.getWindowAncestor(desk.inDialog("weather pictures", "picture"))
                .dispose());
    desk.clickInDialog("weather form", "days too");
    desk.clickInDialog("weather form", "take weather");
    desk.waitUntil("the form is gone", () -> !shown());
    Path days = folder.resolve("station days.xlsx");
    desk.waitUntil("the days are written", () -> Files.exists(days));
    assertThat(desk.book().entry(WeatherSite.ET_METHOD.reference(), 0))
        .isEqualTo(new Entry.Words(WeatherSite.RECORD));
    desk.act(() -> desk.window().deck().focusTarget().requestFocusInWindow());
    desk.press("ctrl Z");
    assertThat(desk.book().entry(WeatherSite.ET_METHOD.reference(), 0))
        .isNotEqualTo(new Entry.Words(WeatherSite.RECORD));
  }
}
