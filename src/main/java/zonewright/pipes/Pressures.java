package zonewright.pipes;

import static zonewright.pipes.Losses.loss;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.PRESSURE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Columns of the pressure that is left behind the main, down to the worst head. */
public final class Pressures {
  public static final Column BEFORE_VALVE =
      loss(
          PRESSURE,
          "pressure-before-valve",
          "Pressure before the valve",
          Losses.INTO_MAIN
              .cell()
              .minus(Mains.FRICTION.cell())
              .minus(Hydraulics.lift(Mains.RISE.cell())),
          "What is left at the end of the main.",
          "By definition.");

  public static final Column BEHIND_VALVE =
      loss(
          PRESSURE,
          "pressure-behind-valve",
          "Pressure behind the valve",
          Formula.when(new Condition.Given(Losses.REGULATED.reference()))
              .then(
                  Formula.smaller(
                      BEFORE_VALVE.cell().minus(Losses.VALVE_LOSS.cell()), Losses.REGULATED.cell()))
              .otherwise(BEFORE_VALVE.cell().minus(Losses.VALVE_LOSS.cell())),
          "What is left where the lateral begins, and no more than a regulator lets through.",
          "By definition.");

  public static final Column FIRST_HEAD =
      loss(
          PRESSURE,
          "pressure-first-head",
          "Pressure at the first head",
          BEHIND_VALVE.cell().minus(Losses.FIRST_DROP.cell()),
          "What the head nearest to the valve gets.",
          "By definition.");

  public static final Column LAST_HEAD =
      loss(
          PRESSURE,
          "pressure-last-head",
          "Pressure at the last head",
          BEHIND_VALVE.cell().minus(Losses.LAST_DROP.cell()),
          "What the head farthest from the valve gets.",
          "By definition.");

  public static final Column WORST_HEAD =
      loss(
          PRESSURE,
          "pressure-worst-head",
          "Pressure at the worst head",
          Formula.smaller(FIRST_HEAD.cell(), LAST_HEAD.cell()),
          "The lower of both; on a lateral that falls it can be the first.",
          "By definition.");

  public static final Column VARIATION =
      Column.calculated(
              PIPES,
              "variation",
              "Variation in the zone",
              QuantityKind.SHARE,
              Losses.LAST_DROP
                  .cell()
                  .minus(Losses.FIRST_DROP.cell())
                  .apply(FunctionKind.ABSOLUTE)
                  .over(Laterals.NEEDED.cell()))
          .band(PRESSURE)
          .decimals(1, 1)
          .means(
              "How far the pressures of first and last head lie apart, as a part of the pressure needed.")
          .source("The 20 % rule, from memory.");

  public static final Column LEFT_OVER =
      loss(
          PRESSURE,
          "pressure-left-over",
          "Pressure left over",
          WORST_HEAD.cell().minus(Laterals.NEEDED.cell()),
          "What the worst head gets beyond what it needs; below zero it gets too little.",
          "By definition.");

  private Pressures() {}

  static List<Column> columns() {
    return List.of(
        BEFORE_VALVE, BEHIND_VALVE, FIRST_HEAD, LAST_HEAD, WORST_HEAD, VARIATION, LEFT_OVER);
  }
}
