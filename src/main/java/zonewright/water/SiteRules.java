package zonewright.water;

import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.pipes.Supply;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Settings and limits of the site that every zone's schedule keeps to. */
public final class SiteRules {
  public static final String BY_UNIFORMITY = "by uniformity";
  public static final String BY_EFFICIENCY = "by efficiency";

  public static final String AS_GIVEN = "as given";
  public static final String BY_DEMAND = "adjusted to demand";

  public static final Column GROSS_METHOD =
      Column.choice(
              SITE,
              "gross-method",
              "Gross depth",
              new WordList.Fixed(List.of(BY_UNIFORMITY, BY_EFFICIENCY)),
              BY_UNIFORMITY)
          .band(RULES)
          .means(
              "How the depth to apply follows from the depth needed: by the run-time multiplier from the distribution uniformity,"
                  + " or divided by the irrigation efficiency. A rate that cans caught has no losses left in it: there the multiplier counts"
                  + " either way.")
          .build();

  /** Sets of weekdays, with the shortest longest gap that some of them can leave. */
  public static final ReferenceTable WEEKDAY_SETS =
      ReferenceTable.read(SiteRules.class, "weekdays.csv", "Weekdays");

  public static final Column WEEKDAYS =
      Column.choice(SITE, "weekdays", "Weekdays allowed", new WordList.Published(WEEKDAY_SETS))
          .band(RULES)
          .optional()
          .means(
              "The weekdays on which watering is allowed, such as Mon Wed Fri. Leave it blank where any day will do: gaps are then"
                  + " taken as evenly spread.")
          .build();

  public static final Column DAYS_ALLOWED =
      Column.defaulted(
              SITE,
              "days-allowed",
              "Watering days allowed",
              QuantityKind.COUNT,
              Formula.when(WEEKDAYS.given())
                  .then(WEEKDAY_SETS.numbers("Days", QuantityKind.COUNT).of(WEEKDAYS))
                  .otherwise(7))
          .band(RULES)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means("How many days a week watering is allowed, by local rule or by choice.")
          .source("As many as the weekdays allowed, or no restriction; local drought rules decide.")
          .build();

  /** What the supply gives; declared with the supply it follows from. */
  public static final Column AVAILABLE_FLOW = Supply.AVAILABLE_FLOW;

  public static final Column DEPLETION_METHOD =
      Column.choice(
              SITE,
              "depletion-method",
              "Depletion rule",
              new WordList.Fixed(List.of(AS_GIVEN, BY_DEMAND)),
              AS_GIVEN)
          .band(RULES)
          .means(
              "Whether the allowed depletion counts as given, or is lowered where the plants use more than 5 mm a day and raised where"
                  + " they use less.")
          .build();

  private SiteRules() {}
}
