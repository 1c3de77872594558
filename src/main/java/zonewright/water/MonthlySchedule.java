package zonewright.water;

import static zonewright.trade.Sheets.MONTHLY;
import static zonewright.trade.Sheets.SITE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
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
 * Columns of what each zone needs month by month, twelve of each quantity from one declaration, and
 * of its schedule in the month shown. The watering days stay those of the peak month, so that the
 * percent alone carries the change.
 */
public final class MonthlySchedule {
  public static final Column ZONE =
      Column.words(MONTHLY, "zone", "Zone")
          .band("Zone")
          .means("Number or name of the zone.")
          .build();

  /** The month that sheets and cards show. */
  public static final Column MONTH =
      Column.choice(SITE, "month-shown", "Month shown", new WordList.RowsOf(Sheets.MONTHS))
          .band(Sheets.CLIMATE)
          .optional()
          .means(
              "The month whose minutes, cycles and water the sheet Monthly, the nights and the page to key in show. The peak month where it is left"
                  + " blank.")
          .build();

  public static final Column MONTH_NUMBER =
      Column.calculated(
              SITE,
              "month-shown-number",
              "Number of the month shown",
              QuantityKind.COUNT,
              Formula.when(MONTH.given())
                  .then(Climate.NUMBER.inRowOf(MONTH))
                  .otherwise(Peak.POSITION))
          .band(Sheets.CLIMATE)
          .means("Its place in the year; that of the peak month where none is chosen.")
          .source("By definition.")
          .build();

  /** Names of columns there once were for each month, before one month was chosen to be shown. */
  public static final List<String> GONE =
      Stream.of("Run time", "Cycles", "Minutes a cycle", "Soak")
          .flatMap(name -> Climate.MONTH_NAMES.stream().map(month -> name + " " + month))
          .toList();

  private static final String OF_THE_MONTH = " in %s";
  private static final String THE_MONTH = "Month shown";

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

  /** The percent of the month shown. */
  public static final Column PERCENT =
      Column.calculated(
              MONTHLY,
              "percent",
              "Percent",
              QuantityKind.SHARE,
              Formula.nth(MONTH_NUMBER, PERCENTS))
          .band(THE_MONTH)
          .means("What the zone asks of its baseline in the month shown.")
          .source("The percent of that month.")
          .build();

  public static final Column DAYS =
      Column.calculated(
              MONTHLY,
              "watering-days",
              Demand.WATERING_DAYS.name(),
              QuantityKind.COUNT,
              Demand.WATERINGS_A_WEEK.roundedUpTo(Units.ONE))
          .band(THE_MONTH)
          .means("Days a week the zone is watered; the same in all months.")
          .source("Waterings a week; of a pattern of dates those of the fullest week.")
          .build();

  public static final Column RUN_TIME =
      Column.calculated(
              MONTHLY,
              "run-time",
              "Run time",
              QuantityKind.MINUTES,
              Demand.onAWateringDay(Demand.RUN_TIME_PER_WEEK.times(PERCENT)))
          .band(THE_MONTH)
          .means("Minutes of watering on each watering day of the month shown; the days stay.")
          .source("Run time a week × percent ÷ waterings a week, rounded up once.")
          .build();

  private static final Condition WATERS = RUN_TIME.above(Formula.zero(QuantityKind.MINUTES));

  public static final Column CYCLES =
      Column.calculated(
              MONTHLY,
              "cycles",
              "Cycles",
              QuantityKind.COUNT,
              Formula.when(WATERS).then(CycleAndSoak.cyclesOf(RUN_TIME)).otherwise(0))
          .band(THE_MONTH)
          .means("In how many parts the run is given in the month shown; 0 where none is.")
          .source("As in the peak month, worked out anew for the month's run time.")
          .build();

  public static final Column CYCLE_MINUTES =
      Column.calculated(
              MONTHLY,
              "cycle-minutes",
              "Minutes a cycle",
              QuantityKind.MINUTES,
              Formula.when(WATERS)
                  .then(CycleAndSoak.minutesOf(RUN_TIME, CYCLES))
                  .otherwise(Formula.doesNotApply("none", "The zone is not watered that month.")))
          .band(THE_MONTH)
          .means("Minutes of each cycle in the month shown.")
          .source("Run time ÷ cycles, rounded up to the controller's step.")
          .build();

  public static final Column SOAK =
      Column.calculated(
              MONTHLY,
              "soak",
              "Shortest soak",
              QuantityKind.MINUTES,
              CycleAndSoak.soakAfter(CYCLES, CYCLE_MINUTES))
          .band(THE_MONTH)
          .means("Shortest pause after a cycle in the month shown.")
          .source("As in the peak month, worked out anew for the month's cycle.")
          .build();

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
    List<Column> shown = List.of(ZONE, PERCENT, DAYS, RUN_TIME, CYCLES, CYCLE_MINUTES, SOAK);
    List<Column> peak = List.of(GREATEST_NEED, OWN_PEAK_NUMBER, OWN_PEAK);
    return Stream.of(shown, COEFFICIENTS, NET_DEMANDS, peak, PERCENTS)
        .flatMap(List::stream)
        .toList();
  }

  private MonthlySchedule() {}
}
