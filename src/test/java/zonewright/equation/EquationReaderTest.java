package zonewright.equation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.IrrigationSheets;
import zonewright.design.Synonyms;
import zonewright.formula.Formula;
import zonewright.formula.PrintedText;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/** What is typed is read as spreadsheets read it, with units, or refused with a reason. */
class EquationReaderTest {
  private static final KnownColumns ZONES =
      new KnownColumns(IrrigationSheets.schema(), Map.of(), Sheets.ZONES, Synonyms::of);

  private static String printed(String typed) {
    EquationReading reading = EquationReader.read(typed, ZONES);
    assertThat(reading).as(typed).isInstanceOf(EquationReading.Understood.class);
    return PrintedText.of(((EquationReading.Understood) reading).formula(), QuantityKind.FACTOR);
  }

  private static String money(String typed) {
    EquationReading reading = EquationReader.read(typed, ZONES, QuantityKind.MONEY);
    return PrintedText.of(((EquationReading.Understood) reading).formula(), QuantityKind.MONEY);
  }

  private static EquationReading.Problem problem(String typed, QuantityKind kind) {
    EquationReading reading = EquationReader.read(typed, ZONES, kind);
    assertThat(reading).as(typed).isInstanceOf(EquationReading.Problem.class);
    return (EquationReading.Problem) reading;
  }

