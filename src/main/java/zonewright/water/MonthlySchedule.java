package zonewright.water;

import static zonewright.trade.Sheets.MONTHLY;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of each zone's schedule month by month, twelve of each quantity from one declaration. The
 * watering days stay those of the peak month, so that the percent alone carries the change.
 */
public final class MonthlySchedule {
  public static final Column ZONE =
      Column.words(MONTHLY, "zone", "Zone")
          .band("Zone")
          .means("Number or name of the zone.")
          .build();

  private static final String OF_THE_MONTH = " in %s";

  /** Landscape coefficients, January first. */
  public static final List<Column> COEFFICIENTS =
      each(
          month ->
              Column.defaulted(
                      MONTHLY,
                      id("landscape-coefficient", month),
                      name("Coefficient", month),
                      QuantityKind.FACTOR,
                      Plants.LANDSCAPE_COEFFICIENT)
                  .band("Landscape coefficient")
                  .within(Bounds.from(0, 2, Units.ONE))
                  .means(
                      said(
                          "Landscape coefficient of the zone%s: that of the zone unless typed, for plants that rest or lose"
                              + " their leaves part of the year.",
                          month))
                  .source(
                      "Coefficients by month as the design gives them; the landscape coefficient method (2000) works month by"
                          + " month.")
                  .build());

