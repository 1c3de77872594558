package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JTable;
import org.apache.commons.io.FileUtils;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

@Tag("window")
@CacioTest
class DeskRecoveryTest {
  /** Cleared by hand: a record may still be written while it goes. */
  @TempDir(cleanup = CleanupMode.NEVER)
  Path folder;

  private Path file;
  private Path spare;
  private DeskDriver desk;

  /** The garden as it is written, once for all tests. */
  private static byte[] garden;

  @BeforeAll
  static void writeGarden(@TempDir Path once) throws DesignFileException, IOException {
    Path written = once.resolve("garden.xlsx");
    DesignFile.write(Demo.libraryGarden(UnitSystem.US), written);
    garden = Files.readAllBytes(written);
  }

  @BeforeEach
  void open() throws IOException {
    file = folder.resolve("garden.xlsx");
    spare = folder.resolve("spare");
    Files.write(file, garden);
    desk = new DeskDriver(spare);
  }

  @AfterEach
  void close() {
    desk.close();
    FileUtils.deleteQuietly(folder.toFile());
  }

  private Entry area() {
    return desk.ask(() -> desk.book().entry(Emitters.AREA.reference(), 0));
  }

  private void typeAnArea(String area) {
    desk.goTo(Emitters.AREA, 0);
    desk.type(area);
  }

  private void openFile() {
    desk.act(() -> desk.window().keeper().open(file));
    desk.waitUntil("it is open", () -> desk.window().openDesign().file().isPresent());
  }

  private List<Path> records(Path where) throws IOException {
    if (!Files.isDirectory(where)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(where)) {
      return files.filter(each -> each.toString().endsWith(".unsaved")).toList();
    }
  }

  /** Ends the window as a crash does: its records stay, and nobody has them in hand any more. */
  private void crash() throws IOException {
    Map<Path, byte[]> left = new HashMap<>();
    Map<Path, FileTime> times = new HashMap<>();
    for (Path where : List.of(folder, spare)) {
      for (Path record : records(where)) {
        left.put(record, Files.readAllBytes(record));
        times.put(record, Files.getLastModifiedTime(record));
      }
    }
    desk.act(() -> desk.window().openDesign().book().journal().saved());
    desk.act(desk.window()::close);
    for (Path record : left.keySet()) {
      Files.write(record, left.get(record));
      Files.setLastModifiedTime(record, times.get(record));
    }
    desk.close();
    desk = new DeskDriver(spare);
  }

  /** Waits until what was typed stands in a record. */
  private void waitForRecordOf(Path where, String figure) {
    desk.waitUntil(
        figure + " is on record",
        () -> {
          for (Path record : records(where)) {
            if (Files.readString(record, StandardCharsets.UTF_8).contains("F" + figure)) {
              return true;
            }
          }
          return false;
        });
  }

  private void typeAnArea(int row, String area) {
    desk.goTo(Emitters.AREA, row);
    desk.type(area);
  }

  private Entry area(int row) {
    return desk.ask(() -> desk.book().entry(Emitters.AREA.reference(), row));
  }

  @Test
  void whatIsTypedStandsInTheRecordAndGoesWithSaving() throws IOException {
    openFile();
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    Path record = records(folder).get(0);
    desk.choose("Save");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    desk.waitUntil("the record is gone", () -> !Files.exists(record));
    desk.act(desk.window()::close);
    assertThat(records(folder)).isEmpty();
  }

  @Test
  void whatACrashLeftIsOfferedInALineAndComesBack() throws IOException {
    openFile();
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    Path record = records(folder).get(0);
    crash();
    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Bring them back"));
    assertThat(area()).isEqualTo(new Entry.Figure(2250));
    assertThat(desk.text("message")).contains("garden.xlsx").contains("were not saved");
    desk.click("offer Bring them back");
    assertThat(area()).isEqualTo(new Entry.Figure(777));
    assertThat(desk.ask(() -> desk.window().openDesign().unsaved())).isTrue();
    assertThat(desk.ask(() -> desk.window().openDesign().file())).contains(file.toAbsolutePath());
    desk.waitUntil("the old record is gone", () -> !Files.exists(record));
    waitForRecordOf(folder, "777.0");
    assertThat(desk.text("message"))
        .isEqualTo(
            "“garden.xlsx” has its changes again. They are not saved yet; Undo takes them out.");
    desk.click("button Undo");
    assertThat(area()).isEqualTo(new Entry.Figure(2250));
  }

