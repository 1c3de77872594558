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
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
    desk.clickInDialog("weather form", "take weather");
    desk.waitUntil("the form is gone", () -> !shown());
    assertThat(desk.book().entry(WeatherSite.ET_METHOD.reference(), 0))
        .isEqualTo(new Entry.Words(WeatherSite.RECORD));
    desk.press("ctrl Z");
    assertThat(desk.book().entry(WeatherSite.ET_METHOD.reference(), 0))
        .isNotEqualTo(new Entry.Words(WeatherSite.RECORD));
  }
}
