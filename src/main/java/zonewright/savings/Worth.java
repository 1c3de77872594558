package zonewright.savings;

import static zonewright.trade.Sheets.CASES;
import static zonewright.trade.Sheets.CASH;
import static zonewright.trade.Sheets.SAVINGS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import zonewright.formula.Aggregation;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Columns of what a job is worth to its owner, in each case and as expected. */
public final class Worth {
  private static final int EXPECTED = 2;

  private static final Formula NOTHING = Formula.zero(QuantityKind.MONEY);

  public static final Column FIRST_YEAR =
      money(
              "first-year",
              "Saved in the first year",
              Cases.ACHIEVED
                  .times(Savings.WATER_SAVING.plus(Savings.ENERGY_SAVING))
                  .plus(Savings.UPKEEP))
          .means("Water, energy and upkeep of the first year, at today's prices.")
          .source("By definition.")
          .build();

  public static final Column PAYING =
      money(
              "paying",
              "Paid back each year",
              Formula.when(FIRST_YEAR.atMost(NOTHING))
                  .then(Formula.doesNotApply("never", "Nothing is saved in the first year."))
                  .otherwise(FIRST_YEAR))
          .means("The first year's savings where there are any: what pays the cost back.")
          .source("By definition.")
          .build();

  public static final Column PAYBACK =
      Column.calculated(
              CASES,
              "payback",
              "Simple payback in years",
              QuantityKind.FACTOR,
              Formula.when(Savings.NET_COST.atMost(NOTHING))
                  .then(
                      Formula.doesNotApply(
                          "no cost", "Rebates cover the whole cost: there is nothing to pay back."))
                  .otherwise(Savings.NET_COST.over(PAYING)))
          .band(CASH)
          .means(
              "Years until the first year's savings have paid the cost less rebates, at prices as they are.")
          .source(
              "Project cost ÷ yearly savings: U.S. EPA, WaterSense at Work (2012), equation 1-1 (verified).")
          .build();

  public static final Column NET_PRESENT_VALUE =
      money(
              "net-present-value",
              "Net present value",
              byCase(at -> Years.PRESENT_VALUE.get(at).sum()))
          .means(
              "What all the years' savings are worth at the start, less the cost. Above 0 the job earns more than the discount rate.")
          .source(
              "Sum of cash ÷ (1 + discount rate) ^ years: OpenDocument 1.2 part 2, function NPV (verified), and the cost at the start.")
          .build();

  public static final Column LIFE_CASH =
      money("life-cash", "Cash over the life", byCase(at -> Years.CASH_OF_CASE.get(at).sum()))
          .means("All savings of the life less the cost, not discounted.")
          .source("By definition.")
          .build();

  public static final Column RATE_OF_RETURN =
      Column.calculated(
              CASES,
              "rate-of-return",
              "Internal rate of return",
              QuantityKind.SHARE,
              Formula.when(Savings.NET_COST.atMost(NOTHING))
                  .then(Formula.doesNotApply("no cost", "Rebates cover the whole cost."))
                  .otherwise(
                      Formula.when(LIFE_CASH.below(NOTHING))
                          .then(
                              Formula.doesNotApply(
                                  "loses", "The savings of the whole life do not cover the cost."))
                          .otherwise(
                              byCase(
                                  at ->
                                      Years.CASH_OF_CASE
                                          .get(at)
                                          .gathered(Aggregation.RATE_OF_RETURN)))))
          .band(CASH)
          .decimals(2, 2)
          .means("The discount rate at which the net present value would be 0.")
          .source("OpenDocument 1.2 part 2, function IRR (verified).")
          .build();

  public static final Column PAID_BACK =
      Column.calculated(
              CASES,
              "paid-back",
              "Paid back in year",
              QuantityKind.COUNT,
              Formula.when(LIFE_CASH.below(NOTHING))
                  .then(
                      Formula.doesNotApply(
                          "not in its life",
                          "The savings of the whole life do not cover the cost."))
                  .otherwise(byCase(at -> Years.OWED.get(at).sum())))
          .band(CASH)
          .means("The first year whose cumulative cash is not below 0, with prices that rise.")
          .source("By counting.")
          .build();

  public static final Column EXPECTED_PAYBACK = expected(PAYBACK);
  public static final Column EXPECTED_VALUE = expected(NET_PRESENT_VALUE);
  public static final Column EXPECTED_RETURN = expected(RATE_OF_RETURN);

  /** Columns of the sheet Cases, in their order. */
  public static List<Column> caseColumns() {
    return List.of(
        Cases.CASE,
        Cases.ACHIEVED,
        Cases.RISE,
        FIRST_YEAR,
        PAYING,
        PAYBACK,
        PAID_BACK,
        NET_PRESENT_VALUE,
        RATE_OF_RETURN,
        LIFE_CASH);
  }

  /** Columns of the sheet Savings, in their order. */
  public static List<Column> savingsColumns() {
    return new ArrayList<>(
        List.of(
            Use.BASIS,
            Rates.BILLED_BY,
            Rates.SEWER_CHARGED,
            Rates.SEWER_SHARE,
            Savings.YEAR_FOUND,
            Savings.YEAR_PRESENT,
            Savings.YEAR_METERED,
            Savings.YEAR_BEFORE,
            Savings.YEAR_AFTER,
            Savings.OVERWATERED,
            Savings.SAVED_VOLUME,
            Savings.SAVED_SHARE,
            Savings.FIXED_BEFORE,
            Savings.FIXED_AFTER,
            Savings.BILL_BEFORE,
            Savings.BILL_AFTER,
            Savings.WATER_SAVING,
            Savings.PUMP_PRESSURE,
            Savings.PUMP_EFFICIENCY,
            Savings.ENERGY_PRICE,
            Savings.ENERGY,
            Savings.ENERGY_SAVING,
            Savings.UPKEEP,
            Savings.COST,
            Savings.REBATE,
            Savings.NET_COST,
            Savings.WATER_RISE,
            Savings.ENERGY_RISE,
            Savings.DISCOUNT,
            Savings.LIFE,
            EXPECTED_PAYBACK,
            EXPECTED_VALUE,
            EXPECTED_RETURN));
  }

  private Worth() {}

  private static Formula byCase(IntFunction<Formula> each) {
    return Cases.byCase(each.apply(0), each.apply(1), each.apply(2));
  }

  private static Column.Builder money(String id, String name, Term formula) {
    return Column.calculated(CASES, id, name, QuantityKind.MONEY, formula).band(CASH);
  }

  private static Column expected(Column column) {
    return Column.calculated(
            SAVINGS,
            column.reference().column(),
            column.name(),
            column.kind(),
            column.inRow(EXPECTED))
        .band(CASH)
        .means(column.meaning() + " As expected; other cases stand on the sheet Cases.")
        .source(column.source())
        .build();
  }
}