  @Test
  void bringingBackAfterMoreWasTypedAddsToIt() throws IOException {
    openFile();
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    crash();
    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Bring them back"));
    typeAnArea(1, "888");
    desk.click("offer Bring them back");
    assertThat(List.of(area(0), area(1)))
        .containsExactly(new Entry.Figure(777), new Entry.Figure(888));
  }

  @Test
  void whatWasNotAnsweredIsOfferedAgainAfterASecondCrashBesideWhatThatLeft() throws IOException {
    openFile();
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    crash();
    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Bring them back"));
    typeAnArea(1, "888");
    waitForRecordOf(folder, "888.0");
    crash();
    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Bring them back"));
    desk.click("offer Bring them back");
    assertThat(area(1)).isEqualTo(new Entry.Figure(888));
    desk.click("offer Bring them back");
    assertThat(area(0)).isEqualTo(new Entry.Figure(777));
    desk.waitUntil("one record is left, of this window", () -> records(folder).size() == 1);
  }

  @Test
  void aRecordOlderThanTheFileIsADifferenceToTakeOrLeave() throws Exception {
    openFile();
    typeAnArea("777");
    typeAnArea(1, "888");
    waitForRecordOf(folder, "888.0");
    crash();
    Design later = Demo.libraryGarden(UnitSystem.US);
    later.book().perform(later.edits().typed(Emitters.AREA.reference(), 0, "5000"));
    later.book().perform(later.edits().typed(Emitters.AREA.reference(), 2, "6000"));
    DesignFile.write(later, file);

    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Look at them …"));
    assertThat(desk.shows("offer Bring them back")).isFalse();
    assertThat(desk.text("message"))
        .contains("were never saved, and the file was saved with others since")
        .contains("nothing was taken from them");
    desk.click("offer Look at them …");
    JTable table = desk.dialogTable("left work form", "left work");
    assertThat(desk.ask(() -> cells(table)))
        .containsExactly("false|5000|777", "true|" + typed(1) + "|888");
    desk.clickInDialog("left work form", "take left work");
    assertThat(List.of(area(0), area(1), area(2)))
        .as("what was saved after it stays")
        .containsExactly(new Entry.Figure(5000), new Entry.Figure(888), new Entry.Figure(6000));
    desk.click("button Undo");
    assertThat(area(1)).isNotEqualTo(new Entry.Figure(888));
  }

  private static String typed(int row) {
    Design demo = Demo.libraryGarden(UnitSystem.US);
    return Entries.typed(Emitters.AREA, demo.book().entry(Emitters.AREA.reference(), row));
  }

  private static List<String> cells(JTable table) {
    return IntStream.range(0, table.getRowCount())
        .mapToObj(
            row ->
                table.getValueAt(row, 0)
                    + "|"
                    + table.getValueAt(row, 4)
                    + "|"
                    + table.getValueAt(row, 5))
        .toList();
  }

  @Test
  void aRecordThatCannotBeReadIsKeptAndSaidToBe() throws IOException {
    openFile();
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    Path record = records(folder).get(0);
    crash();
    String text = Files.readString(record, StandardCharsets.UTF_8);
    Files.writeString(record, text.substring(0, text.indexOf("rows\t")), StandardCharsets.UTF_8);
    openFile();
    desk.waitUntil("it is told", () -> desk.shows("offer Let it go"));
    assertThat(desk.text("message"))
        .contains("cannot be read; it is kept as " + record.toRealPath());
    assertThat(record).exists();
    desk.click("offer Let it go");
    assertThat(record).doesNotExist();
  }

  @Test
  void aSecondWindowIsToldAtOnceAndSavesOnlyWhenItTakesOver() throws IOException {
    openFile();
    desk.waitUntil("the window is on record", () -> !records(folder).isEmpty());
    byte[] before = Files.readAllBytes(file);
    DeskDriver first = desk;
    desk = new DeskDriver(spare);
    openFile();
    desk.waitUntil("it is told", () -> desk.shows("offer Take over"));
    assertThat(desk.text("message"))
        .contains("“garden.xlsx” is being worked on in another window (")
        .endsWith("You are looking on; saving over it asks first.");
    desk.click("offer Look on");
    typeAnArea("777");
    waitForRecordOf(folder, "777.0");
    assertThat(records(folder)).as("each window has its own").hasSize(2);
    desk.press("ctrl S");
    desk.waitUntil("it is asked", () -> desk.shows("offer Take over and save"));
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    desk.click("offer Take over and save");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());

