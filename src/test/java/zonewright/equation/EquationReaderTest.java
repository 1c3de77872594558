package zonewright.equation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.IrrigationSheets;
import zonewright.design.Synonyms;
import zonewright.formula.PrintedText;
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
  }
}
