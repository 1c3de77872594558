package zonewright.budget;

import static zonewright.trade.Sheets.ALLOWANCES;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.climate.Climate;
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
              "Water a year that a local rule allows the site. Goes before a share where both are given.");

  public static final Column SHARE =
      Column.input(SITE, "local-share", "Local limit as a share of ET", QuantityKind.SHARE)
          .band(ALLOWANCES)
          .within(Bounds.above(0, 2, Units.ONE))
          .optional()
          .means(
              "Share of the year's reference ET over the irrigated area that a local rule allows.");

  public static final Column LIMIT =
      Column.calculated(
              SITE,
              "local-limit",
              "Local limit",
              QuantityKind.VOLUME,
              Formula.when(new Condition.Given(VOLUME.reference()))
                  .then(VOLUME.cell())
                  .otherwise(
                      Formula.when(new Condition.Given(SHARE.reference()))
                          .then(
                              SHARE
                                  .cell()
                                  .times(Climate.YEAR_REFERENCE_ET.cell())
                                  .times(SiteBudget.TOTAL_AREA.cell()))
                          .otherwise(
                              Formula.doesNotApply(
                                  "none",
                                  "No local limit is given; type one where there is a rule."))))
          .band(ALLOWANCES)
          .means("The yearly limit of the local rule.")
          .source("As typed; the local rule decides.");

  public static final Column LEFT_OVER =
      Column.calculated(
              SITE,
              "local-left",
              "Left of the local limit",
              QuantityKind.VOLUME,
              LIMIT.cell().minus(SiteBudget.SITE_YEAR.cell()))
          .band(ALLOWANCES)
          .means("Local limit less the water of a year by this schedule: 0 or more passes.")
          .source("By definition.");

  /** The schedule takes more than the local limit. */
  public static final Rule EXCEEDED =
      new Rule(
          "local-limit-exceeded",
          Severity.CHECK,
          SITE,
          SiteBudget.SITE_YEAR.cell().above(LIMIT.cell()),
          LEFT_OVER.reference(),
          "takes {0} a year by this schedule; the local limit is {1}",
          "look at the zones with the greatest share of the site's water first",
          List.of(SiteBudget.SITE_YEAR.reference(), LIMIT.reference()));

  private LocalRule() {}
}
