package zonewright.nights;

import static zonewright.trade.Sheets.NIGHTS;
import static zonewright.trade.Sheets.WINDOWS;

import java.util.List;
import zonewright.budget.Ordinance;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.AllowedDays;
import zonewright.water.DroughtStages;

/** Columns of the week: on which nights water may run, and between which hours. */
public final class NightSheet {
  public static final String YES = AllowedDays.YES;
  public static final String NO = AllowedDays.NO;

  private static final Formula ONE_DAY = Formula.amount(1, Units.DAY);
  private static final Bounds CLOCK = Bounds.from(0, 24, Units.HOUR);

  public static final Column NIGHT =
      Column.words(NIGHTS, "night", "Night")
          .band(WINDOWS)
          .means(
              "The night, named by the day on which it opens: a night that opens on Monday at 22:00 ends on Tuesday morning.")
          .build();

  public static final Column WATERED =
      Column.choice(NIGHTS, "watered", "Watered", new WordList.Fixed(List.of(YES, NO)), YES)
          .band(WINDOWS)
          .means("Whether water may run that night.")
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

  public static final Column FIRST_OPENS =
      Column.calculated(
              NIGHTS, "first-opens", "Opens in force", QuantityKind.TIME_OF_DAY, afterHours(OPENS))
          .band(WINDOWS)
          .means("The time from which valves may open when the hours without water are over.")
          .source("Window opens, or the end of the hours without water where it opens in them.")
          .build();

  public static final Column FIRST_MINUTES =
      Column.calculated(
              NIGHTS,
              "first-minutes",
              "Minutes of the window",
              QuantityKind.MINUTES,
              minutes(OPENS, CLOSES, FIRST_OPENS))
          .band(WINDOWS)
          .means("Minutes of the first window in which water may run.")
          .source(
              "From opening to closing, or to the next hours without water or a day that a rule leaves out, where they begin before.")
          .build();

  public static final Column SECOND_OPENS =
      Column.calculated(
              NIGHTS,
              "second-opens",
              "Second opens in force",
              QuantityKind.TIME_OF_DAY,
              ifSecond(afterHours(OPENS_AGAIN)))
          .band(WINDOWS)
          .means(
              "The time from which valves may open once more when the hours without water are over.")
          .source("As of the first window.")
          .build();

  public static final Column SECOND_MINUTES =
      Column.calculated(
              NIGHTS,
              "second-minutes",
              "Minutes of the second",
              QuantityKind.MINUTES,
              ifSecond(minutes(OPENS_AGAIN, CLOSES_AGAIN, SECOND_OPENS)))
          .band(WINDOWS)
          .means("Minutes of the second window in which water may run.")
          .source("As of the first window.")
          .build();

  public static final Column MINUTES_OPEN =
      Column.calculated(
              NIGHTS,
              "minutes-open",
              "Minutes open",
              QuantityKind.MINUTES,
              Formula.when(WATERED.is(NO).or(AllowedDays.ALLOWED.is(NO)))
                  .then(Formula.doesNotApply("no water", "Nothing waters on this night."))
                  .otherwise(both(FIRST_MINUTES, SECOND_MINUTES)))
          .band(WINDOWS)
          .means("Minutes in which valves may be open.")
          .source("By definition; a window that closes at or before its opening ends next morning.")
          .build();

  public static final Column MINUTES_FORBIDDEN =
      Column.calculated(
              NIGHTS,
              "minutes-forbidden",
              "Minutes cut off",
              QuantityKind.MINUTES,
              both(length(OPENS, CLOSES), length(OPENS_AGAIN, CLOSES_AGAIN))
                  .minus(MINUTES_OPEN)
                  .roundedTo(Units.MINUTE))
          .band(WINDOWS)
          .means(
              "Minutes of the windows that do not count because hours without water lie in them, or because a rule leaves out the day after midnight: 0 where the windows"
                  + " keep to all that by themselves.")
          .source("Minutes of the windows as typed less minutes open.")
          .build();

  private static final Rule CUT_BY_HOURS =
      new Rule(
          "window-cut",
          Severity.NOTE,
          NIGHTS,
          MINUTES_FORBIDDEN.above(Formula.zero(QuantityKind.MINUTES)),
          OPENS,
          "has {0} of its windows cut off: for hours without water, or because a rule leaves out the day that begins at midnight",
          "let it open at 00:00 where days are counted from midnight; what comes after hours without water wants a second window",
          List.of(MINUTES_FORBIDDEN));

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

  private static Formula length(Term opens, Term closes) {
    Formula length = closes.minus(opens);
    return Formula.when(closes.above(opens)).then(length).otherwise(length.plus(ONE_DAY));
  }

  private static Formula ifSecond(Formula formula) {
    return Formula.when(OPENS_AGAIN.given().or(CLOSES_AGAIN.given()))
        .then(formula)
        .otherwise(Formula.doesNotApply("none", "The night has one window."));
  }

  private static Formula both(Term first, Term second) {
    return first.plus(
        Formula.when(OPENS_AGAIN.given().or(CLOSES_AGAIN.given()))
            .then(second)
            .otherwise(Formula.zero(QuantityKind.MINUTES)));
  }

  private static Formula afterHours(Column opens) {
    return Formula.when(
            opens.atLeast(DroughtStages.CLOSED_FROM).and(opens.below(DroughtStages.CLOSED_UNTIL)))
        .then(DroughtStages.CLOSED_UNTIL)
        .otherwise(opens);
  }

  /**
   * Minutes from the opening in force to the closing, or to the next hours without water or the
   * next day, where a rule leaves that out.
   */
  private static Formula minutes(Column opens, Column closes, Column inForce) {
    Formula untilHours =
        Formula.when(DroughtStages.CLOSED_UNTIL.atMost(DroughtStages.CLOSED_FROM))
            .then(ONE_DAY)
            .otherwise(length(inForce, DroughtStages.CLOSED_FROM));
    Formula untilNextDay =
        Formula.when(AllowedDays.NEXT_FORBIDDEN.above(0))
            .then(ONE_DAY.minus(inForce))
            .otherwise(ONE_DAY);
    Formula asTyped = length(opens, closes).minus(inForce.minus(opens));
    return Formula.larger(
            Formula.zero(QuantityKind.MINUTES),
            Formula.smaller(asTyped, Formula.smaller(untilHours, untilNextDay)))
        .roundedTo(Units.MINUTE);
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
        NIGHT,
        AllowedDays.NUMBER,
        WATERED,
        AllowedDays.FORBIDDEN,
        AllowedDays.NEXT_FORBIDDEN,
        AllowedDays.ALLOWED,
        AllowedDays.WORTH,
        OPENS,
        CLOSES,
        OPENS_AGAIN,
        CLOSES_AGAIN,
        FIRST_OPENS,
        FIRST_MINUTES,
        SECOND_OPENS,
        SECOND_MINUTES,
        MINUTES_OPEN,
        MINUTES_FORBIDDEN);
  }

  /** Returns what to tell a designer about the hours. */
  public static List<Rule> rules() {
    return List.of(BY_DAY, CUT_BY_HOURS);
  }
}