    first.act(first.window().keeper()::lookAtFile);
    first.waitUntil("the first is told", () -> first.shows("offer Read it again"));
    first.choose("Save");
    first.waitUntil("it is asked, from the keyboard too", () -> first.shows("offer Save over it"));
    first.close();
  }

  @Test
  void aFirstWindowHearsThatItWasTakenOver() throws IOException {
    openFile();
    desk.waitUntil("the window is on record", () -> !records(folder).isEmpty());
    DeskDriver first = desk;
    desk = new DeskDriver(spare);
    openFile();
    desk.waitUntil("it is told", () -> desk.shows("offer Take over"));
    desk.click("offer Take over");
    desk.waitUntil(
        "it stands in the record",
        () -> {
          first.window().keeper().lookAtFile();
          return first.shows("offer Take it back");
        });
    assertThat(first.text("message")).contains("was taken over in another window (");
    first.pressBehind("offer Take it back");
    desk.waitUntil(
        "the second is told",
        () -> {
          desk.window().keeper().lookAtFile();
          return desk.shows("offer Take it back");
        });
    first.close();
  }

  @Test
  void savingOverWhatAnotherSavedAsksAlsoAfterItWasTold() throws IOException {
    openFile();
    typeAnArea("777");
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_700_000_000_000L));
    desk.act(desk.window().keeper()::lookAtFile);
    desk.waitUntil("it is told", () -> desk.shows("offer Keep what is here"));
    desk.click("offer Keep what is here");
    byte[] theirs = Files.readAllBytes(file);
    desk.press("ctrl S");
    desk.waitUntil("it is asked", () -> desk.shows("offer Save over it"));
    assertThat(Files.readAllBytes(file)).isEqualTo(theirs);
  }

  @Test
  void whatIsLetGoIsNotOfferedAgain() throws IOException {
    typeAnArea("777");
    waitForRecordOf(spare, "777.0");
    crash();
    desk.act(desk.window()::offerLeftOver);
    assertThat(desk.text("message")).contains("the demo");
    desk.click("offer Let them go");
    desk.waitUntil("it is gone", () -> records(spare).isEmpty());
  }

  @Test
  void aFileThatAnotherProgramChangedIsNotSavedOverUnasked() throws IOException {
    openFile();
    typeAnArea("777");
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_700_000_000_000L));
    byte[] theirs = Files.readAllBytes(file);
    desk.choose("Save");
    desk.waitUntil("it is asked", () -> desk.shows("offer Save over it"));
    assertThat(Files.readAllBytes(file)).isEqualTo(theirs);
    desk.click("offer Save over it");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
  }

  @Test
  void aChangeByAnotherProgramIsToldWhenThePersonComesBack() throws IOException {
    openFile();
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_700_000_000_000L));
    desk.act(desk.window().keeper()::lookAtFile);
    desk.waitUntil("it is told", () -> desk.shows("offer Read it again"));
    assertThat(desk.text("message")).contains("changed by another program");
  }

  @Test
  void goingBackToWhatWasSavedCanBeTakenBack() {
    openFile();
    typeAnArea("777");
    desk.choose("Back to what was saved");
    desk.waitUntil("it is as saved", () -> desk.shows("offer Take that back"));
    assertThat(area()).isEqualTo(new Entry.Figure(2250));
    desk.click("offer Take that back");
    assertThat(area()).isEqualTo(new Entry.Figure(777));
    assertThat(desk.ask(() -> desk.window().openDesign().unsaved())).isTrue();
  }

  @Test
  void aNewDesignIsSavedUnderTheNameOfItsProject() {
    desk.questions.file = Optional.empty();
    desk.choose("Save as …");
    assertThat(desk.questions.suggested).isEqualTo(Path.of("library-garden-invented-example.xlsx"));
  }
}
