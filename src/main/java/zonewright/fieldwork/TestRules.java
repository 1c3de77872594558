package zonewright.fieldwork;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.emitters.FieldTested;
import zonewright.formula.Formula;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What to tell about catch-can tests. */
public final class TestRules {
  private static final Rule NO_MULTIPLE_OF_FOUR =
      new Rule(
          "cans-by-four",
          Severity.NOTE,
          TESTS,
          CatchTests.COUNT
              .above(number(4).times(number(0.25).times(CatchTests.COUNT).roundedDownTo(Units.ONE)))
              .and(CatchTests.COUNT.above(0)),
          CatchTests.COUNT,
          "has {0} cans, and {1} count as the lowest quarter",
          "set out a multiple of four next time, so that a quarter is a whole number of cans",
          List.of(CatchTests.COUNT, CatchTests.QUARTER_COUNT));

  private static final Formula LEAST_CANS = number(24);

  private static final Rule TOO_FEW =
      new Rule(
          "cans-too-few",
          Severity.CHECK,
          TESTS,
          CatchTests.COUNT.below(LEAST_CANS).and(CatchTests.COUNT.above(0)),
          CatchTests.COUNT,
          "has {0} cans; a test wants 24 to 40 (University of California, Davis), for a few cans can miss the dry places or be all of"
              + " them",
          "set out at least 24, a multiple of four, evenly over the area, and test again before the zone goes by it",
          List.of(CatchTests.COUNT));

  private static final Rule OUTLIERS =
      new Rule(
          "cans-far-off",
          Severity.NOTE,
          TESTS,
          CatchTests.OUTLIERS.above(0),
          CatchTests.OUTLIERS,
          "has {0} of {1} cans far from the rest",
          "look there for a tilted or blocked head, a leak or a knocked can; take a can out only for a reason you saw",
          List.of(CatchTests.OUTLIERS, CatchTests.COUNT));

  /** A test with a result that nothing goes by. */
  private static final Rule NOT_IN_USE =
      new Rule(
              "test-not-in-use",
              Severity.NOTE,
              TESTS,
              CatchTests.IN_USE
                  .is(CatchTests.NO)
                  .and(FieldTested.TESTS_IN_USE.inRowOf(CatchTests.ZONE).atMost(0))
                  .and(CatchTests.LOW_QUARTER.atLeast(0))
                  .and(CatchTests.RATE.above(Formula.zero(QuantityKind.RATE))),
              CatchTests.IN_USE,
              "found {0} and a uniformity of {1}, but zone {2} does not go by it",
              "use it where the zone was sound and the wind light; otherwise mend the zone and test again",
              List.of(CatchTests.RATE, CatchTests.LOW_QUARTER, CatchTests.ZONE))
          .curedBy("Let zone {2} go by this test", TestUse::mend);

  /** A zone that goes by a test where none is in use. */
  private static final Rule NO_TEST =
      new Rule(
              "rate-without-test",
              Severity.CHECK,
              ZONES,
              Emitters.RATE_METHOD.is(Emitters.BY_TEST).and(FieldTested.TESTS_IN_USE.atMost(0)),
              Emitters.RATE_METHOD,
              "goes by a field test, but no test of it is in use",
              "choose yes under In use for one of its tests, or another rate method",
              List.of())
          .curedBy("Go back to the rate by area", TestUse::backToUsualRate);

  private TestRules() {}

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    return List.of(NO_TEST, TOO_FEW, NOT_IN_USE, NO_MULTIPLE_OF_FOUR, OUTLIERS);
  }
}
