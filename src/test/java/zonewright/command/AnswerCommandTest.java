package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
    assertThat(run.answer()).isEqualTo("Precipitation rate = 0.64 in/h");
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

    assertThat(run.answer()).isEqualTo("Run time a watering day = 12 min");
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

    assertThat(run.answer()).isEqualTo("Depletion depth = 3 in");
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
    assertThat(run.answer()).isEqualTo("Longest cycle = 12 min");
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
            "900 ft2",
            "1. Rate by area",
            "= Zone flow ÷ Area",
            "= 96.25 × 12 gpm ÷ 900 ft²",
            "= 1.28 in/h",
            "Source: ",
            "2. Precipitation rate");
  }

  /** The way the choice took, what decided it as it is, the row of the table, no other way. */
  @Test
  void onlyTheWayTakenIsShownWithWhatDecidedIt() {
    CommandRun run =
        CommandRun.of(
            "answer", "Longest cycle", "Precipitation rate=1.6 in/h", "Soil=loam", "Slope=4");

    assertThat(run.out())
        .containsSubsequence(
            "Assumed",
            "Compaction",
            "= Surface storage 4-6 % of the Soil (table Soils)",
            "= 0.25 in",
            "Slope 4 % > 3 %",
            "Slope 4 % ≤ 6 %",
            "Table Soils, row loam: Surface storage 4-6 % 0.25 in",
            "= (60 × 0.25 in ÷ (1.6 in/h − 0.35 in/h) ÷ 1 min = 12, rounded down) × 1 min",
            "60 is minutes in an hour")
        .doesNotContain("otherwise")
        .doesNotContain("Step of its minutes (default)")
        .containsOnlyOnce("Table Soils, row loam: pairs");
  }

  /** ASTM D2241, class 200: 1 in has 1.315 − 2 × 0.063 = 1.189 in inside, 3/4 in 0.93 in. */
  @Test
  void pipeSizingIsAShortTableOfTries() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Lateral smallest size",
            "Lateral least inside diameter=0.95 in",
            "Pipes: Lateral pipe=PVC Class 200");

    assertThat(run.answer()).isEqualTo("Lateral smallest size = 1 in");
    assertThat(run.out())
        .containsSubsequence(
            "Tried in table PipeDiameters, row PVC Class 200, against 0.95 in:",
            "size 1: 0.93 in, too small",
            "size 2: 1.189 in, will do")
        .doesNotContain("size 3:");
  }

  /** 12 gpm through 1.2 in: 0.4085 × 12 ÷ 1.44 = 3.4 ft/s, the constant verified (secondary). */
  @Test
  void piStaysPiAndFactorsSayWhatTheyAre() {
    CommandRun run =
        CommandRun.of(
            "answer", "Lateral velocity", "Lateral flow=12 gpm", "Lateral inside diameter=1.2 in");

    assertThat(run.answer()).isEqualTo("Lateral velocity = 3.4 ft/s");
    assertThat(run.out())
        .contains("= 12 gpm ÷ 3.116883 ÷ (π ÷ 4 × 1.2 in × 1.2 in)")
        .contains("3.116883 is 12 × 60 ÷ 231: a foot a second through a square inch");
  }

  @Test
  void theWorkingIsAPageToHandIn(@TempDir Path folder) throws IOException {
    Path page = folder.resolve("rate.pdf");
    String[] asked = {
      "answer", "Precipitation rate", "Zone flow=12 gpm", "Area=900 ft2", "--pdf", page.toString()
    };

    assertThat(CommandRun.of(asked).code()).isZero();
    assertThat(text(page))
        .containsSubsequence(
            "Precipitation rate",
            "Given",
            "Zone flow",
            "12 gpm",
            "1. Rate by area",
            "= 96.25 × 12 gpm ÷ 900 ft²",
            "Answer",
            "Precipitation rate = 1.28 in/h");
    assertThat(CommandRun.of(asked).err()).contains("is there already; add --replace");
  }

  /** 45.42 L/min over 83.6 m²: 60 × 45.42 ÷ 83.6 = 32.6 mm/h, derived. */
  @Test
  void unitsOfEitherSystemAreTakenAndTheAnswerIsInTheOneAskedFor() {
    CommandRun run =
        CommandRun.of(
            "answer", "Precipitation rate", "Zone flow=45.42 L/min", "Area=83.6", "--units", "si");

    assertThat(run.answer()).isEqualTo("Precipitation rate = 32.6 mm/h");
  }

  @Test
  void whereTheSoilKeepsUpThereIsNoLimitAndNoError() {
    CommandRun run =
        CommandRun.of(
            "answer", "Longest cycle", "Precipitation rate=0.3 in/h", "Soil=loam", "Slope=2");

    assertThat(run.code()).isZero();
    assertThat(run.answer()).isEqualTo("Longest cycle = no limit");
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
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
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

    assertThat(zones.answer()).isEqualTo("Volume a week = 300 gal");
    assertThat(site.answer()).isEqualTo("Volume a week = 300 gal");
    assertThat(site.out()).contains("sum of");
  }

  @Test
  void aMonthCanBeChosenByItsName() {
    CommandRun run =
        CommandRun.of(
            "answer", "Mean daily reference ET", "Months: Month=february", "Reference ET=2.8 in");

    assertThat(run.answer()).isEqualTo("Mean daily reference ET = 0.1 in/day");
  }

  /**
   * FAO Irrigation and Drainage Paper 56, equation 52 for 30 and 15 °C at 38° north: 0.0937 in/day
   * in January, 0.235 in July (derived).
   */
  @Test
  void whereMonthsDifferAllAreListedAndTheNameOfOneIsEnough() {
    String[] given = {
      "answer",
      "Hargreaves ET",
      "Latitude=38",
      "Highest temperature=30 °C",
      "Lowest temperature=15 °C"
    };
    CommandRun without = CommandRun.of(given);
    assertThat(without.code()).isZero();
    assertThat(without.out())
        .containsSubsequence(
            "Hargreaves ET, each row",
            "January    0.0937 in/day",
            "July       0.235 in/day",
            "\"Month=January\"",
            "one of January, February");
    String[] july = java.util.Arrays.copyOf(given, given.length + 1);
    july[given.length] = "Month=July";
    assertThat(CommandRun.of(july).answer()).isEqualTo("Hargreaves ET = 0.235 in/day");
    july[given.length] = "Month=january";
    assertThat(CommandRun.of(july).answer()).isEqualTo("Hargreaves ET = 0.0937 in/day");
  }

  /**
   * Eight cans: the mean is 196 ÷ 8 = 24.5 mL, that of the lowest two 20.5 mL, so 83.7 % (mean of
   * the lowest quarter ÷ mean of all: Merriam and Keller, 1978, verified).
   */
  @Test
  void severalValuesAtOnceAreARowEach() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Low-quarter uniformity",
            "Cans=20,25,30,22,28,24,26,21",
            "Can opening=16 in2");

    assertThat(run.answer()).isEqualTo("Low-quarter uniformity = 83.7 %");
    assertThat(run.out())
        .containsSubsequence(
            "Volume       20,25,30,22,28,24,26,21 mL",
            "Can opening  16 in2",
            "for can 1; likewise",
            "  8  0.0801 in")
        .doesNotContain("  Test  ");
  }

  /** Twelve values are those of the months; three are too few. 7 in ÷ 31 days, derived. */
  @Test
  void twelveValuesAreThoseOfTheMonths() {
    String[] asked = {
      "answer", "Mean daily reference ET", "Reference ET=1,2,3,4,5,6,7,8,9,10,11,12 in"
    };
    assertThat(CommandRun.of(asked).out())
        .contains("July       0.226 in/day", "December   0.387 in/day");
    assertThat(CommandRun.of("answer", "Mean daily reference ET", "Reference ET=1,2,3").err())
        .startsWith("Reference ET: 3 values are given; it takes one, or 12, one for each month.");
  }

  /** 1.5 in/ft over 60 cm: 1.5 × 25.4 × 0.6 ÷ 0.3048 = 75 mm, derived. */
  @ParameterizedTest
  @CsvSource({
    "Water held in mm, Available water=1.5 in/ft, Root depth=60 cm, 75 mm (2.95 in)",
    "Need per week in ccf, Available water=1.5 in/ft, Root depth=60 cm, ''",
    "Area in gal, Available water=1.5 in/ft, Root depth=60 cm, ''",
  })
  void theAnswerComesInTheUnitAskedFor(String asked, String one, String other, String answer) {
    CommandRun run = CommandRun.of("answer", asked, one, other);

    if (answer.isEmpty()) {
      assertThat(run.code()).isEqualTo(2);
    } else {
      assertThat(run.answer()).endsWith(" = " + answer);
      assertThat(run.out()).contains("Root depth       60 cm = 23.6 in");
    }
  }

  /** 0.25 × 0.8 = 0.2 in/day: 1.4 in in 7 days, 6 in in 30, derived. */
  @Test
  void aDepthADayIsSaidByWeekAndMonth() {
    assertThat(
            CommandRun.of("answer", "Net demand", "Peak reference ET=0.25", "Plant factor=0.8")
                .out())
        .contains("In a week 1.4 in, in the 30 days of a month 6 in");
    assertThat(
            CommandRun.of("answer", "Mean daily reference ET", "Month=July", "Reference ET=7.4 in")
                .out())
        .contains("In a week 1.67 in, in the 31 days of a month 7.4 in");
  }

  @Test
  void aMonthIsNotAskedForWhereItDoesNotMatter() {
    CommandRun run =
        CommandRun.of(
            "answer", "Mean temperature", "Highest temperature=30 °C", "Lowest temperature=15 °C");

    assertThat(run.code()).isZero();
    assertThat(run.answer()).isEqualTo("Mean temperature = 22.5");
  }

  @Test
  void whatIsAssumedIsSaidFirst() {
    CommandRun run =
        CommandRun.of(
            "answer", "Longest cycle", "Precipitation rate=1.6 in/h", "Soil=loam", "Slope=4");

    assertThat(run.out().lines())
        .startsWith(
            "Assumed, unless given",
            "  Compaction           none",
            "  Step of its minutes  1 min",
            "",
            "Longest cycle = 12 min");
  }

  @Test
  void netDemandWithPeakEtAndNoRainNeedsNoPlace() {
    CommandRun run =
        CommandRun.of(
            "answer",
            "Net demand",
            "Peak reference ET=6 mm/day",
            "Plant factor=0.6",
            "--units",
            "si");

    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.answer()).isEqualTo("Net demand = 3.6 mm/day");
    assertThat(run.out()).startsWith("Assumed").contains("Peak effective rain");
    assertThat(CommandRun.of("answer", "Net demand").err())
        .startsWith("Net demand needs Climate place, Plant type.");
  }

  @Test
  void everyExampleOfTheHelpWorks() {
    List<String> examples =
        CommandRun.of("answer", "--help")
            .out()
            .lines()
            .map(String::strip)
            .filter(line -> line.startsWith("zonewright answer"))
            .toList();
    assertThat(examples).hasSizeGreaterThan(3);
    for (String example : examples) {
      List<String> arguments = new ArrayList<>();
      java.util.regex.Matcher words =
          java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(example);
      while (words.find()) {
        arguments.add(words.group(1) == null ? words.group(2) : words.group(1));
      }
      CommandRun run = CommandRun.of(arguments.subList(1, arguments.size()).toArray(String[]::new));
      assertThat(run.code()).as(example + "\n" + run.err()).isZero();
    }
  }

  @Test
  void aBarePercentIsPercentHoweverSmallAndRatiosAndAnglesAreRead() {
    assertThat(CommandRun.of("answer", "Slope", "Slope=.05").answer()).isEqualTo("Slope = 0.05 %");
    assertThat(CommandRun.of("answer", "Slope", "Slope=4:1").answer()).isEqualTo("Slope = 25 %");
    assertThat(CommandRun.of("answer", "Slope", "Slope=45°").answer()).isEqualTo("Slope = 100 %");
    assertThat(CommandRun.of("answer", "Contingency", "Contingency=0.5").answer())
        .isEqualTo("Contingency = 0.5 %");
    assertThat(CommandRun.of("answer", "Profit", "Profit=1").answer()).isEqualTo("Profit = 1 %");
    assertThat(CommandRun.of("columns", "Slope").out())
        .contains("A number without a unit is percent");
  }

  @Test
  void aWordCanBeTheAnswer() {
    CommandRun run = CommandRun.of("answer", "Peak month", "Climate place=CIMIS zone 8");

    assertThat(run.answer()).isEqualTo("Peak month = July");
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
            "Precipitation rate=15 in/h",
            "Intake rate=0.1",
            "Surface storage=0.1",
            "Run time a watering day=20");

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.answer()).startsWith("Cycles = none: water runs off before the shortest run");
    assertThat(run.err().lines()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Area=abc | Area: “abc” is not a number",
        "Area=-5 ft2 | Area: -5 ft² is out of range; it must be above 0 ft²",
        "Area=0 | Area: 0 ft² is out of range",
        "Area=12 gpm | Area: “12 gpm”: the unit “gpm” is none of an area",
        "Slope=250 % | Slope: 250 % is out of range; it must be from 0 % to 100 %",
        "Soil=lome | Soil: “lome” is not in the list; did you mean “loam”?",
        "Plant type=cool season turf | did you mean “cool-season turf”?",
        "Precipitation rate=-1 in/h | must be above 0 in/h",
        "Months: Month=Brumaire | is no month",
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
  void columnsThatComeNearStandInALineEach() {
    CommandRun run = CommandRun.of("answer", "Longest cycle", "Aria=5");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .startsWith("There is no column “Aria”; did you mean one of these?\n  Area  ");
    assertThat(run.err().lines()).hasSizeBetween(3, 4);
  }

  @ParameterizedTest
  @CsvSource({
    "pr,Precipitation rate",
    "precip rate,Precipitation rate",
    "percipitation rate,Precipitation rate",
    "application rate,Precipitation rate",
  })
  void aQuestionIsAskedAsPeopleAsk(String asked, String column) {
    CommandRun run = CommandRun.of("answer", asked, "gpm=12", "sq ft=900");

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("\n" + column + " = 1.28 in/h");
  }

  @Test
  void whatIsNeededIsAFewThingsNeverALongList() {
    for (var table : zonewright.design.IrrigationSheets.schema().tables()) {
      for (String column : List.of("Run time a watering day", "Pressure at the worst head")) {
        if (table.columns().stream().noneMatch(each -> each.name().equals(column))) {
          continue;
        }
        String told = CommandRun.of("answer", table.title() + ": " + column).err();
        assertThat(told.lines()).hasSizeBetween(3, 7);
        assertThat(told.lines())
            .allSatisfy(line -> assertThat(line.split(", ", -1)).hasSizeLessThan(9));
      }
    }
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

  private static String text(Path pages) throws IOException {
    try (PDDocument document = Loader.loadPDF(pages.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
