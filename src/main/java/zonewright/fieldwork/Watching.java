package zonewright.fieldwork;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CONTROLLER;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.READINGS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.TUNING;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Matching;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the percents that a weather-based controller shows, beside what the months ask. */
public final class Watching {
  /** Readings a month needs before its mean says anything. */
  private static final double ENOUGH_READINGS = 3;

  public static final Column READING =
      Column.words(CONTROLLER, "reading", "Reading")
          .band(READINGS)
          .means("Number of the entry.")
          .build();

  public static final Column DATE =
      Column.input(CONTROLLER, "date", "Date", QuantityKind.DATE)
          .band(READINGS)
          .within(FieldDates.ANY)
          .means("The day it was read; of a week's percent, a day in its middle.")
          .build();

  public static final Column SHOWN =
      Column.input(CONTROLLER, "shown", "Percent shown", QuantityKind.SHARE)
          .band(READINGS)
          .within(Bounds.from(0, 3, Units.ONE))
          .means(
              "The percent of the baseline that the controller waters by. Take no reading from the first days after it was set up.")
          .build();

  public static final Column ZONE =
      Column.choice(CONTROLLER, "zone", "Zone", new WordList.RowsOf(ZONES))
          .band(READINGS)
          .optional()
          .means("The zone the percent is for; blank where it holds for the whole site.")
          .build();

  public static final Column NOTE =
      Column.words(CONTROLLER, "note", "Note")
          .band(READINGS)
          .optional()
          .means("Weather, a shut-off that was on, anything that explains it.")
          .build();

  public static final Column MONTH =
      Column.calculatedWord(
              CONTROLLER,
              "month",
              "Month",
              new WordList.RowsOf(MONTHS),
              Climate.MONTH.inRow(monthOf(DATE)))
          .band(READINGS)
          .means("The month of the date.")
          .source("By the calendar.")
          .build();

  public static final Column ASKED =
      Column.calculated(CONTROLLER, "asked", "The month asks", QuantityKind.SHARE, percentOf(DATE))
          .band(READINGS)
          .means("What the month of the date asks of the baseline in a mean year.")
          .source("Percent of the baseline, sheet Months.")
          .build();

  public static final Column OVER =
      Column.calculated(
              CONTROLLER, "over", "Shown less asked", QuantityKind.SHARE, SHOWN.minus(ASKED))
          .band(READINGS)
          .means("Points the controller shows above the month; below it where negative.")
          .source("By definition.")
          .build();

  public static final Column TOLERANCE =
      Column.defaulted(
              SITE, "percent-tolerance", "Percent tolerance", QuantityKind.SHARE, number(0.2))
          .band(TUNING)
          .within(Bounds.from(0.05, 1, Units.ONE))
          .means(
              "How many points the controller may stray from the months before something other than the weather is suspected.")
          .source("Common practice, no source: 20 points.")
          .build();

  public static final Column COUNT =
      Column.calculated(
              MONTHS,
              "controller-readings",
              "Controller readings",
              QuantityKind.COUNT,
              ofTheMonth().count())
          .band(READINGS)
          .means(
              "How many percents of the controller were written down for the month, in any year.")
          .source("By counting the sheet Controller.")
          .build();

  public static final Column MEAN =
      Column.calculated(
              MONTHS,
              "controller-percent",
              "Controller percent",
              QuantityKind.SHARE,
              Formula.when(COUNT.atLeast(1))
                  .then(ofTheMonth().sum(SHOWN).over(COUNT))
                  .otherwise(
                      Formula.doesNotApply("none", "No percent was written down for the month.")))
          .band(READINGS)
          .means("Mean of the percents that the controller showed in the month.")
          .source("By definition.")
          .build();

  public static final Column STRAYS =
      Column.calculated(
              MONTHS,
              "controller-strays",
              "Controller strays by",
              QuantityKind.SHARE,
              MEAN.minus(SiteBudget.PERCENT))
          .band(READINGS)
          .means("Points the controller's mean is above what the month asks; below where negative.")
          .source("By definition.")
          .build();

  /** All columns of the log in their usual order. */
  public static final List<Column> ALL =
      List.of(READING, DATE, SHOWN, ZONE, NOTE, MONTH, ASKED, OVER);

  /** The controller waters far more than the month asks. */
  public static final Rule TOO_MUCH =
      new Rule(
          "controller-too-high",
          Severity.CHECK,
          MONTHS,
          COUNT.atLeast(ENOUGH_READINGS).and(STRAYS.above(TOLERANCE)),
          MEAN,
          "asks {0} of the baseline, the controller showed {1} on average",
          "look whether its sensor stands near a wall or paving that heats it, whether its peak climate value is lower than this"
              + " design's, and whether a percent of its own is added; a hot year alone can do it",
          List.of(SiteBudget.PERCENT, MEAN));

  /** The controller waters far less than the month asks. */
  public static final Rule TOO_LITTLE =
      new Rule(
          "controller-too-low",
          Severity.CHECK,
          MONTHS,
          COUNT.atLeast(ENOUGH_READINGS).and(STRAYS.below(number(0).minus(TOLERANCE))),
          MEAN,
          "asks {0} of the baseline, the controller showed {1} on average",
          "look whether its sensor stands in shade or in the spray, whether its peak climate value is higher than this design's, and"
              + " whether a rain or freeze shut-off stays on; a cool, wet year alone can do it",
          List.of(SiteBudget.PERCENT, MEAN));

  /** The controller waters nothing where the month asks for water. */
  public static final Rule SHUT_OFF =
      new Rule(
          "controller-shut-off",
          Severity.NOTE,
          CONTROLLER,
          SHOWN.atMost(0).and(ASKED.atLeast(0.3)),
          SHOWN,
          "shows {0} where the month asks {1}: a rain, freeze or soil shut-off was active, or its sensor is faulty",
          "write the reason under Note; if it was dry and warm, test the shut-off",
          List.of(SHOWN, ASKED));

  private Watching() {}

  private static Matching ofTheMonth() {
    return Matching.rows(MONTH, Climate.MONTH);
  }

  private static Formula monthOf(Column date) {
    return date.measuredIn(Units.DAY).apply(FunctionKind.MONTH);
  }

  /** Returns what the month of a date asks of the baseline. */
  static Formula percentOf(Column date) {
    return SiteBudget.PERCENT.inRow(monthOf(date));
  }
}
