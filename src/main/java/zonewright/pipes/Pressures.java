package zonewright.pipes;

import static zonewright.pipes.Losses.loss;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.PRESSURE;

import java.util.List;
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
          Losses.INTO_MAIN.minus(Mains.FRICTION).minus(Hydraulics.lift(Mains.RISE)),
          "What is left at the end of the main.",
          "By definition.");

  public static final Column BEHIND_VALVE =
      loss(
          PRESSURE,
          "pressure-behind-valve",
          "Pressure behind the valve",
          Formula.when(Losses.REGULATED.given())
              .then(Formula.smaller(BEFORE_VALVE.minus(Losses.VALVE_LOSS), Losses.REGULATED))
              .otherwise(BEFORE_VALVE.minus(Losses.VALVE_LOSS)),
          "What is left where the lateral begins, and no more than a regulator lets through.",
          "By definition.");

  public static final Column FIRST_HEAD =
      loss(
          PRESSURE,
          "pressure-first-head",
          "Pressure at the first head",
          BEHIND_VALVE.minus(Losses.FIRST_DROP),
          "What the head nearest to the valve gets.",
          "By definition.");

  public static final Column LAST_HEAD =
      loss(
          PRESSURE,
          "pressure-last-head",
          "Pressure at the last head",
          BEHIND_VALVE.minus(Losses.LAST_DROP),
          "What the head farthest from the valve gets.",
          "By definition.");

  public static final Column WORST_HEAD =
      loss(
          PRESSURE,
          "pressure-worst-head",
          "Pressure at the worst head",
          Formula.smaller(FIRST_HEAD, LAST_HEAD),
          "The lower of both; on a lateral that falls it can be the first.",
          "By definition.");

  public static final Column VARIATION =
      Column.calculated(
              PIPES,
              "variation",
              "Variation in the zone",
              QuantityKind.SHARE,
              Losses.LAST_DROP
                  .minus(Losses.FIRST_DROP)
                  .apply(FunctionKind.ABSOLUTE)
                  .over(Laterals.NEEDED))
          .band(PRESSURE)
          .decimals(1, 1)
          .means(
              "How far the pressures of first and last head lie apart, as a part of the pressure needed.")
          .source("The 20 % rule, from memory.")
          .build();

  public static final Column LEFT_OVER =
      loss(
          PRESSURE,
          "pressure-left-over",
          "Pressure left over",
          WORST_HEAD.minus(Laterals.NEEDED),
          "What the worst head gets beyond what it needs; below zero it gets too little.",
          "By definition.");

  private Pressures() {}

  static List<Column> columns() {
    return List.of(
        BEFORE_VALVE, BEHIND_VALVE, FIRST_HEAD, LAST_HEAD, WORST_HEAD, VARIATION, LEFT_OVER);
  }
}
