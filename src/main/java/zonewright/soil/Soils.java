package zonewright.soil;

import static zonewright.trade.Sheets.SOIL;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the soil of a zone. */
public final class Soils {
  /**
   * Soil textures with intake rate, surface storage by slope and available water: one set that
   * belongs together.
   */
  public static final ReferenceTable TEXTURES =
      ReferenceTable.read(Soils.class, "soils.csv", "Soils");

  public static final Column SOIL_TYPE =
      Column.choice(ZONES, "soil", "Soil", new WordList.Published(TEXTURES))
          .band(SOIL)
          .means(
              "Texture of the soil in the root zone. A jar test or a soil report beats a guess.");

  public static final Column SLOPE =
      Column.input(ZONES, "slope", "Slope", QuantityKind.SLOPE)
          .band(SOIL)
          .within(Bounds.from(0, 1, Units.ONE))
          .decimals(1, 1)
          .means("Rise over run of the steepest part that runs off first, in percent. Flat is 0.");

  public static final Column INTAKE_RATE =
      Column.defaulted(
              ZONES,
              "intake-rate",
              "Intake rate",
              QuantityKind.RATE,
              looked("Intake rate (in/h)", QuantityKind.RATE))
          .band(SOIL)
          .within(Bounds.above(0, 50, Units.INCH_PER_HOUR))
          .means(
              "Steady rate at which the soil takes water in. Follows from the texture; compaction can cut it to a tenth, so type"
                  + " over it what an infiltration test shows.")
          .source(
              "Table Soils: the basic intake rates of the climatologically based controller test protocol (8th draft, 2008),"
                  + " verified (secondary). Published sets differ tenfold; this one belongs with the surface storage beside it.");

  private static final Formula STORAGE_BY_SLOPE =
      Formula.when(SLOPE.cell().atMost(Formula.amount(3, Units.PERCENT)))
          .then(looked("Surface storage 0-3 % (in)", QuantityKind.DEPTH))
          .otherwise(
              Formula.when(SLOPE.cell().atMost(Formula.amount(6, Units.PERCENT)))
                  .then(looked("Surface storage 4-6 % (in)", QuantityKind.DEPTH))
                  .otherwise(
                      Formula.when(SLOPE.cell().atMost(Formula.amount(12, Units.PERCENT)))
                          .then(looked("Surface storage 7-12 % (in)", QuantityKind.DEPTH))
                          .otherwise(
                              looked("Surface storage over 12 % (in)", QuantityKind.DEPTH))));

  public static final Column SURFACE_STORAGE =
      Column.defaulted(
              ZONES, "surface-storage", "Surface storage", QuantityKind.DEPTH, STORAGE_BY_SLOPE)
          .band(SOIL)
          .within(Bounds.from(0, 5, Units.INCH))
          .means(
              "Depth of water that may stand on the surface before it runs off, for the soil and the slope; also called allowable"
                  + " surface accumulation.")
          .source(
              "Table Soils: pairs of intake rate and surface storage of the same test protocol; flat ground verified (secondary),"
                  + " steeper groups from memory.");

  public static final Column AVAILABLE_WATER =
      Column.defaulted(
              ZONES,
              "available-water",
              "Available water",
              QuantityKind.STORAGE,
              looked("Available water (in/ft)", QuantityKind.STORAGE))
          .band(SOIL)
          .within(Bounds.above(0, 12, Units.INCH_PER_FOOT))
          .means("Water that a depth of soil holds between field capacity and wilting point.")
          .source(
              "Table Soils: mean of the range for medium organic matter in the USDA NRCS table (verified).");

  private static Formula looked(String heading, QuantityKind kind) {
    return new Formula.Lookup(SOIL_TYPE.reference(), TEXTURES.numbers(heading, kind));
  }

  private Soils() {}
}
