package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.emitters.Emitters;
import zonewright.recovery.UnsavedFile;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

@Tag("window")
@CacioTest
class DeskRecoveryTest {
  @TempDir Path folder;
  private Path file;
  private Path spare;
  private DeskDriver desk;

  @BeforeEach
  void open() throws DesignFileException {
    file = folder.resolve("garden.xlsx");
    spare = folder.resolve("spare");
    DesignFile.write(Demo.libraryGarden(UnitSystem.US), file);
    desk = new DeskDriver(spare);
  }

  @AfterEach
  void close() {
    desk.close();
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

  /** Leaves a record as a process leaves it that is gone: its number is no process's any more. */
  private void abandon(Path record) throws IOException {
    String text = Files.readString(record, StandardCharsets.UTF_8);
    String[] head = text.substring(0, text.indexOf('\n')).split("\t", -1);
    head[1] = "999999999";
    Files.writeString(
        record,
        String.join("\t", head) + text.substring(text.indexOf('\n')),
        StandardCharsets.UTF_8);
  }

  @Test
  void whatIsTypedStandsInTheRecordAndGoesWithSaving() throws IOException {
    openFile();
    typeAnArea("777");
    Path record = UnsavedFile.beside(file);
    desk.waitUntil("the record is there", () -> Files.exists(record));
    desk.choose("Save");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    desk.waitUntil("the record is gone", () -> !Files.exists(record));
    assertThat(records(folder)).isEmpty();
  }

  @Test
  void whatACrashLeftIsOfferedInALineAndComesBack() throws IOException {
    openFile();
    typeAnArea("777");
    Path record = UnsavedFile.beside(file);
    desk.waitUntil("the record is there", () -> Files.exists(record));
    byte[] left = Files.readAllBytes(record);
    desk.close();
    Files.write(record, left);
    abandon(record);

    desk = new DeskDriver(spare);
    openFile();
    desk.waitUntil("it is offered", () -> desk.shows("offer Bring them back"));
    assertThat(area()).isEqualTo(new Entry.Figure(2250));
    assertThat(desk.text("message")).contains("garden.xlsx").contains("were not saved");
    desk.click("offer Bring them back");
    assertThat(area()).isEqualTo(new Entry.Figure(777));
    assertThat(desk.ask(() -> desk.window().openDesign().unsaved())).isTrue();
    assertThat(desk.ask(() -> desk.window().openDesign().file())).contains(file.toAbsolutePath());
    desk.waitUntil("it is on record again", () -> Files.exists(record));
    desk.waitUntil("the old record is gone", () -> records(spare).isEmpty());
  }

  @Test
  void whatIsLetGoIsNotOfferedAgain() throws IOException {
    typeAnArea("777");
    desk.waitUntil("the record is there", () -> !records(spare).isEmpty());
    Path record = records(spare).get(0);
    byte[] left = Files.readAllBytes(record);
    desk.close();
    Files.write(record, left);
    abandon(record);

    desk = new DeskDriver(spare);
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
