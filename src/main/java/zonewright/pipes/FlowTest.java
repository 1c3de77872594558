package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.FLOW_TEST;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of a flow test: how the pressure of the supply falls as more is drawn. */
public final class FlowTest {
  public static final String STATIC_ALONE = "static pressure alone";
  public static final String UPSTREAM = "tested before the meter";
  public static final String DOWNSTREAM = "tested after the meter";

  private static final String CURVE =
      "Drop in pressure goes with flow^1.852, as in the projection of hydrant flow tests Q = Q test × (drop ÷ drop of the"
          + " test)^0.54 of NFPA 291, verified (secondary).";

  public static final Column STATIC_PRESSURE =
      Column.input(SUPPLY, "static-pressure", "Static pressure", QuantityKind.PRESSURE)
          .band(FLOW_TEST)
          .within(Bounds.above(0, 400, Units.POUND_PER_SQUARE_INCH))
          .means(
              "Pressure with nothing flowing, at the place of the flow test or, without one, in the street main. Read it when the"
                  + " network is busiest: it may be far lower then.")
          .build();

  public static final Column BASIS =
      Column.choice(
              SUPPLY,
              "supply-basis",
              "Supply known by",
              new WordList.Fixed(List.of(STATIC_ALONE, UPSTREAM, DOWNSTREAM)),
              STATIC_ALONE)
          .band(FLOW_TEST)
          .means(
              "By its static pressure alone, which takes the street main to give any flow without a drop; by a flow test before the"
                  + " meter; or by one after it, as at a hose tap, which has the losses of meter and service line in it already.")
          .build();

  public static final Column FIRST_FLOW = flow(1, "First test flow");
  public static final Column FIRST_PRESSURE = pressure(1, "Pressure at the first flow");
  public static final Column SECOND_FLOW = flow(2, "Second test flow");
  public static final Column SECOND_PRESSURE = pressure(2, "Pressure at the second flow");
  public static final Column THIRD_FLOW = flow(3, "Third test flow");
  public static final Column THIRD_PRESSURE = pressure(3, "Pressure at the third flow");

  private static Column flow(int test, String name) {
    return Column.input(SUPPLY, "test-flow-" + test, name, QuantityKind.FLOW)
        .band(FLOW_TEST)
        .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
        .decimals(1, 1)
        .optional()
        .means("A steady flow drawn while the pressure was read; the further apart the better.")
        .build();
  }

  private static Column pressure(int test, String name) {
    return Column.input(SUPPLY, "test-pressure-" + test, name, QuantityKind.PRESSURE)
        .band(FLOW_TEST)
        .within(Bounds.from(0, 400, Units.POUND_PER_SQUARE_INCH))
        .optional()
        .means("Pressure that was left while so much flowed; it lies below the static pressure.")
        .build();
  }

  public static final Column DROP =
      Column.calculated(
              SUPPLY,
              "test-drop",
              "Drop at the first test flow",
              QuantityKind.PRESSURE,
              Formula.when(without(FIRST_PRESSURE))
                  .then(notBelow())
                  .otherwise(
                      Formula.when(pair(SECOND_FLOW, SECOND_PRESSURE))
                          .then(
                              Formula.when(without(SECOND_PRESSURE))
                                  .then(notBelow())
                                  .otherwise(
                                      third(
                                          fitted(SECOND_FLOW, SECOND_PRESSURE),
                                          weight(SECOND_FLOW))))
                          .otherwise(fall(FIRST_PRESSURE))))
          .band(FLOW_TEST)
          .means(
              "What the supply curve loses at the first test flow: the curve through the static pressure that comes nearest to all"
                  + " tests, by least squares.")
          .source(CURVE)
          .build();

  public static final Column WORKING_PRESSURE =
      Column.input(SUPPLY, "working-pressure", "Pressure wanted", QuantityKind.PRESSURE)
          .band(FLOW_TEST)
          .within(Bounds.from(0, 400, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means(
              "Pressure that must be left at the place of the flow test while the system runs. It limits the usable flow.")
          .build();

  public static final Column FLOW_AT_PRESSURE =
      Column.calculated(
              SUPPLY,
              "flow-at-pressure",
              "Flow at the pressure wanted",
              QuantityKind.FLOW,
              Formula.when(WORKING_PRESSURE.atLeast(STATIC_PRESSURE))
                  .then(
                      Formula.refused(
                          "too high", "the pressure wanted must be below the static pressure"))
                  .otherwise(
                      FIRST_FLOW.times(
                          fall(WORKING_PRESSURE)
                              .over(DROP)
                              .power(number(1).over(Hydraulics.FLOW_EXPONENT)))))
          .band(FLOW_TEST)
          .decimals(1, 1)
          .means("Flow at which the supply curve comes down to the pressure wanted.")
          .source(CURVE)
          .build();

  private FlowTest() {}

  /** Returns how much the supply's own pressure falls at a flow. */
  static Formula drop(Term flow) {
    return Formula.when(is(STATIC_ALONE))
        .then(Formula.zero(QuantityKind.PRESSURE))
        .otherwise(DROP.times(flow.over(FIRST_FLOW).power(Hydraulics.FLOW_EXPONENT)));
  }

  /** Says how the supply is known. */
  static Condition is(String basis) {
    return BASIS.is(basis);
  }

  private static Formula fall(Column pressure) {
    return STATIC_PRESSURE.minus(pressure);
  }

  private static Condition without(Column pressure) {
    return pressure.atLeast(STATIC_PRESSURE);
  }

  private static Condition pair(Column flow, Column pressure) {
    return flow.given().and(pressure.given());
  }

  private static Formula notBelow() {
    return Formula.refused(
        "no drop", "a pressure read while water flowed must be below the static pressure");
  }

  private static Formula ratio(Column flow) {
    return flow.over(FIRST_FLOW).power(Hydraulics.FLOW_EXPONENT);
  }

  private static Formula weight(Column flow) {
    return flow.over(FIRST_FLOW).power(2 * Hydraulics.FLOW_EXPONENT);
  }

  private static Formula fitted(Column flow, Column pressure) {
    return fall(FIRST_PRESSURE).plus(fall(pressure).times(ratio(flow)));
  }

  private static Formula third(Term sum, Term weight) {
    Formula weights = number(1).plus(weight);
    return Formula.when(pair(THIRD_FLOW, THIRD_PRESSURE))
        .then(
            Formula.when(without(THIRD_PRESSURE))
                .then(notBelow())
                .otherwise(
                    sum.plus(fall(THIRD_PRESSURE).times(ratio(THIRD_FLOW)))
                        .over(weights.plus(weight(THIRD_FLOW)))))
        .otherwise(sum.over(weights));
  }
}
