package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The season at the command line. */
class SeasonCommandTest {
  private static CommandRun run(String... more) {
    List<String> all = new ArrayList<>(List.of("season", "--sample", "library-garden"));
    all.addAll(List.of(more));
    return CommandRun.of(all.toArray(String[]::new));
  }

  @Test
  void allZonesStandInATableWithWhatWouldHelpBelow() {
    CommandRun run = run();
    assertThat(run.code()).isEqualTo(ExitCode.FOUND);
    assertThat(run.firstLine()).startsWith("Weather: a typical year made from the months");
    assertThat(run.out())
        .contains("Zone 11 is followed with 44 of its 99 min a week")
        .contains("Percent by day: the runs of the timetable as it stands.")
        .containsPattern("(?m)^1 +Reading lawn, north half +[0-9,]+ ")
        .contains("zone 11 is short in July");
  }

  @Test
  void twoRulesStandOneBelowTheOther() {
    CommandRun run = run("--rule", "fixed", "--compare", "monthly");
    assertThat(run.code()).isEqualTo(ExitCode.FINE);
    assertThat(run.out())
        .containsSubsequence("Baseline fixed: ", "Percent by month: ", "The second gives ")
        .contains(" gal a year less, meets ");
  }

  @Test
  void otherProgramsGetTheDaysOfAZone() {
    List<String> lines = run("--zone", "1", "--csv").out().lines().toList();
    assertThat(lines.get(0))
        .isEqualTo(
            "Date,Reference ET (in),Rain (in),Percent (%),Minutes (min),Irrigation (in),Rain soaked in (in),Need (in),Taken (in),Runoff (in),Drained (in),Depletion (in),Allowed (in)");
    assertThat(lines).hasSize(366);
    assertThat(run("--csv", "--units", "si").out().lines().toList().get(0))
        .startsWith("Zone,Where,Water a year (L),Need a year (mm),Adequacy (%)");
  }

  @Test
  void measuredDaysTakeThePlaceOfTheTypicalYear(@TempDir Path folder) throws IOException {
    StringBuilder text = new StringBuilder("Date,Reference ET (mm),Rain (mm),How\n");
    for (int day = 0; day < 400; day++) {
      text.append(LocalDate.of(2021, 1, 1).plusDays(day)).append(day == 5 ? ",,0," : ",4.5,0,");
      text.append("given\n");
    }
    Path file = folder.resolve("days.csv");
    Files.writeString(file, text);
    CommandRun run = run("--weather", file.toString(), "--months", "Apr-Oct");
    assertThat(run.firstLine())
        .startsWith("Weather: days.csv, 2021-01-01 to 2022-02-04.")
        .contains("1 day without evapotranspiration was given the mean of its month.");
    assertThat(run.out()).doesNotContain("typical year");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--rule|drip|“drip” is no rule; write fixed, monthly, daily or found.",
        "--percent|-5|--percent: “-5” is out of range.",
        "--percent|much|--percent: “much” is not a number",
        "--months|Apr|Write --months by their names, such as Apr-Oct.",
        "--limits|20|Write --limits as least and most, such as 20-150.",
        "--rain-pause|6 mm|Write --rain-pause as a depth and days",
        "--rain-sensor|0 mm,3|--rain-sensor wants a depth above 0.",
        "--not-below|3 °C|--not-below needs a weather file with lowest temperatures.",
        "--zone|99|There is no zone “99” to follow; there are 1, 2,",
        "--weather|nowhere.csv|There is no file nowhere.csv.",
      })
  void whatCannotBeReadIsSaid(String option, String value, String sentence) {
    CommandRun run = run(option, value);
    assertThat(run.code()).isNotEqualTo(ExitCode.FINE).isNotEqualTo(ExitCode.FAULT);
    assertThat(run.err()).contains(sentence);
  }

  @Test
  void aRuleIsScoredOnTheStandardZones() {
    CommandRun run = CommandRun.of("season", "--sample", "controller-test-zones", "--test");
    assertThat(run.out())
        .contains("A zone passes with an adequacy of 80 % and a scheduling efficiency of 95 %.")
        .containsPattern("(?m)^6 +bermuda, full sun +[0-9.]+ +[0-9.]+ +yes$");
    assertThat(run("--test", "--compare", "fixed").err())
        .contains("Choose one of --zone, --compare and --test.");
  }

  @Test
  void withoutZonesAsFoundThereIsNothingToFollow() {
    CommandRun run = run("--rule", "found");
    assertThat(run.code()).isEqualTo(ExitCode.FOUND);
    assertThat(run.err()).contains("No zone stands on the sheet Found.");
  }
}
