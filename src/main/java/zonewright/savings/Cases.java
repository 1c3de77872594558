package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CASES;
import static zonewright.trade.Sheets.CASH;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What may come out otherwise: how much of the savings is achieved, and how fast water rises. */
public final class Cases {
  public static final String LOW = "low";
  public static final String EXPECTED = "expected";
  public static final String HIGH = "high";

  /** The cases, in their order. */
  public static final List<String> NAMES = List.of(LOW, EXPECTED, HIGH);

  public static final Column CASE =
      Column.choice(CASES, "case", "Case", new WordList.Fixed(NAMES))
          .band(CASH)
          .means("How things may turn out.")
          .build();

  public static final Column ACHIEVED =
      Column.defaulted(
              CASES,
              "achieved",
              "Savings achieved",
              QuantityKind.SHARE,
              byCase(number(0.7), number(1), number(1.1)))
          .band(CASH)
          .within(Bounds.from(0, 2, Units.ONE))
          .means("Part of the savings calculated that comes true.")
          .source("Common practice, no source: 70 %, 100 % and 110 % unless typed.")
          .build();

  public static final Column RISE =
      Column.defaulted(
              CASES,
              "rise",
              "Water price rise",
              QuantityKind.SHARE,
              byCase(
                  Savings.WATER_RISE.minus(0.02),
                  Savings.WATER_RISE,
                  Savings.WATER_RISE.plus(0.02)))
          .band(CASH)
          .within(Bounds.from(-0.5, 1, Units.ONE))
          .decimals(1, 1)
          .inFull()
          .means("How much dearer water gets each year.")
          .source("The sheet Savings, less and plus 2 points, unless typed.")
          .build();

  private Cases() {}

  /** Returns one of three by the case of the row. */
  static Formula byCase(Term low, Term expected, Term high) {
    return Formula.when(is(LOW))
        .then(low)
        .otherwise(Formula.when(is(EXPECTED)).then(expected).otherwise(high));
  }

  private static Condition is(String word) {
    return CASE.is(word);
  }
}