  private static EquationReading.Problem problem(String typed) {
    EquationReading reading = EquationReader.read(typed, ZONES);
    assertThat(reading).as(typed).isInstanceOf(EquationReading.Problem.class);
    return (EquationReading.Problem) reading;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "=Zone flow / Area | Zone flow ÷ Area",
        "zone  FLOW÷[area] | Zone flow ÷ Area",
        "Area * 1.5 in | Area × 1.5 in",
        "2 + 3 * 4 | 2 + 3 × 4",
        "(2 + 3) * 4 | (2 + 3) × 4",
        "12 gpm - 2 gpm - 1 gpm | 12 gpm − 2 gpm − 1 gpm",
        "-2^2 | (-2) ^ 2",
        "50% | 0.5",
        "MAX(0; Area - 100 ft2) | the larger of 0 and Area − 100 ft²",
        "MIN(2,3.5) | the smaller of 2 and 3.5",
        "MIN(2;3,5) | the smaller of 2 and 3.5",
        "SUM(Area) | sum of Area",
        "SUM(Programs.Volume a week) | sum of Volume a week",
        "Area / SUM(Zones.Area) | Area ÷ sum of Area",
        "AVERAGE(Zone flow) | sum of Zone flow ÷ number of rows with Zone flow",
        "Zone flow in gpm | Zone flow in gpm",
        "CEILING(Run time a week; 5 min) | Run time a week, rounded up to a whole number of 5 min",
        "ROUNDDOWN(Area / 100 ft2) | Area ÷ 100 ft², rounded down to a whole number",
        "SQRT(Area in ft2) | √(Area in ft²)",
        "pi()/4*2 | π ÷ 4 × 2",
        "IF(Available flow > Zone flow; Zone flow; Available flow)"
            + " | if Available flow > Zone flow: Zone flow; otherwise: Available flow",
        "Site.[Available flow] - Zone flow | Available flow − Zone flow",
        "Area^2 / Area | Area × Area ÷ Area",
        "Zone\u00a0flow\u2009−\u200b2 gpm ‑ 1\u202fgpm | Zone flow − 2 gpm − 1 gpm",
        "2 ⋅ 3 ∙ 4 ∕ 5 | 2 × 3 × 4 ÷ 5",
        "'\tArea\n / 2\r\n' | Area ÷ 2",
        "1.5 + 1,5 | 1.5 + 1.5",
        "1,234.5 gpm | 1234.5 gpm",
        "15 % * 50% | 0.15 × 0.5",
        "IF(Soil = „loam“; 1; IF(Soil = “clay”; 2; 3))"
            + " | if Soil is loam: 1; otherwise: if Soil is clay: 2; otherwise: 3",
        "[@Area] / [ @ Zone flow ] * 2 | Area ÷ Zone flow × 2",
        "IF(Program = \" first \"; 1; 2) | if Program is first: 1; otherwise: 2",
        "IF(Program <> \"12\"\" pipe\"; 1; 2) | if not (Program is 12\" pipe): 1; otherwise: 2",
        "SUMIF(Program; Program; Zone flow) | sum of Zone flow where Program is this Program",
        "COUNTIF(Zone flow; \">Zone flow\")"
            + " | number of rows where Zone flow > Zone flow of this row"
      })
  void whatIsTypedIsWhatIsMeant(String typed, String meant) {
    assertThat(printed(typed)).isEqualTo(meant);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Zone flo / Area | There is no column “Zone flo” here. Did you mean Zone flow",
        "Area + Zone flow | The left side is an area and the right side a flow: they cannot be added.",
        "Area + 5 | 5 is a plain number, where an area is needed: write its unit, as 5 ft² or 5 m².",
        "AREA( | Before “(” a sign is missing",
        "SUMM(Area) | There is no function “SUMM” here. Did you mean SUM",
        "(Area | This bracket is never closed.",
        "Area) | This bracket was never opened.",
        "Area * | Something is missing at the end.",
        "'' | An equation is missing",
        "Programs.Volume a week * 2 | “Volume a week” has a number for each program of Programs",
        "Soil + 1 | “Soil” holds words, no number.",
        "MAX(1,5) | “1,5” can be read two ways",
        "1 < 2 < 3 | Two comparisons at once are written AND(…; …).",
        "Area > 5 ft2 | This is so or not so",
        "IF(Area > 0; Area) | IF is written IF(condition; then; otherwise).",
        "IF(Soil = \"lome\"; 1; 2) | “Soil” is never “lome”; it may be",
        "ROUNDUP(Run time a week) | Say to what a time is rounded, as ROUNDUP(…; 1 min).",
        "IF(Programs.Program = \"A\"; 1; 2) | “Program” has a word for each program of Programs",
        "IF(Note = \"Lawn\"; 1; 2) | “Note” holds any words, not those of a list",
        "IF(Zone = \"1\"; 1; 2) | “Zone” names the rows themselves",
        "IF(Soil = Soil; 1; 2) | Words can only be compared with a word in quotation marks",
        "IF(Soil > \"loam\"; 1; 2) | Words can be the same (=) or not (<>), nothing else.",
        "SUMIF(Area; \">5 ftt\"; Area) | Before “ftt” a sign is missing",
        "Area + + + 1 ft2 | A number is missing between two signs.",
        "2 ** 3 | A number, a column or a bracket is missing before “*”.",
        "1,2,3 + 1 | “1,2,3”",
        "1..5 | “.” means nothing in an equation.",
        "ISBLANK(Zone flow / 2) | ISBLANK asks whether something was typed",
        "Area 5 | Before “5” a sign is missing",
        "Area # 5 | “#” means nothing in an equation."
      })
  void whatIsWrongIsSaid(String typed, String begins) {
    assertThat(problem(typed).sentence()).startsWith(begins);
  }

  @Test
  void anEquationThatGivesSomethingElseIsToldWhatItGivesAndWhatToDo() {
    assertThat(problem("Area / Zone flow", QuantityKind.MINUTES).sentence())
        .isEqualTo(
            "The equation gives an area over a flow, and the column holds a time: multiply by a depth.");
    assertThat(problem("Area * 1 in", QuantityKind.FLOW).sentence())
        .startsWith(
            "The equation gives a volume, and the column holds a flow: choose another kind");
  }

  @Test
  void aProblemHasItsPlaceAndWhatCouldStandThere() {
    EquationReading.Problem problem = problem("2 * Zone flwo + 1 gpm");
    assertThat(List.of(problem.from(), problem.to())).containsExactly(4, 13);
    assertThat(problem.offers()).first().isEqualTo("Zone flow");
    assertThat(problem("MAX(1,5)").offers()).containsExactly("1; 5", "1.5");
  }

  @Test
  void whatPeopleCallAColumnIsOfferedAndNeverTaken() {
    assertThat(problem("square footage * 2").offers()).contains("Area");
  }

  @Test
  void zeroIsNothingOfAnythingAndMoneyHasNoUnit() {
    assertThat(EquationReader.read("0", ZONES, QuantityKind.FLOW))
        .isInstanceOf(EquationReading.Understood.class);
    assertThat(EquationReader.read("12.5 + 3", ZONES, QuantityKind.FACTOR))
        .isInstanceOf(EquationReading.Understood.class);
    assertThat(EquationReader.read("12.5", ZONES, QuantityKind.MONEY))
        .isInstanceOf(EquationReading.Understood.class);
    assertThat(money("IF(Soil = \"loam\"; 0.01; 0.02) * Volume a year / 1 gal"))
        .doesNotContain("× 1;")
        .doesNotEndWith("× 1");
    assertThat(money("Volume a year / 1 gal * 0.02")).isEqualTo("Volume a year ÷ 1 gal × 0.02");
    assertThat(money("Plant factor / 2")).isEqualTo("Plant factor ÷ 2 × 1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "( | 10000 | The equation is longer than 1000 letters",
        "( | 500 | Too many brackets one in the other",
        "- | 500 | Too many signs one after the other",
        "IF( | 300 | Too many brackets one in the other",
        "Area^6* | 12 | ",
        "NOT( | 200 | Too many brackets one in the other",
        "\"\" | 300 | ",
        "[ | 900 | This bracket is never closed",
        "5, | 400 | ",
        "% | 900 | "
      })
  void endlessRepetitionsAreAnsweredWithASentence(String part, int times, String begins) {
    assertThat(problem(part.repeat(times)).sentence()).startsWith(begins == null ? "" : begins);
  }

  /** Each of these would be written out millions of times. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "( | Area | ^6)",
        "ROUND( | Area - Planted area | ; 1 ft2)",
        "CEILING(1 ft2; | Area - 1 ft2 | )",
        "IF(0 ft2 = | Area | ; 1 ft2; 2 ft2)"
      })
  void whatWouldStandInTheFormulaTooOftenIsRefused(String open, String inner, String close) {
    String typed = open.repeat(12) + inner.replace("Planted area", "9 ft2") + close.repeat(12);
    assertThat(problem(typed).sentence())
        .isEqualTo("This is needed too many times over: give it a column of its own.");
  }

  @Test
  void aLongSumIsReadAndWritten() {
    assertThat(printed("1" + "+1".repeat(499))).hasSize(1 + 4 * 499);
  }

  @Test
  void aNameThatIsASumOfOthersIsAskedFor() {
    Column made =
        Column.calculated(
                Sheets.ZONES,
                "own-made",
                "Area - Zone flow",
                QuantityKind.FACTOR,
                Formula.number(1))
            .build();
    KnownColumns known =
        new KnownColumns(
            IrrigationSheets.schema(),
            Map.of(Sheets.ZONES, List.of(made)),
            Sheets.ZONES,
            Synonyms::of);
    EquationReading.Problem problem =
        (EquationReading.Problem) EquationReader.read("Area - Zone flow", known);
    assertThat(problem.sentence())
        .isEqualTo(
            "“Area - Zone flow” can be read two ways: write [Area - Zone flow] for the column of this"
                + " name, or [Area] - Zone flow.");
    assertThat(EquationReader.read("[Area - Zone flow] / 2", known))
        .isInstanceOf(EquationReading.Understood.class);
  }
}
