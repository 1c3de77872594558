package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.desk.picture.PictureView;
import zonewright.season.SeasonRules;

/** The season in a window of its own. */
@Tag("window")
@CacioTest
class DeskSeasonTest {
  private final DeskDriver desk = new DeskDriver();

  @BeforeEach
  void open() {
    desk.choose("A season");
    desk.waitUntil("the window of the season", () -> desk.dialogIsOpen("season"));
    desk.waitUntil("its zones", () -> zones().getRowCount() == 13);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private JTable zones() {
    return (JTable) desk.inDialog("season", "season zones");
  }

  private String picture() {
    return ((PictureView) desk.inDialog("season", "picture")).drawing().title();
  }

  private String pictureInWords() {
    return ((PictureView) desk.inDialog("season", "picture")).drawing().inWords();
  }

  private String text(String name) {
    return ((JTextComponent) desk.inDialog("season", name)).getText();
  }

  @Test
  void allZonesAreThereAtAGlanceAndEachByItself() {
    assertThat(desk.ask(this::picture)).isEqualTo("All zones, percent by day");
    desk.waitUntil("findings", () -> text("season findings").contains("Zone 11 is short in July"));
    desk.act(() -> zones().setRowSelectionInterval(11, 11));
    assertThat(desk.ask(this::picture))
        .isEqualTo("Zone 11, West slope ground cover, percent by day");
    assertThat(desk.ask(this::pictureInWords)).startsWith("Plants get ");
    desk.waitUntil(
        "its findings alone",
        () ->
            text("season findings").startsWith("Zone 11 is short in July")
                && !text("season findings").contains("Zone 1 "));
  }

  /** The picture has changed when the slider's own event is over, without waiting for anything. */
  @Test
  void theSliderRedrawsAtOnce() {
    desk.act(() -> zones().setRowSelectionInterval(1, 1));
    String before = desk.ask(this::pictureInWords);
    String[] after = new String[1];
    desk.act(
        () -> {
          ((JSlider) desk.inDialog("season", "season percent")).setValue(60);
          after[0] = pictureInWords();
        });
    assertThat(after[0]).startsWith("Plants get ").isNotEqualTo(before);
    desk.waitUntil("less water", () -> !zones().getValueAt(1, 2).equals("72,242"));
  }

  @Test
  void twoSchedulesStandBesideEachOther() {
    desk.act(
        () ->
            ((JComboBox<?>) desk.inDialog("season", "season beside"))
                .setSelectedItem(SeasonRules.FIXED));
    desk.act(() -> zones().setRowSelectionInterval(3, 3));
    assertThat(desk.ask(this::picture)).isEqualTo("Two schedules: zone 3");
    assertThat(desk.ask(this::pictureInWords))
        .contains("Amphitheatre bank, percent by day: ", "Amphitheatre bank, baseline fixed: ");
    desk.waitUntil("both sums", () -> text("season result").contains(" Beside it: "));
  }

  @Test
  void aSensorAndMonthsSaveWater() {
    String before = text("season result");
    desk.act(
        () -> {
          ((JCheckBox) desk.inDialog("season", "season sensor")).doClick(0);
          ((JComboBox<?>) desk.inDialog("season", "season first month")).setSelectedIndex(3);
        });
    desk.waitUntil(
        "another sum",
        () ->
            !text("season result").equals(before)
                && text("season result").contains("no water on "));
  }

  @Test
  void daysOfAFileTakeThePlaceOfTheTypicalYear(@TempDir Path folder) throws Exception {
    StringBuilder days = new StringBuilder("Date,Reference ET (mm),Rain (mm)\n");
    for (int day = 0; day < 800; day++) {
      days.append(LocalDate.of(2019, 1, 1).plusDays(day)).append(",5,0\n");
    }
    Path file = folder.resolve("days.csv");
    Files.writeString(file, days);
    desk.questions.file = Optional.of(file);
    desk.act(() -> ((JButton) desk.inDialog("season", "season weather")).doClick(0));
    desk.waitUntil("the file", () -> text("season origin").contains("days.csv, 2019-01-01"));
    assertThat(
            desk.ask(() -> ((JComboBox<?>) desk.inDialog("season", "season year")).getItemCount()))
        .isEqualTo(3);
    desk.act(() -> ((JButton) desk.inDialog("season", "season typical")).doClick(0));
    desk.waitUntil("the typical year", () -> text("season origin").contains("a typical year"));
  }
}
