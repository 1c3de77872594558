package zonewright.soil;

import static zonewright.trade.Sheets.SOIL;
import static zonewright.trade.Sheets.SOIL_WATER;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
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
          .means("Texture of the soil in the root zone. A jar test or a soil report beats a guess.")
          .build();

  public static final Column SLOPE =
      Column.input(ZONES, "slope", "Slope", QuantityKind.SLOPE)
          .band(SOIL)
          .within(Bounds.from(0, 1, Units.ONE))
          .decimals(1, 1)
          .means("Rise over run of the steepest part that runs off first, in percent. Flat is 0.")
          .build();

  public static final String NOT_COMPACTED = "none";
  public static final String COMPACTED = "compacted";
  public static final String SEVERELY_COMPACTED = "severely compacted";

  public static final Column COMPACTION =
      Column.choice(
              ZONES,
              "compaction",
              "Compaction",
              new WordList.Fixed(List.of(NOT_COMPACTED, COMPACTED, SEVERELY_COMPACTED)),
              NOT_COMPACTED)
          .band(SOIL)
          .means(
              "How much building, traffic or play has pressed the soil together. Compacted soil is taken to let in half the water of"
                  + " its texture, severely compacted soil a fifth; an intake rate that was measured is better than either.")
          .source(
              "Half and a fifth: common practice, no source. Measured cuts on sandy lawns after building were 70 to 99 %: Gregory,"
                  + " Dukes, Jones and Miller, Journal of Soil and Water Conservation 61(3), 2006 (from memory).")
          .build();

  private static final Formula SHARE_LEFT =
      Formula.when(COMPACTION.is(NOT_COMPACTED))
          .then(1)
          .otherwise(Formula.when(COMPACTION.is(COMPACTED)).then(0.5).otherwise(0.2));

  public static final Column INTAKE_RATE =
      Column.defaulted(
              ZONES,
              "intake-rate",
              "Intake rate",
              QuantityKind.RATE,
              looked("Intake rate (in/h)", QuantityKind.RATE).times(SHARE_LEFT))
          .band(SOIL)
          .within(Bounds.above(0, 50, Units.INCH_PER_HOUR))
          .means(
              "Steady rate at which the soil takes water in. Follows from the texture and its compaction; type over"
                  + " it what an infiltration test shows.")
          .source(
              "Table Soils: the basic intake rates of the climatologically based controller test protocol (8th draft, 2008),"
                  + " verified (secondary). Published sets differ tenfold; this one belongs with the surface storage beside it.")
          .build();

  /** The headings of the table under which surface storage stands, from level to steep. */
  private static final List<String> STORAGE =
      List.of(
          "Surface storage 0-3 % (in)",
          "Surface storage 4-6 % (in)",
          "Surface storage 7-12 % (in)",
          "Surface storage over 12 % (in)");

  private static final Formula STORAGE_BY_SLOPE =
      Formula.when(SLOPE.atMost(Formula.amount(3, Units.PERCENT)))
          .then(looked(STORAGE.get(0), QuantityKind.DEPTH))
          .otherwise(
              Formula.when(SLOPE.atMost(Formula.amount(6, Units.PERCENT)))
                  .then(looked(STORAGE.get(1), QuantityKind.DEPTH))
                  .otherwise(
                      Formula.when(SLOPE.atMost(Formula.amount(12, Units.PERCENT)))
                          .then(looked(STORAGE.get(2), QuantityKind.DEPTH))
                          .otherwise(looked(STORAGE.get(3), QuantityKind.DEPTH))));

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
                  + " steeper groups from memory.")
          .build();

  public static final Column FIELD_CAPACITY =
      moisture(
          "field-capacity",
          "Field capacity",
          "Water in the soil a day or two after a soaking, by volume, as a soil report has it. With the wilting point it takes the"
              + " place of the texture's available water.");

  public static final Column WILTING_POINT =
      moisture(
          "wilting-point",
          "Wilting point",
          "Water in the soil that roots can no longer take, by volume, as a soil report has it.");

  public static final Column AVAILABLE_BY_REPORT =
      Column.calculated(
              ZONES,
              "available-by-report",
              "Available water by report",
              QuantityKind.STORAGE,
              Formula.when(FIELD_CAPACITY.above(WILTING_POINT))
                  .then(FIELD_CAPACITY.minus(WILTING_POINT))
                  .otherwise(
                      Formula.refused(
                          "holds none",
                          "field capacity must lie above wilting point; look whether they were exchanged")))
          .band(SOIL_WATER)
          .means("What the soil report's two points leave between them.")
          .source(
              "Field capacity − wilting point: FAO Irrigation and Drainage Paper 56 (1998), equation 82 (verified).")
          .build();

  public static final Column AVAILABLE_WATER =
      Column.defaulted(
              ZONES,
              "available-water",
              "Available water",
              QuantityKind.STORAGE,
              Formula.when(FIELD_CAPACITY.given())
                  .then(AVAILABLE_BY_REPORT)
                  .otherwise(availableWater(SOIL_TYPE)))
          .band(SOIL)
          .within(Bounds.above(0, 12, Units.INCH_PER_FOOT))
          .means(
              "Water that a depth of soil holds between field capacity and wilting point: from those two where they are typed, else"
                  + " from the texture.")
          .source(
              "Table Soils: mean of the range for medium organic matter in the USDA NRCS table (verified); or the soil report.")
          .build();

  private static Column moisture(String id, String name, String meaning) {
    return Column.input(ZONES, id, name, QuantityKind.SHARE)
        .band(SOIL_WATER)
        .within(Bounds.from(0, 1, Units.ONE))
        .decimals(1, 1)
        .optional()
        .means(meaning)
        .build();
  }

  /** Returns what the table says that a texture holds. */
  static Formula availableWater(Column texture) {
    return TEXTURES.numbers("Available water (in/ft)", QuantityKind.STORAGE).of(texture);
  }

  /** Returns the headings of the table under which surface storage stands. */
  public static String[] storageHeadings() {
    return STORAGE.toArray(String[]::new);
  }

  private static Formula looked(String heading, QuantityKind kind) {
    return TEXTURES.numbers(heading, kind).of(SOIL_TYPE);
  }

  private Soils() {}
}
