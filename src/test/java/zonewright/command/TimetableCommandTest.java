package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.DroughtStages;
import zonewright.workbook.DesignFile;

/** The timetable at the command line. */
class TimetableCommandTest {
  private static CommandRun run(String... more) {
    String[] arguments = new String[more.length + 3];
    List<String> first = List.of("timetable", "--sample", "library-garden");
    for (int i = 0; i < arguments.length; i++) {
      arguments[i] = i < 3 ? first.get(i) : more[i - 3];
    }
    return CommandRun.of(arguments);
  }

  @Test
  void nightsStandOneAfterAnotherWithTheLeastTheyCouldTake() {
    CommandRun run = run();
    // The demo's slope asks for more cycles than its controller starts: some of it is left undone.
    assertThat(run.code()).isEqualTo(ExitCode.FOUND);
    assertThat(run.firstLine())
        .startsWith("Monday, 21:00 to 07:00: done at ")
        .endsWith("which no arrangement beats.");
    assertThat(run.out()).contains("Reading lawn, north half");
  }

  @Test
  void otherProgramsGetALineForEachOpeningOfAValve() {
    CommandRun run = run("--csv");
    List<String> lines = run.out().lines().toList();
    assertThat(lines.get(0))
        .isEqualTo(
            "Night,Opens,Closes,Zone,Where,Program,Cycle,Minutes,Zone flow (gpm),Not placed because");
    assertThat(lines).hasSizeGreaterThan(30);
    assertThat(lines).allMatch(line -> line.contains(",") && !line.contains("null"));
  }

  /** The slope of the demo asks for 9 cycles of 11 min, and its controller starts 4. */
  @Test
  void everyZoneIsShownWithWhatItGets() {
    assertThat(run().out())
        .contains("Of 12 zones 11 placed, 1 placed in part.")
        .containsPattern(
            "11 +West slope ground cover .* 99 +44 +55 +55 % +\\w.* [0-9:, ]+ placed in part");
    int slope = 0;
    for (String line : run("--csv").out().lines().toList()) {
      slope += line.contains("West slope") ? Integer.parseInt(line.split(",", -1)[7]) : 0;
    }
    assertThat(slope).isEqualTo(99);
    assertThat(run("--ics").out().replace("\n ", ""))
        .contains("44 of 99 min a week placed\\; not placed 55 min");
  }

  /** The stage is invented. */
  @Test
  void aStageIsTriedOnAFileAndTheFileStaysAsItIs(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("garden.xlsx");
    Design design = Demo.libraryGarden(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.STAGES, 0, 1));
    design.book().perform(design.edits().typed(DroughtStages.STAGE.reference(), 0, "Stage 2"));
    design.book().perform(design.edits().typed(DroughtStages.CUT.reference(), 0, "50 %"));
    DesignFile.write(design, file);
    byte[] before = Files.readAllBytes(file);
    CommandRun run = CommandRun.of("timetable", file.toString(), "--stage", "stage 2");
    assertThat(run.out()).containsPattern("Reading lawn, north half .* (4\\d|50) % ");
    assertThat(run("--stage", "Stage 2").err()).contains("The design has no stages");
    assertThat(file).hasBinaryContent(before);
  }

  @Test
  void aCardThatDoesNotFitSaysSoFirst() {
    assertThat(run("--cards").out())
        .containsPattern("Program A.*\nDOES NOT FIT\n  Zone 11 asks for 9 starts a night ")
        .contains("  Way out: Water on more days, zone 11 on 3 days a week: then everything fits.")
        .contains("lacks 55 min a week");
  }

  /** Nine cycles where four starts a program are to be had: days and cycles are shared. */
  @Test
  void theDemoGardenCanBeKeyedIntoAPlainController() {
    CommandRun run = run("--cards", "--plain");
    String out = run.out();
    assertThat(run.code()).isZero();
    assertThat(out).contains("Program A: ", "Program D, zones of B: ").doesNotContain("Program E");
    assertThat(out.lines().filter(line -> line.startsWith("Start times: ")))
        .hasSizeLessThanOrEqualTo(4)
        .allMatch(line -> line.split(",", -1).length <= 4);
  }

  @Test
  void cardsOfAPlainControllerHaveStartTimes() {
    CommandRun run = run("--cards", "--plain");
    assertThat(run.out())
        .contains("Program A")
        .contains("Start times: ")
        .contains("percent at 100");
  }

  @Test
  void aMonthShrinksTheNights() {
    assertThat(run("--month", "January").out())
        .startsWith("At ")
        .contains("percent of the peak month");
    assertThat(run("--month", "50").out()).startsWith("At 50 percent");
  }

  @Test
  void whatIsNoMonthIsToldWithTheNearest() {
    CommandRun run = run("--month", "Juli");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("“Juli” is no month; did you mean July?");
    assertThat(run("--month", "999").err()).contains("no percentage from 0 to 300");
    assertThat(run("--month", "0").err()).contains("nothing to water at 0 percent");
  }

  @Test
  void aCalendarFileComesAsItIs() {
    CommandRun run = run("--ics");
    assertThat(run.out()).startsWith("BEGIN:VCALENDAR\nVERSION:2.0\n").endsWith("END:VCALENDAR\n");
  }

  @Test
  void onlyOneFormAtATime() {
    CommandRun run = run("--ics", "--csv");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("Choose one of --cards, --csv and --ics.");
  }
}
