package zonewright.soil;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.SALINE_WATER;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of recycled or saline water: what must drain below the roots to carry its salt away. */
public final class Salinity {
  private static final String FAO_29 =
      "FAO Irrigation and Drainage Paper 29, revision 1 (1985), equation 9";

  public static final Column OF_THE_WATER =
      Column.input(SITE, "water-salinity", "Salinity of the water", QuantityKind.SALINITY)
          .band(SALINE_WATER)
          .within(Bounds.from(0, 20, Units.DECISIEMENS_PER_METRE))
          .optional()
          .means(
              "Electrical conductivity of the irrigation water (ECw), from the supplier or a water test. Leave it blank for ordinary"
                  + " drinking water: nothing is added then. Recycled water is often 0.7 to 2 dS/m; 640 mg/L of salts are about 1 dS/m.")
          .build();

  public static final Column TOLERATED =
      Column.input(ZONES, "salinity-tolerated", "Salinity tolerated", QuantityKind.SALINITY)
          .band(SALINE_WATER)
          .within(Bounds.above(0, 40, Units.DECISIEMENS_PER_METRE))
          .optional()
          .means(
              "Electrical conductivity of the soil's saturation extract (ECe) that the plants bear without harm. Needed only where the"
                  + " site gives a salinity of the water. FAO's guide calls plants sensitive below 1.3 dS/m, moderately sensitive to 3,"
                  + " moderately tolerant to 6, tolerant to 10 (from memory); look yours up.")
          .build();

  public static final Column OF_THE_DRAINAGE =
      Column.calculated(
              ZONES,
              "drainage-salinity",
              "Salinity of what drains",
              QuantityKind.SALINITY,
              Formula.when(salinityLeft().above(OF_THE_WATER))
                  .then(salinityLeft())
                  .otherwise(
                      Formula.refused(
                          "too saline",
                          "no amount of leaching keeps the soil at what these plants tolerate; blend the water or choose plants that"
                              + " tolerate more")))
          .band(SALINE_WATER)
          .means("Salinity up to which the water that drains below the roots may rise.")
          .source("5 × ECe − ECw: Rhoades, as in " + FAO_29 + ".")
          .build();

  public static final Column LEACHING_REQUIREMENT =
      Column.calculated(
              ZONES,
              "leaching-requirement",
              "Leaching requirement",
              QuantityKind.SHARE,
              Formula.when(OF_THE_WATER.given())
                  .then(OF_THE_WATER.over(OF_THE_DRAINAGE))
                  .otherwise(0))
          .band(SALINE_WATER)
          .decimals(0, 0)
          .means(
              "Part of the water given that must drain below the roots so that salt does not gather there; 0 where the site gives no"
                  + " salinity of the water. The depth to apply is the greater for it. Winter rain that drains through does"
                  + " the same work, which is not counted.")
          .source(
              "ECw ÷ (5 × ECe − ECw), for sprinklers and flooding: "
                  + FAO_29
                  + " (verified, secondary).")
          .build();

  private static final Rule TOO_MUCH_LEACHING =
      new Rule(
          "leaching-great",
          Severity.CHECK,
          ZONES,
          LEACHING_REQUIREMENT.above(0.3),
          LEACHING_REQUIREMENT,
          "must let {0} of its water drain away to keep the soil at {1} with water of {2}; above about 30 % that is hardly practical",
          "plants that tolerate more salt, or water blended with better water: FAO Irrigation and Drainage Paper 29, section 2.4",
          List.of(LEACHING_REQUIREMENT, TOLERATED, OF_THE_WATER));

  private Salinity() {}

  private static Formula salinityLeft() {
    return number(5).times(TOLERATED).minus(OF_THE_WATER);
  }

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> rules() {
    return List.of(TOO_MUCH_LEACHING);
  }
}
