package zonewright.water;

import static zonewright.trade.Sheets.CONTROLLER_ABILITIES;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns that say what the site's controller can do; the timetable uses nothing else. */
public final class Controller {
  public static final String PROGRAM_STARTS = "starts programs at set times";
  public static final String CYCLES_AND_SOAKS = "starts programs, cycle and soak by station";
  public static final String STATION_STARTS = "starts each zone by itself";

  public static final String EVERY_STATION = "every station";
  public static final String STATIONS_DUE = "stations still due";

  public static final String WEEKDAYS_ONLY = "weekdays only";
  public static final String WEEKDAYS_AND_INTERVALS = "weekdays, every few days";
  public static final String WEEKDAYS_AND_DATES = "weekdays, odd and even dates";
  public static final String ALL_PATTERNS = "all of these";

  private static final String SEE_YOURS =
      "Common practice, no source: see what your controller offers.";

  public static final Column KIND =
      Column.choice(
              SITE,
              "controller",
              "The controller",
              new WordList.Fixed(List.of(PROGRAM_STARTS, CYCLES_AND_SOAKS, STATION_STARTS)),
              PROGRAM_STARTS)
          .band(CONTROLLER_ABILITIES)
          .means(
              "How it is keyed in. The usual one starts programs at set times: each start runs the stations of the program one after another, and"
                  + " a second start gives the second cycle. Another is keyed the same way, but takes a longest cycle and a soak for each station and"
                  + " goes round the stations by itself, so that one start gives all cycles. The third has start times for each station of its own.")
          .build();

  public static final Column START_RUNS =
      Column.choice(
              SITE,
              "start-runs",
              "A start runs",
              new WordList.Fixed(List.of(EVERY_STATION, STATIONS_DUE)),
              EVERY_STATION)
          .band(CONTROLLER_ABILITIES)
          .means(
              "What each start of a program runs on a controller that starts programs at set times: every station, or only those that still need a cycle.")
          .build();

  public static final Column PROGRAMS =
      number("most-programs", "Programs it has", 4, 99)
          .means("How many programs a controller has that starts programs.")
          .source(SEE_YOURS)
          .build();

  public static final Column PROGRAMS_AT_ONCE =
      Column.defaulted(
              SITE, "programs-at-once", "Programs at once", QuantityKind.COUNT, Formula.number(1))
          .band(CONTROLLER_ABILITIES)
          .within(Bounds.from(1, 2, Units.ONE).wholeNumbers())
          .means(
              "How many programs it runs at the same time, one valve of each: 2 where it can and its transformer feeds two valves. Two programs run together only"
                  + " as far as the flow feeds the largest station of both.")
          .source("One at a time unless typed, which every controller can do.")
          .build();

  public static final Column STARTS =
      number("most-cycles", "Starts it has", 4, 99)
          .formerly("Most cycles a day")
          .means(
              "How many times a night it can start one program; where it starts each zone by itself, one zone.")
          .source(SEE_YOURS)
          .build();

  public static final Column STATIONS =
      Column.input(SITE, "stations", "Stations it has", QuantityKind.COUNT)
          .band(CONTROLLER_ABILITIES)
          .within(Bounds.from(1, 10_000, Units.ONE).wholeNumbers())
          .optional()
          .means(
              "How many valves can be wired to it. Zones beyond them, in the order of the sheet, are left out of the timetable. Blank where it has"
                  + " enough for any garden.")
          .build();

  public static final Column MINUTE_STEP =
      minutes("minute-step", "Step of its minutes", 1, 15)
          .means("Run times can be keyed in as multiples of it, and are rounded up to the next.")
          .source("Common practice, no source: whole minutes.")
          .build();

  public static final Column LONGEST_RUN =
      minutes("longest-run", "Longest run of a station", 240, 1440)
          .means(
              "The most minutes a station can be given for one start. What needs more runs in several cycles.")
          .source(SEE_YOURS)
          .build();

  public static final Column LONGEST_RUN_KEYED =
      Column.calculated(
              SITE,
              "longest-run-keyed",
              "Longest run keyed",
              QuantityKind.MINUTES,
              Formula.larger(MINUTE_STEP, roundedDown(LONGEST_RUN)))
          .band(CONTROLLER_ABILITIES)
          .means("The longest run in whole steps, at least one.")
          .source("By definition.")
          .build();

  public static final Column PERCENT_STEP =
      Column.defaulted(
              SITE,
              "percent-step",
              "Step of its percent",
              QuantityKind.SHARE,
              Formula.amount(5, Units.PERCENT))
          .band(CONTROLLER_ABILITIES)
          .within(Bounds.from(0.01, 0.25, Units.ONE))
          .means(
              "The percent by which it changes all run times goes in steps of this; the percent of a month is rounded up to the next.")
          .source(SEE_YOURS)
          .build();

  public static final Column DAY_PATTERNS =
      Column.choice(
              SITE,
              "day-patterns",
              "Days it can choose",
              new WordList.Fixed(
                  List.of(WEEKDAYS_ONLY, WEEKDAYS_AND_INTERVALS, WEEKDAYS_AND_DATES, ALL_PATTERNS)),
              ALL_PATTERNS)
          .band(CONTROLLER_ABILITIES)
          .means(
              "By what it can choose its watering days: weekdays, every few days, odd and even dates. A zone whose days it cannot choose is left out of"
                  + " the timetable.")
          .build();

  public static final Column KEYED_IN =
      Column.words(SITE, "keyed-in", "Keyed in")
          .band(CONTROLLER_ABILITIES)
          .optional()
          .means(
              "What was ticked on the page to key in. A tick counts as long as the design still says the same.")
          .build();

  /** Says that it keeps cycles and soaks by itself. */
  public static final Condition KEEPS_SOAKS = KIND.is(CYCLES_AND_SOAKS);

  /** Says that it starts each station by itself; what programs lack the timetable tells. */
  public static final Condition STARTS_STATIONS = KIND.is(STATION_STARTS);

  private Controller() {}

  private static Column.Builder number(String id, String name, int usual, int most) {
    return Column.defaulted(SITE, id, name, QuantityKind.COUNT, Formula.number(usual))
        .band(CONTROLLER_ABILITIES)
        .within(Bounds.from(1, most, Units.ONE).wholeNumbers());
  }

  private static Column.Builder minutes(String id, String name, int usual, int most) {
    return Column.defaulted(
            SITE, id, name, QuantityKind.MINUTES, Formula.amount(usual, Units.MINUTE))
        .band(CONTROLLER_ABILITIES)
        .within(Bounds.from(1, most, Units.MINUTE).wholeNumbers());
  }

  /** Returns minutes rounded up to what can be keyed in. */
  static Formula roundedUp(Term minutes) {
    return minutes.over(MINUTE_STEP).roundedUpTo(Units.ONE).times(MINUTE_STEP);
  }

  /** Returns minutes rounded down to what can be keyed in. */
  static Formula roundedDown(Term minutes) {
    return minutes.over(MINUTE_STEP).roundedDownTo(Units.ONE).times(MINUTE_STEP);
  }
}
