package zonewright.retrofit;

import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.ZONES;
import static zonewright.trade.Sheets.ZONE_NIGHTS;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.emitters.Emitters;
import zonewright.fieldwork.Cans;
import zonewright.fieldwork.CatchTests;
import zonewright.plants.Plants;
import zonewright.savings.Rates;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.WordList;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.MonthlySchedule;
import zonewright.water.SiteRules;
import zonewright.water.WateringPattern;

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

  /** Returns such a garden in which every choice there is may have been made otherwise. */
  public static Design ofAnyMethod(long seed) {
    Random random = new Random(seed);
    Design design = of(seed);
    Edits edits = design.edits();
    Book book = design.book();
    book.perform(edits.inserted(TESTS, 0, 1));
    book.perform(edits.inserted(CANS, 0, 4));
    List<Edit> parts = new ArrayList<>();
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      type(parts, edits, Rain.MONTH_RAIN, month, random.nextInt(30) + " mm");
      type(parts, edits, Weather.HIGHEST, month, 20 + random.nextInt(15) + " °C");
      type(parts, edits, Weather.LOWEST, month, random.nextInt(15) + " °C");
      type(parts, edits, Weather.MEAN_HUMIDITY, month, 40 + random.nextInt(40) + " %");
      type(parts, edits, Weather.WIND, month, 1 + random.nextInt(4) + " m/s");
      type(parts, edits, Weather.SUNSHINE, month, Integer.toString(random.nextInt(9)));
    }
    type(parts, edits, WeatherSite.LATITUDE, 0, Integer.toString(random.nextInt(50)));
    type(parts, edits, WeatherSite.ELEVATION, 0, "100 m");
    type(
        parts,
        edits,
        WeatherSite.DESCRIBED_CLIMATE,
        0,
        any(random, WeatherSite.DESCRIPTIONS.keys()));
    for (int row = 0; row < book.rows(ZONES); row++) {
      type(parts, edits, Emitters.ROW_SPACING, row, (3 + random.nextInt(40)) / 10.0 + " m");
      type(parts, edits, Emitters.PLANT_COUNT, row, Integer.toString(1 + random.nextInt(60)));
      type(parts, edits, Emitters.CANOPY, row, (3 + random.nextInt(40)) / 10.0 + " m");
      type(parts, edits, WateringPattern.EVERY, row, Integer.toString(1 + random.nextInt(9)));
      String days = any(random, SiteRules.WEEKDAY_SETS.keys());
      type(parts, edits, WateringPattern.OWN_DAYS, row, days);
      type(parts, edits, MonthlySchedule.COEFFICIENTS.get(2), row, "0." + random.nextInt(90));
      if (random.nextBoolean()) {
        type(parts, edits, Plants.SECOND_PLANT, row, any(random, Plants.TYPES.keys()));
        type(parts, edits, Plants.SECOND_SHARE, row, random.nextInt(100) + " %");
        type(parts, edits, Emitters.DISTRIBUTION_UNIFORMITY, row, "");
      }
      choose(parts, edits, random, ZONES, row);
      choose(parts, edits, random, ZONE_NIGHTS, row);
    }
    choose(parts, edits, random, SITE, 0);
    type(parts, edits, CatchTests.ZONE, 0, name(book, ZONES));
    type(parts, edits, CatchTests.MINUTES, 0, "20");
    type(parts, edits, CatchTests.IN_USE, 0, CatchTests.YES);
    for (int can = 0; can < 4; can++) {
      type(parts, edits, Cans.TEST, can, name(book, TESTS));
      type(parts, edits, Cans.DEPTH, can, (3 + random.nextInt(9)) + " mm");
    }
    book.perform(new Edit.Several("methods", parts));
    return design;
  }

  private static String name(Book book, String table) {
    return ((Entry.Words) book.contents().row(table, 0).entry(0)).text();
  }

  /** Takes any word in each choice among a few, or leaves it as it usually is. */
  private static void choose(List<Edit> parts, Edits edits, Random random, String table, int row) {
    for (Column column : IrrigationSheets.schema().table(table).columns()) {
      if (column.takesEntries()
          && column.words().orElse(null) instanceof WordList.Fixed fixed
          && random.nextBoolean()) {
        type(parts, edits, column, row, any(random, fixed.words()));
      }
    }
  }

  private static void type(List<Edit> parts, Edits edits, Column column, int row, String text) {
    parts.add(edits.typed(column.reference(), row, text));
  }

  private static String any(Random random, List<String> words) {
    return words.get(random.nextInt(words.size()));
  }
}
