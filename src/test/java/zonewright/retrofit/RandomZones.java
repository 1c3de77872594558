package zonewright.retrofit;

import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.savings.Rates;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;

/** Gardens with random zones, complete enough that every number of a retrofit comes out. */
public final class RandomZones {
  private RandomZones() {}

  /** Returns a garden with rates of water, and zones as far as the seed says. */
  public static Design of(long seed) {
    Random random = new Random(seed);
    Design design = Design.blank(random.nextBoolean() ? UnitSystem.US : UnitSystem.SI);
    Edits edits = design.edits();
    int zones = 1 + random.nextInt(5);
    design.book().perform(edits.inserted(ZONES, 0, zones));
    List<Edit> parts = new ArrayList<>();
    type(parts, edits, Climate.PLACE, 0, any(random, Climate.PLACES.keys()));
    type(parts, edits, Rates.BILLED_BY, 0, Rates.CUBIC_METRE);
    type(parts, edits, Rates.UP_TO, 0, Integer.toString(5 + random.nextInt(50)));
    type(parts, edits, Rates.WATER_PRICE, 0, "1." + random.nextInt(99));
    type(parts, edits, Rates.WATER_PRICE, 1, "2." + random.nextInt(99));
    for (int row = 0; row < zones; row++) {
      type(parts, edits, Emitters.AREA, row, (300 + random.nextInt(900)) + " m2");
      type(parts, edits, Plants.PLANT, row, any(random, Plants.TYPES.keys()));
      type(parts, edits, Emitters.EMITTER, row, any(random, Emitters.KINDS.keys()));
      type(parts, edits, Emitters.EMITTER_COUNT, row, Integer.toString(1 + random.nextInt(60)));
      type(parts, edits, Emitters.EMITTER_FLOW, row, (1 + random.nextInt(90)) / 10.0 + " L/min");
      type(parts, edits, Emitters.WETTED_WIDTH, row, "6 m");
      type(parts, edits, Emitters.HEAD_SPACING, row, (3 + random.nextInt(40)) / 10.0 + " m");
      type(parts, edits, Emitters.DISTRIBUTION_UNIFORMITY, row, (30 + random.nextInt(50)) + " %");
      type(parts, edits, Soils.SOIL_TYPE, row, any(random, Soils.TEXTURES.keys()));
      type(parts, edits, Soils.SLOPE, row, Integer.toString(random.nextInt(25)));
    }
    design.book().perform(new Edit.Several("garden", parts));
    return design;
  }

  private static void type(List<Edit> parts, Edits edits, Column column, int row, String text) {
    parts.add(edits.typed(column.reference(), row, text));
  }

  private static String any(Random random, List<String> words) {
    return words.get(random.nextInt(words.size()));
  }
}
