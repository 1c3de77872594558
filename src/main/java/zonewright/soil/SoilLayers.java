package zonewright.soil;

import static zonewright.trade.Sheets.SOIL_WATER;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of a second soil below the first, and of all the water the rooted soil holds. */
public final class SoilLayers {
  public static final Column SECOND_SOIL =
      Column.choice(ZONES, "second-soil", "Soil below", new WordList.Published(Soils.TEXTURES))
          .band(SOIL_WATER)
          .optional()
          .means(
              "Texture of a second soil that roots reach below the first, such as loam brought in over clay. Intake rate and surface"
                  + " storage stay those of the soil on top.")
          .build();

  public static final Column UPPER_DEPTH =
      Column.input(ZONES, "upper-soil-depth", "Depth of the soil on top", QuantityKind.DEPTH)
          .band(SOIL_WATER)
          .within(Bounds.above(0, 240, Units.INCH))
          .decimals(1, 0)
          .optional()
          .means("How deep the first soil goes; below it lies the second.")
          .build();

  public static final Column SECOND_AVAILABLE =
      Column.defaulted(
              ZONES,
              "second-available-water",
              "Available water below",
              QuantityKind.STORAGE,
              Soils.availableWater(SECOND_SOIL))
          .band(SOIL_WATER)
          .within(Bounds.above(0, 12, Units.INCH_PER_FOOT))
          .means(
              "Water that a depth of the second soil holds; type over it the difference of its field capacity and wilting point.")
          .source("Table Soils, as for the first soil.")
          .build();

  public static final Column ROOTED_ABOVE =
      Column.calculated(
              ZONES,
              "roots-on-top",
              "Roots in the soil on top",
              QuantityKind.DEPTH,
              Formula.smaller(Plants.ROOT_DEPTH, UPPER_DEPTH))
          .band(SOIL_WATER)
          .decimals(1, 0)
          .means(
              "How much of the root depth lies in the soil on top; the rest reaches the one below.")
          .source("By definition.")
          .build();

  /** Water held by the rooted soil; needs the second soil only where roots reach it. */
  public static final Column WATER_HELD =
      Column.calculated(
              ZONES,
              "water-held",
              "Water held",
              QuantityKind.DEPTH,
              Formula.when(layered())
                  .then(
                      Soils.AVAILABLE_WATER
                          .times(ROOTED_ABOVE)
                          .plus(SECOND_AVAILABLE.times(Plants.ROOT_DEPTH.minus(ROOTED_ABOVE))))
                  .otherwise(Soils.AVAILABLE_WATER.times(Plants.ROOT_DEPTH)))
          .band(SOIL_WATER)
          .means(
              "All the water that roots can use between field capacity and wilting point, layer by layer down to the root depth.")
          .source(
              "Total available water = (field capacity − wilting point) × root depth: FAO Irrigation and Drainage Paper 56 (1998),"
                  + " equation 82 (verified); summed over layers as in the practice calculations of precisionag.org (verified).")
          .build();

  private SoilLayers() {}

  private static Condition layered() {
    return SECOND_SOIL.given().or(UPPER_DEPTH.given());
  }
}
