package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.testing.Counts;

final class AnswerCommandTest {
  /** Ohio State University Extension, Bulletin 912, step 11. */
  @Test
  void aBulletinsPrecipitationRateComesOut() {
    CommandRun run =
        CommandRun.of("answer", "Precipitation rate", "Zone flow=9.6 gpm", "Area=1444 ft2");

    assertThat(run.code()).isZero();
    assertThat(run.firstLine()).isEqualTo("Precipitation rate = 0.64 in/h");
    assertThat(run.err()).isEmpty();
  }

  /** Ohio State University Extension, Bulletin 912: 0.2 in at 1 in/h take 12 minutes. */
  @Test
  void aBulletinsRunTimeComesOutWhenWateredEveryDay() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Run time a watering day",
            "Gross demand=0.2 in/day",
            "Precipitation rate=1 in/h",
            "Watering days=7");

    assertThat(run.firstLine()).isEqualTo("Run time a watering day = 12 min");
  }

  /** Practice problems of a public tutorial on irrigation water management: 3 in. */
  @Test
  void aTutorialsAllowedDepletionComesOut() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Depletion depth",
            "Available water=1.25 in/ft",
            "Root depth=4 ft",
            "Allowed depletion=60 %");

    assertThat(run.firstLine()).isEqualTo("Depletion depth = 3 in");
  }

  /**
   * Surface storage ÷ (rate − intake): 60 × 0.25 ÷ (1.60 − 0.35) = 12 min. The inputs are those of
   * a published controller test zone, from memory; the result is derived.
   */
  @Test
  void aCalculatedColumnThatIsGivenCountsAsGiven() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Longest cycle",
            "Precipitation rate=1.6 in/h",
            "Intake rate=0.35 in/h",
            "Surface storage=0.25 in");

    assertThat(run.code()).isZero();
    assertThat(run.firstLine()).isEqualTo("Longest cycle = 12 min");
    assertThat(run.out()).doesNotContain("Rate by area");
  }

  /** 12 × 96.25 ÷ 900, derived. */
  @Test
  void theWorkingShowsSymbolsNumbersFactorAndSourceInOrder() {
    CommandRun run =
        CommandRun.of("answer", "precipitation rate", "zone flow=12 gpm", "area=900 ft2");

    assertThat(run.out())
        .containsSubsequence(
            "Precipitation rate = 1.28 in/h",
            "Zone flow",
            "12 gpm",
            "Area",
            "900 ft²",
            "1. Rate by area",
            "= Zone flow ÷ Area",
            "= 96.25 × 12 gpm ÷ 900 ft²",
            "= 1.28 in/h",
            "Source: ",
            "2. Precipitation rate");
  }

  /** 45.42 L/min over 83.6 m²: 60 × 45.42 ÷ 83.6 = 32.6 mm/h, derived. */
  @Test
  void unitsOfEitherSystemAreTakenAndTheAnswerIsInTheOneAskedFor() {
    CommandRun run =
        CommandRun.of(
            "answer", "Precipitation rate", "Zone flow=45.42 L/min", "Area=83.6", "--units", "si");

    assertThat(run.firstLine()).isEqualTo("Precipitation rate = 32.6 mm/h");
  }

  @Test
  void whereTheSoilKeepsUpThereIsNoLimitAndNoError() {
    CommandRun run =
        CommandRun.of(
            "answer", "Longest cycle", "Precipitation rate=0.3 in/h", "Soil=loam", "Slope=2");

    assertThat(run.code()).isZero();
    assertThat(run.firstLine()).isEqualTo("Longest cycle = no limit");
    assertThat(run.out()).contains("as fast as it comes");
  }

  @Test
  void missingInputsAreNamedEachOnceWithUnitRangeAndExample() {
    CommandRun run = CommandRun.of("answer", "Longest cycle", "Precipitation rate=1.6 in/h");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("Longest cycle needs Soil, Slope.")
        .contains("\"Slope=6 %\"", "from 0 % to 100 %", "one of clay", "Intake rate");
  }

  /** Also for columns that come later: whatever is asked, the help given leads to an answer. */
  @Test
  @Tag(Counts.LONG)
  void whatIsSuggestedToWriteIsAcceptedForEveryColumn() {
    for (TableDefinition table : IrrigationSheets.blueprint().tables()) {
      for (int at = 0; at < table.columns().size(); at += Counts.of(9, 1)) {
        Column column = table.columns().get(at);
        List<String> arguments =
            new ArrayList<>(List.of("answer", table.title() + ": " + column.name()));
        CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
        // What is given may lead to one more question: a volume caught asks for the vessel.
        for (int round = 0; round < 3 && run.code() == 2; round++) {
          run.err()
              .lines()
              .filter(line -> line.startsWith("  \""))
              .map(line -> line.substring(3, line.indexOf('"', 3)))
              .forEach(arguments::add);
          run = CommandRun.of(arguments.toArray(String[]::new));
        }

        assertThat(run.code()).as(arguments + "\n" + run.err()).isIn(0, 1);
      }
    }
  }

  @Test
  void aNameInSeveralSheetsMeansTheZonesUnlessTheSheetIsNamed() {
    CommandRun zones =
        CommandRun.of(
            "answer", "Volume a week", "Volume a watering day=100 gal", "Watering days=3");
    CommandRun site = CommandRun.of("answer", "Site: Volume a week", "Volume a week=300 gal");

    assertThat(zones.firstLine()).isEqualTo("Volume a week = 300 gal");
    assertThat(site.firstLine()).isEqualTo("Volume a week = 300 gal");
    assertThat(site.out()).contains("sum of");
  }

  @Test
  void aMonthCanBeChosenByItsName() {
    CommandRun run =
        CommandRun.of(
            "answer", "Mean daily reference ET", "Months: Month=february", "Reference ET=2.8 in");

    assertThat(run.firstLine()).isEqualTo("Mean daily reference ET = 0.1 in/day");
  }

  @Test
  void aWordCanBeTheAnswer() {
    CommandRun run = CommandRun.of("answer", "Peak month", "Climate place=CIMIS zone 8");

    assertThat(run.firstLine()).isEqualTo("Peak month = July");
  }

  @Test
  void aValueWithoutAPartInTheAnswerIsToldAndLeftAside() {
    CommandRun run =
        CommandRun.of("answer", "Precipitation rate", "Zone flow=12", "Area=900", "Slope=4");

    assertThat(run.code()).isZero();
    assertThat(run.err()).isEqualTo("Slope has no part in Precipitation rate; left aside.\n");
  }

  @Test
  void aDesignThatCannotWorkIsAnAnswerWithACodeOfItsOwn() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Cycles",
            "Precipitation rate=40 in/h",
            "Intake rate=0.1",
            "Surface storage=0.1",
            "Run time a watering day=20");

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.firstLine()).startsWith("Cycles = none: water runs off within a minute");
    assertThat(run.err().lines()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Area=abc | Area: “abc” is not a number",
        "Area=-5 ft2 | Area: -5 ft² is out of range; it must be above 0 ft²",
        "Area=0 | Area: 0 ft² is out of range",
        "Area=12 gpm | Area: “12 gpm” is in gpm, which is no unit of area",
        "Slope=250 % | Slope: 250 % is out of range; it must be from 0 % to 100 %",
        "Soil=lome | Soil: “lome” is not in the list; did you mean “loam”?",
        "Plant type=cool season turf | did you mean “cool-season turf”?",
        "Precipitation rate=-1 in/h | must be at least 0 in/h",
        "Months: Month=Brumaire | is no month",
        "Aria=5 | There is no column “Aria”; did you mean “Area”",
        "Basin: Area=5 | There is no sheet “Basin”; the sheets are",
        "Area | gives no value; write a name, an equals sign and a value",
        "Area= | gives no value",
      })
  void aValueThatCannotBeUsedIsASentence(String value, String sentence) {
    CommandRun run = CommandRun.of("answer", "Longest cycle", value);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains(sentence).doesNotContain("Exception");
  }

  @Test
  void aNameGivenTwiceIsASentence() {
    CommandRun run = CommandRun.of("answer", "Precipitation rate", "Area=900", "area=800");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).isEqualTo("Area is given twice; give it once.\n");
  }

  @Test
  void anInputAskedForIsSaidToBeTyped() {
    CommandRun run = CommandRun.of("answer", "Slope");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("Slope is typed, not calculated: give Slope.");
  }
}
