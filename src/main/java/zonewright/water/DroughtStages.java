package zonewright.water;

import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.STAGES;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the stages of a drought, and of what the one in force asks of the site. Without a
 * stage in force they leave everything as it is.
 */
public final class DroughtStages {
  private static final String LOCAL = "The local rule decides; the program knows none.";

  /** No later than this, so that what opens when the hours are over opens on the same day. */
  private static final Bounds CLOCK = Bounds.from(0, 24 * 60 - 1, Units.MINUTE);

  public static final Column STAGE =
      Column.words(STAGES, "stage", "Stage")
          .band(RULES)
          .means("Name of the stage, as the rule that sets it calls it.")
          .build();

  public static final Column MOST_DAYS =
      Column.defaulted(STAGES, "most-days", "Days a week", QuantityKind.COUNT, Formula.number(7))
          .band(RULES)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means(
              "On how many days a week the stage lets the site water. Which days they are, by house number or for all, stands on the sheet DayRules.")
          .source(LOCAL)
          .build();

  public static final Column CUT =
      Column.defaulted(STAGES, "cut", "Cut", QuantityKind.SHARE, Formula.number(0))
          .band(RULES)
          .within(Bounds.from(0, 1, Units.ONE))
          .means(
              "What part of the water that the plants need the stage takes away: 100 % where it forbids watering.")
          .source(LOCAL)
          .build();

  public static final Column NO_WATER_FROM =
      hour(SITE, "no-water-from", "No water from", Formula.amount(12, Units.HOUR))
          .means(
              "The hour from which a local rule forbids watering, on every day. The windows of the sheet Nights are cut by it. Nothing is forbidden where it is the"
                  + " same as the next.")
          .source("No hours unless typed; local rules decide.")
          .build();

  public static final Column NO_WATER_UNTIL =
      hour(SITE, "no-water-until", "No water until", Formula.amount(12, Units.HOUR))
          .means(
              "The hour of the same day until which a local rule forbids watering. Hours over midnight are given as windows on the sheet Nights.")
          .source("No hours unless typed; local rules decide.")
          .build();

  public static final Column STAGE_FROM =
      hour(STAGES, "no-water-from", "No water from", NO_WATER_FROM)
          .means("The hour from which the stage forbids watering, in place of the site's.")
          .source("As the site has it unless typed.")
          .build();

  public static final Column STAGE_UNTIL =
      hour(STAGES, "no-water-until", "No water until", NO_WATER_UNTIL)
          .means(
              "The hour of the same day until which the stage forbids watering, in place of the site's.")
          .source("As the site has it unless typed.")
          .build();

  public static final Column NOTE =
      Column.words(STAGES, "note", "Note")
          .band(RULES)
          .optional()
          .means("Where the stage is written down, or whatever else should be known.")
          .build();

  /** The stage the site keeps to. */
  public static final Column IN_FORCE =
      Column.choice(SITE, "stage", "Stage in force", new WordList.RowsOf(STAGES))
          .band(RULES)
          .optional()
          .means(
              "The stage of the sheet Stages that the site keeps to now. Days, hours, minutes, cards and volumes follow it; left blank, everything is as without"
                  + " stages.")
          .build();

  public static final Column DAYS =
      Column.calculated(
              SITE,
              "stage-days",
              "Days a week by the stage",
              QuantityKind.COUNT,
              inForce(MOST_DAYS, Formula.number(7)))
          .band(RULES)
          .means("Days a week that the stage in force allows.")
          .source("By definition; 7 without a stage.")
          .build();

  public static final Column KEPT =
      Column.calculated(
              SITE,
              "stage-kept",
              "Left by the stage",
              QuantityKind.SHARE,
              Formula.number(1).minus(inForce(CUT, Formula.number(0))))
          .band(RULES)
          .means("What part of the minutes a week the stage in force leaves.")
          .source("1 − cut; 100 % without a stage.")
          .build();

  public static final Column CLOSED_FROM =
      Column.calculated(
              SITE,
              "closed-from",
              "Hours without water begin",
              QuantityKind.TIME_OF_DAY,
              inForce(STAGE_FROM, NO_WATER_FROM))
          .band(RULES)
          .means("The hour from which no water may run now.")
          .source("That of the stage in force, or else of the site.")
          .build();

  private static final Formula END = inForce(STAGE_UNTIL, NO_WATER_UNTIL);

  public static final Column CLOSED_UNTIL =
      Column.calculated(
              SITE,
              "closed-until",
              "Hours without water end",
              QuantityKind.TIME_OF_DAY,
              Formula.when(END.below(CLOSED_FROM))
                  .then(
                      Formula.refused(
                          "ends first",
                          "the hours without water end before they begin; type both hours of one day, and hours over midnight as windows on the sheet Nights"))
                  .otherwise(END))
          .band(RULES)
          .means("The hour of the same day until which no water may run now.")
          .source("That of the stage in force, or else of the site.")
          .build();

  private static final Rule NOTED =
      new Rule(
          "stage-in-force",
          Severity.NOTE,
          SITE,
          IN_FORCE.given(),
          IN_FORCE,
          "is in force and leaves {0} of the minutes on at most {1} days a week: all minutes and volumes, the year's too, are those of the stage",
          "clear it to see the design without a stage",
          List.of(KEPT, DAYS));

  private DroughtStages() {}

  private static Column.Builder hour(String table, String id, String name, Term usual) {
    return Column.defaulted(table, id, name, QuantityKind.TIME_OF_DAY, usual)
        .band(RULES)
        .within(CLOCK);
  }

  private static Formula inForce(Column ofStage, Term otherwise) {
    return Formula.when(IN_FORCE.given()).then(ofStage.inRowOf(IN_FORCE)).otherwise(otherwise);
  }

  /** Returns the columns of a stage in their order. */
  public static List<Column> ofStage() {
    return List.of(STAGE, MOST_DAYS, CUT, STAGE_FROM, STAGE_UNTIL, NOTE);
  }

  /** Returns the columns of the site in their order. */
  public static List<Column> ofSite() {
    return List.of(NO_WATER_FROM, NO_WATER_UNTIL, IN_FORCE, DAYS, KEPT, CLOSED_FROM, CLOSED_UNTIL);
  }

  /** Returns what to tell a designer about stages. */
  public static List<Rule> rules() {
    return List.of(NOTED);
  }
}
