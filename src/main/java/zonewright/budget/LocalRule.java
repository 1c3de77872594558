package zonewright.budget;

import static zonewright.trade.Sheets.ALLOWANCES;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of a yearly limit that the designer's own authority sets. */
public final class LocalRule {
  public static final Column VOLUME =
      Column.input(SITE, "local-volume", "Local limit as a volume", QuantityKind.VOLUME)
          .band(ALLOWANCES)
          .within(Bounds.above(0, 100_000, Units.ACRE_FOOT))
          .optional()
          .means(
              "Water a year that a local rule allows the site. Goes before a share where both are given.")
          .build();

  public static final Column SHARE =
      Column.input(SITE, "local-share", "Local limit as a share of ET", QuantityKind.SHARE)
          .band(ALLOWANCES)
          .within(Bounds.above(0, 2, Units.ONE))
          .optional()
          .means(
              "Share of the year's reference ET, the sum of the months, over the irrigated area that a local rule allows.")
          .build();

  public static final Column LIMIT =
      Column.calculated(
              SITE,
              "local-limit",
              "Local limit",
              QuantityKind.VOLUME,
              Formula.when(VOLUME.given())
                  .then(VOLUME)
                  .otherwise(
                      Formula.when(SHARE.given())
                          .then(SHARE.times(Climate.YEAR_REFERENCE_ET).times(SiteBudget.TOTAL_AREA))
                          .otherwise(
                              Formula.doesNotApply(
                                  "none",
                                  "No local limit is given; type one where there is a rule."))))
          .band(ALLOWANCES)
          .means("The yearly limit of the local rule.")
          .source("As typed; the local rule decides.")
          .build();

  public static final Column LEFT_OVER =
      Column.calculated(
              SITE,
              "local-left",
              "Left of the local limit",
              QuantityKind.VOLUME,
              LIMIT.minus(SiteBudget.SITE_YEAR))
          .band(ALLOWANCES)
          .means("Local limit less the water of a year by this schedule: 0 or more passes.")
          .source("By definition.")
          .build();

  private static final Condition TOO_MUCH = SiteBudget.SITE_YEAR.above(LIMIT);

  public static final Column ABOVE_SHARE =
      Column.calculated(
              ZONES,
              "local-above-share",
              "Above its local share",
              QuantityKind.VOLUME,
              ZoneBudget.VOLUME_PER_YEAR.minus(
                  LIMIT.times(Emitters.AREA.over(SiteBudget.TOTAL_AREA))))
          .formerly("Above its share of the local limit")
          .band(ALLOWANCES)
          .means(
              "Water of a year by this schedule above (or, below 0, under) the zone's share by area of the local limit.")
          .source("By definition.")
          .build();

  public static final Column LEAST_CUT =
      LeastCut.column(
          "local-cut",
          "Cut for the local limit",
          ABOVE_SHARE,
          SiteBudget.SITE_YEAR.minus(LIMIT),
          TOO_MUCH);

  /** Zones whose change is enough for the site to keep to the limit. */
  public static final Rule CHANGE =
      new Rule(
          "local-limit-change",
          Severity.CHECK,
          ZONES,
          LEAST_CUT.above(Formula.zero(QuantityKind.VOLUME)),
          LEAST_CUT,
          "is one of the fewest zones whose change meets the local limit: {0} less of {1} a year",
          "give it plants that need less, or emitters that water more evenly",
          List.of(LEAST_CUT, ZoneBudget.VOLUME_PER_YEAR));

  /** The schedule takes more than the local limit. */
  public static final Rule EXCEEDED =
      new Rule(
          "local-limit-exceeded",
          Severity.CHECK,
          SITE,
          TOO_MUCH,
          LEFT_OVER,
          "takes {0} a year by this schedule; the local limit is {1}",
          "the findings of the zones name the fewest that need to change, and by how much",
          List.of(SiteBudget.SITE_YEAR, LIMIT));

  private LocalRule() {}
}
