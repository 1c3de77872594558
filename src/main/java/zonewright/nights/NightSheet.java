package zonewright.nights;

import static zonewright.trade.Sheets.NIGHTS;
import static zonewright.trade.Sheets.WINDOWS;

import java.util.List;
import zonewright.budget.Ordinance;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.SiteRules;

/** Columns of the week: on which nights water may run, and between which hours. */
public final class NightSheet {
  public static final String YES = "yes";
  public static final String NO = "no";

  /** The nights, in their order, each named by the day on which it opens. */
  public static final List<String> NIGHT_NAMES =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  private static final List<ReferenceTable.Numbers> WEEKDAY_SET =
      NIGHT_NAMES.stream()
          .map(day -> SiteRules.WEEKDAY_SETS.numbers(day, QuantityKind.COUNT))
          .toList();

  private static final Formula ONE_DAY = Formula.amount(1, Units.DAY);
  private static final Bounds CLOCK = Bounds.from(0, 24, Units.HOUR);

  public static final Column NIGHT =
      Column.words(NIGHTS, "night", "Night")
          .band(WINDOWS)
          .means(
              "The night, named by the day on which it opens: a night that opens on Monday at 22:00 ends on Tuesday morning.")
          .build();

  public static final Column NUMBER =
      Column.input(NIGHTS, "number", "Day of the week", QuantityKind.COUNT)
          .band(WINDOWS)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means("Its day's place in the week, Monday the first.")
          .source("ISO 8601 numbers the days so.")
          .build();

  public static final Column WATERED =
      Column.choice(NIGHTS, "watered", "Watered", new WordList.Fixed(List.of(YES, NO)), YES)
          .band(WINDOWS)
          .means("Whether water may run that night.")
          .build();

  public static final Column ALLOWED =
      Column.calculatedWord(
              NIGHTS,
              "allowed",
              "Allowed",
              new WordList.Fixed(List.of(YES, NO)),
              Formula.when(SiteRules.WEEKDAYS.given())
                  .then(
                      Formula.number(1)
                          .minus(Formula.lookup(SiteRules.WEEKDAYS, WEEKDAY_SET, NUMBER)))
                  .otherwise(0))
          .band(WINDOWS)
          .means("Whether the weekdays allowed on the site have the day among them.")
          .source("From the weekdays allowed; any day where none are named.")
          .build();

  public static final Column OPENS =
      Column.defaulted(
              NIGHTS,
              "opens",
              "Window opens",
              QuantityKind.TIME_OF_DAY,
              Formula.amount(22, Units.HOUR))
          .band(WINDOWS)
          .within(CLOCK)
          .means("The time from which valves may open.")
          .source(
              "Common practice, no source: late in the evening, when wind and evaporation are low. Local rules decide.")
          .build();

  public static final Column CLOSES =
      Column.defaulted(
              NIGHTS,
              "closes",
              "Window closes",
              QuantityKind.TIME_OF_DAY,
              Formula.amount(6, Units.HOUR))
          .band(WINDOWS)
          .within(CLOCK)
          .means(
              "The time by which every valve must be closed; at or before the opening means the next morning.")
          .source("Common practice, no source. Local rules decide.")
          .build();

  public static final Column OPENS_AGAIN =
      Column.input(NIGHTS, "opens-again", "Second window opens", QuantityKind.TIME_OF_DAY)
          .band(WINDOWS)
          .within(CLOCK)
          .optional()
          .means("The time from which valves may open once more, after the first window.")
          .build();

  public static final Column CLOSES_AGAIN =
      Column.input(NIGHTS, "closes-again", "Second window closes", QuantityKind.TIME_OF_DAY)
          .band(WINDOWS)
          .within(CLOCK)
          .optional()
          .means("The time by which every valve must be closed after the second window.")
          .build();

  public static final Column MINUTES_OPEN =
      Column.calculated(
              NIGHTS,
              "minutes-open",
              "Minutes open",
              QuantityKind.MINUTES,
              Formula.when(WATERED.is(NO).or(ALLOWED.is(NO)))
                  .then(Formula.doesNotApply("no water", "Nothing waters on this night."))
                  .otherwise(
                      length(OPENS, CLOSES)
                          .plus(
                              Formula.when(OPENS_AGAIN.given().or(CLOSES_AGAIN.given()))
                                  .then(length(OPENS_AGAIN, CLOSES_AGAIN))
                                  .otherwise(Formula.zero(QuantityKind.MINUTES)))))
          .band(WINDOWS)
          .means("Minutes in which valves may be open.")
          .source("By definition; a window that closes at or before its opening ends next morning.")
          .build();

  private static final Rule BY_DAY =
      new Rule(
          "window-by-day",
          Severity.NOTE,
          NIGHTS,
          Ordinance.APPLIES
              .is(Ordinance.YES)
              .and(MINUTES_OPEN.above(Formula.zero(QuantityKind.MINUTES)))
              .and(inDaytime(OPENS, false).or(inDaytime(CLOSES, true))),
          OPENS,
          "has a window from {0} to {1}; California asks for overhead watering between 20:00 and 10:00 (23 CCR 492.10 (a)(2))",
          "move the window into the night, unless only drip and bubblers run then",
          List.of(OPENS, CLOSES));

  private NightSheet() {}

  private static Formula length(Column opens, Column closes) {
    Formula length = closes.minus(opens);
    return Formula.when(closes.above(opens)).then(length).otherwise(length.plus(ONE_DAY));
  }

  private static Condition inDaytime(Column time, boolean end) {
    Formula morning = Formula.amount(10, Units.HOUR);
    Formula evening = Formula.amount(20, Units.HOUR);
    Condition late = end ? time.above(morning) : time.atLeast(morning);
    Condition early = end ? time.atMost(evening) : time.below(evening);
    return late.and(early);
  }

  /** Returns the columns in their order. */
  public static List<Column> columns() {
    return List.of(
        NIGHT, NUMBER, WATERED, ALLOWED, OPENS, CLOSES, OPENS_AGAIN, CLOSES_AGAIN, MINUTES_OPEN);
  }

  /** Returns what to tell a designer about the hours. */
  public static List<Rule> rules() {
    return List.of(BY_DAY);
  }
}
