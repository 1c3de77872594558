package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CASH;
import static zonewright.trade.Sheets.YEARS;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import zonewright.formula.Comparator;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the cash of each year, for each of the three cases. */
public final class Years {
  /** Names of the rows: the start and the years after it. */
  public static final List<String> NAMES =
      IntStream.rangeClosed(0, Savings.MOST_YEARS).mapToObj(Integer::toString).toList();

  public static final Column YEAR =
      Column.words(YEARS, "year", "Year")
          .band(CASH)
          .means("Year after the job is done; 0 is its start.")
          .build();

  public static final Column POSITION =
      Column.input(YEARS, "number", "Number", QuantityKind.COUNT)
          .band(CASH)
          .within(Bounds.from(0, Savings.MOST_YEARS, Units.ONE).wholeNumbers())
          .optional()
          .means("The year as a number.")
          .build();

  public static final Column DISCOUNT_FACTOR =
      Column.calculated(
              YEARS,
              "discount-factor",
              "Discount factor",
              QuantityKind.FACTOR,
              number(1).over(number(1).plus(Savings.DISCOUNT).power(POSITION)))
          .band(CASH)
          .decimals(4, 4)
          .means("What one paid at the end of the year is worth at the start.")
          .source(
              "1 ÷ (1 + discount rate) ^ years: OpenDocument 1.2 part 2, function NPV (verified).")
          .build();

  /** Net cash, its present value and its running sum, for each case. */
  public static final List<Column> CASH_OF_CASE = each(Years::cash);

  public static final List<Column> PRESENT_VALUE = each(Years::presentValue);

  public static final List<Column> CUMULATIVE = each(Years::cumulative);

  public static final List<Column> OWED = each(Years::owed);

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    List<Column> columns = new ArrayList<>(List.of(YEAR, POSITION, DISCOUNT_FACTOR));
    for (int at : List.of(1, 0, 2)) {
      columns.add(CASH_OF_CASE.get(at));
      columns.add(PRESENT_VALUE.get(at));
      columns.add(CUMULATIVE.get(at));
      columns.add(OWED.get(at));
    }
    return columns;
  }

  private Years() {}

  private static List<Column> each(java.util.function.IntFunction<Column> maker) {
    return IntStream.range(0, Cases.NAMES.size()).mapToObj(maker).toList();
  }

  private static String word(int at) {
    return ", " + Cases.NAMES.get(at);
  }

  private static Column cash(int at) {
    Formula achieved = Cases.ACHIEVED.inRow(at + 1);
    Formula rise = Cases.RISE.inRow(at + 1);
    Formula before = POSITION.minus(1);
    Formula water = Savings.WATER_SAVING.times(number(1).plus(rise).power(before));
    Formula energy = Savings.ENERGY_SAVING.times(number(1).plus(Savings.ENERGY_RISE).power(before));
    return money(
            "cash-" + Cases.NAMES.get(at),
            "Net cash" + word(at),
            Formula.when(POSITION.below(1))
                .then(Formula.zero(QuantityKind.MONEY).minus(Savings.NET_COST))
                .otherwise(
                    Formula.when(POSITION.above(Savings.LIFE))
                        .then(Formula.zero(QuantityKind.MONEY))
                        .otherwise(achieved.times(water.plus(energy)).plus(Savings.UPKEEP))))
        .means(
            "At the start the cost less rebates, as money paid. Then, to the end of the life, water and energy saved at prices that"
                + " rise from the first year on, and upkeep saved.")
        .source("By definition. Not rounded: it is a forecast.")
        .build();
  }

  private static Column presentValue(int at) {
    return money(
            "present-value-" + Cases.NAMES.get(at),
            "Present value" + word(at),
            CASH_OF_CASE.get(at).times(DISCOUNT_FACTOR))
        .means("Net cash times the discount factor.")
        .source("By definition.")
        .build();
  }

  private static Column cumulative(int at) {
    return money(
            "cumulative-" + Cases.NAMES.get(at),
            "Cumulative cash" + word(at),
            Matching.rowsWith(POSITION, Comparator.AT_MOST, POSITION).sum(CASH_OF_CASE.get(at)))
        .means("Net cash of all years up to this one.")
        .source("By definition.")
        .build();
  }

  private static Column owed(int at) {
    return Column.calculated(
            YEARS,
            "owed-" + Cases.NAMES.get(at),
            "Not paid back" + word(at),
            QuantityKind.COUNT,
            Formula.when(CUMULATIVE.get(at).below(Formula.zero(QuantityKind.MONEY)))
                .then(1)
                .otherwise(0))
        .band(CASH)
        .means("1 while the cumulative cash is below 0, else 0.")
        .source("By definition.")
        .build();
  }

  private static Column.Builder money(String id, String name, Term formula) {
    return Column.calculated(YEARS, id, name, QuantityKind.MONEY, formula).band(CASH);
  }
}
