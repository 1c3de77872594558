package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How sure a design is, by command. */
class SureCommandTest {
  @TempDir private Path folder;

  @Test
  void spansAndMeasurementsOfTheDemoAreToldAndTheBestComesFirst() {
    CommandRun run = CommandRun.of("sure");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Not steadily", "Volume a week: 15,067 gal in the design, ")
        .containsPattern("9 +0\\.80 +71\\.4 +72 +2–3 +")
        .containsPattern("Catch-can test +8 +360 +")
        .contains("Taken as sure, for no range is typed and none was published: Area, ");
    assertThat(run.out().indexOf("Plant survey")).isLessThan(run.out().indexOf("Soil sample"));
  }

  @Test
  void oneZoneIsToldWithWhatToMeasureThere() {
    CommandRun run = CommandRun.of("sure", "--zone", "9");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "Cycles: 3 in the design, 2 to 3 over the ranges.",
            "Measure the intake rate (intake test): cycles lie between 2 and 3 by it alone; nothing else moves them.");
    CommandRun none = CommandRun.of("sure", "--zone", "99");
    assertThat(none.code()).isEqualTo(ExitCode.USAGE);
    assertThat(none.err()).contains("There is no zone “99”; did you mean");
  }

  @Test
  void oneNumberIsToldWithItsWorkingAndWhatItLiesBetween() {
    CommandRun run = CommandRun.of("sure", "--of", "Longest cycle of 9");

    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out())
        .startsWith("zone 9, Longest cycle (calculated)")
        .contains("= 25 min")
        .endsWith(
            "Over the ranges of its inputs it lies between 25 and 38 min, as tried; the intake rate moves it most, between 25 and 38 min by itself."
                + System.lineSeparator());
    CommandRun typed = CommandRun.of("sure", "--of", "Soil of 9");
    assertThat(typed.code()).isEqualTo(ExitCode.USAGE);
    assertThat(typed.err()).contains("zone 9, Soil is no calculated number of a zone");
  }

  @Test
  void rangesAreTypedByTheCommandSetAndListedWithTheirSources() {
    Path file = folder.resolve("ranges.xlsx");
    CommandRun set =
        CommandRun.of(
            "set",
            file.toString(),
            "--sample",
            "library-garden",
            "Intake rate of 7=0.15 to 0.25 in/h",
            "Area=± 5 %",
            "Reference ET=90 % to 110 %",
            "Client=Moves 2 to 3 trees");

    assertThat(set.code()).as(set.err()).isZero();
    CommandRun listed = CommandRun.of("sure", file.toString(), "--ranges", "--units", "si");
    assertThat(listed.out())
        .contains("7: Intake rate 3.81 mm/h to 6.35 mm/h; typed")
        .contains("all zones: Reference ET 90 % to 110 %; typed")
        .contains("8: Plant factor 0.1 to 0.3; Costello")
        .contains("1, 2: Area 198.6 m² to 219.5 m²; typed");
  }

  @Test
  void aRangeThatCannotBeUsedIsRefusedAndNothingIsWritten() {
    Path file = folder.resolve("none.xlsx");
    CommandRun range =
        CommandRun.of(
            "set", file.toString(), "--sample", "library-garden", "Intake rate of 7=0.5 to 0.2");
    assertThat(range.code()).isEqualTo(ExitCode.USAGE);
    assertThat(range.err()).contains("zone 7, Intake rate: The least comes first");
    CommandRun column =
        CommandRun.of("set", file.toString(), "--sample", "library-garden", "Cycles of 7=2 to 3");
    assertThat(column.code()).isEqualTo(ExitCode.USAGE);
    assertThat(column.err()).contains("Cycles can be given no range.");
    assertThat(Files.exists(file)).isFalse();
  }

  @Test
  void thePageIsWrittenAndADesignWithoutZonesHasNone() {
    Path pages = folder.resolve("first.pdf");
    CommandRun run = CommandRun.of("sure", "--pdf", pages.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo("Written: " + pages + "\n");
    Path blank = folder.resolve("blank.xlsx");
    CommandRun.of("set", blank.toString(), "Client=M. Brook");
    CommandRun none = CommandRun.of("sure", blank.toString());
    assertThat(none.code()).isEqualTo(ExitCode.FOUND);
    assertThat(none.err()).contains("There is nothing to be sure of: the design has no zones.");
  }
}
