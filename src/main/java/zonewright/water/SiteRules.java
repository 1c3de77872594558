package zonewright.water;

import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Settings and limits of the site that every zone's schedule keeps to. */
public final class SiteRules {
  public static final String BY_UNIFORMITY = "by uniformity";
  public static final String BY_EFFICIENCY = "by efficiency";

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
                  + " or divided by the irrigation efficiency.");

  public static final Column DAYS_ALLOWED =
      Column.defaulted(
              SITE, "days-allowed", "Watering days allowed", QuantityKind.COUNT, Formula.number(7))
          .band(RULES)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means("How many days a week watering is allowed, by local rule or by choice.")
          .source("No restriction unless typed; local drought rules decide.");

  public static final Column MOST_CYCLES =
      Column.defaulted(
              SITE, "most-cycles", "Most cycles a day", QuantityKind.COUNT, Formula.number(4))
          .band(RULES)
          .within(Bounds.from(1, 99, Units.ONE).wholeNumbers())
          .means("How many times a day the controller can start one program.")
          .source("Common practice, no source: see what your controller offers.");

  public static final Column AVAILABLE_FLOW =
      Column.input(SITE, "available-flow", "Available flow", QuantityKind.FLOW)
          .band(RULES)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(1, 1)
          .optional()
          .means("Flow the supply can give at working pressure, by a flow test.");

  private SiteRules() {}
}