  /** Depths a day that the months ask for, January first. */
  public static final List<Column> NET_DEMANDS =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("net-demand", month),
                      name("Net demand", month),
                      QuantityKind.DAILY_DEPTH,
                      netDemand(month))
                  .band("Net demand")
                  .means(
                      said(
                          "Depth of water the planting needs on a mean day%s, less the rain that counts; never below 0.",
                          month))
                  .source(
                      "As in the peak month, with the month's reference ET, coefficient and rain.")
                  .build());

  public static final Column GREATEST_NEED =
      Column.calculated(
              MONTHLY,
              Demand.GREATEST_NEED.column(),
              Demand.GREATEST_NEED.name(),
              QuantityKind.DAILY_DEPTH,
              largest(month -> NET_DEMANDS.get(month - 1)))
          .band("Own peak")
          .means("Depth of water a day that the zone needs in the month in which it needs most.")
          .source("The largest of the twelve.")
          .build();

  public static final Column OWN_PEAK_NUMBER =
      Column.calculated(
              MONTHLY,
              "own-peak-number",
              "Number of its own peak month",
              QuantityKind.COUNT,
              Formula.when(GREATEST_NEED.atMost(Formula.zero(QuantityKind.DAILY_DEPTH)))
                  .then(
                      Formula.doesNotApply(
                          "no watering", "Rain covers what the plants need in every month."))
                  .otherwise(largest(MonthlySchedule::ifGreatest)))
          .band("Own peak")
          .means("The month's place in the year, of several months alike the last.")
          .source("A month's number counts where its need ÷ the greatest need is 1.")
          .build();

  public static final Column OWN_PEAK =
      Column.calculatedWord(
              MONTHLY,
              "own-peak",
              "Own peak month",
              new WordList.RowsOf(Sheets.MONTHS),
              Climate.MONTH.inRow(OWN_PEAK_NUMBER))
          .band("Own peak")
          .means(
              "The month in which the zone needs most. Where rain counts it can be another than the site's peak month: rain is worth"
                  + " more to plants that need little.")
          .source("The month of that number.")
          .build();

  /** Parts of the baseline that the months ask for, January first. */
  public static final List<Column> PERCENTS =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("percent", month),
                      name("Percent", month),
                      QuantityKind.SHARE,
                      Demand.partOfBaseline(NET_DEMANDS.get(month - 1)))
                  .band("Percent of the baseline")
                  .means(
                      said(
                          "What the zone asks of its baseline%s: net demand of the month over the one that 100 %% stands for; 0 where"
                              + " rain covers its need all year. Not to be used together with other watering days.",
                          month))
                  .source(
                      "The baseline is scaled by the month's demand over that of the peak month: Washington State University Extension"
                          + " (Grant County), Monthly Sprinkler Runtime Adjustment (verified); by zone and with rain, derived.")
                  .build());

  /** Whole minutes of a watering day, January first. */
  public static final List<Column> RUN_TIMES =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("run-time", month),
                      name("Run time", month),
                      QuantityKind.MINUTES,
                      Demand.onAWateringDay(
                          Demand.RUN_TIME_PER_WEEK.times(PERCENTS.get(month - 1))))
                  .band("Run time a watering day")
                  .means(
                      said(
                          "Whole minutes of watering on each watering day%s; the days stay.",
                          month))
                  .source("Run time a week × percent ÷ waterings a week, rounded up once.")
                  .build());

  /** Cycles of a watering day, January first. */
  public static final List<Column> CYCLES =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("cycles", month),
                      name("Cycles", month),
                      QuantityKind.COUNT,
                      Formula.when(waters(month))
                          .then(CycleAndSoak.cyclesOf(RUN_TIMES.get(month - 1)))
                          .otherwise(0))
                  .band("Cycles")
                  .means(said("In how many parts the run is given%s; 0 where none is.", month))
                  .source("As in the peak month, worked out anew for the month's run time.")
                  .build());

  /** Whole minutes of a cycle, January first. */
  public static final List<Column> CYCLE_MINUTES =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("cycle-minutes", month),
                      name("Minutes a cycle", month),
                      QuantityKind.MINUTES,
                      Formula.when(waters(month))
                          .then(
                              RUN_TIMES
                                  .get(month - 1)
                                  .over(CYCLES.get(month - 1))
                                  .roundedUpTo(Units.MINUTE))
                          .otherwise(
                              Formula.doesNotApply("none", "The zone is not watered that month.")))
                  .band("Minutes a cycle")
                  .means(said("Whole minutes of each cycle%s.", month))
                  .source("Run time ÷ cycles, rounded up.")
                  .build());

  /** Shortest soaks, January first. */
  public static final List<Column> SOAKS =
      each(
          month ->
              Column.calculated(
                      MONTHLY,
                      id("soak", month),
                      name("Soak", month),
                      QuantityKind.MINUTES,
                      CycleAndSoak.soakAfter(CYCLES.get(month - 1), CYCLE_MINUTES.get(month - 1)))
                  .band("Shortest soak")
                  .means(said("Shortest pause after a cycle%s.", month))
                  .source("As in the peak month, worked out anew for the month's cycle.")
                  .build());

  /** The month's number where it needs most, and 0 where it needs less. */
  private static Formula ifGreatest(int month) {
    return Formula.number(month)
        .times(NET_DEMANDS.get(month - 1).over(GREATEST_NEED).roundedDownTo(Units.ONE));
  }

  private static Formula largest(IntFunction<Term> ofMonth) {
    return IntStream.rangeClosed(1, Climate.MONTH_NAMES.size())
        .mapToObj(ofMonth)
        .reduce(Formula::larger)
        .orElseThrow()
        .asFormula();
  }

  private static Formula netDemand(int month) {
    Formula number = Formula.number(month);
    Formula use = Climate.DAILY_REFERENCE_ET.inRow(number).times(COEFFICIENTS.get(month - 1));
    return Formula.larger(
        Formula.zero(QuantityKind.DAILY_DEPTH), use.minus(Rain.DAILY_EFFECTIVE.inRow(number)));
  }

  private static Condition waters(int month) {
    return RUN_TIMES.get(month - 1).above(Formula.amount(0, Units.MINUTE));
  }

  /** Returns a column for each month, made from the month's number. */
  public static List<Column> each(IntFunction<Column> made) {
    List<Column> columns = new ArrayList<>();
    for (int month = 1; month <= Climate.MONTH_NAMES.size(); month++) {
      columns.add(made.apply(month));
    }
    return List.copyOf(columns);
  }

  /** Returns the identifier of a quantity in a month. */
  public static String id(String quantity, int month) {
    return quantity + "-" + month;
  }

  /** Returns the name of a quantity in a month. */
  public static String name(String quantity, int month) {
    return quantity + " " + Climate.MONTH_NAMES.get(month - 1);
  }

  /** Returns a sentence with the month put in. */
  public static String said(String sentence, int month) {
    return sentence.formatted(OF_THE_MONTH.formatted(Climate.MONTH_NAMES.get(month - 1)));
  }

  /** Returns all columns in their usual order. */
  public static List<Column> all() {
    List<Column> peak = List.of(GREATEST_NEED, OWN_PEAK_NUMBER, OWN_PEAK);
    return Stream.of(
            List.of(ZONE),
            COEFFICIENTS,
            NET_DEMANDS,
            peak,
            PERCENTS,
            RUN_TIMES,
            CYCLES,
            CYCLE_MINUTES,
            SOAKS)
        .flatMap(List::stream)
        .toList();
  }

  private MonthlySchedule() {}
}
