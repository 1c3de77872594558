package zonewright.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

/** Invented designs with many zones, always the same for the same count. Some rows are blank. */
final class ManyZones {
  private ManyZones() {}

  static Design design(int count) {
    Random random = new Random(count);
    Design design = Design.blank(UnitSystem.US);
    Edits edits = design.edits();
    design.book().start(edits.typed(Climate.PLACE.reference(), 0, "CIMIS zone 8"));
    design.book().start(edits.typed(Ordinance.APPLIES.reference(), 0, Ordinance.YES));
    design.book().start(edits.typed(WaterSense.APPLIES.reference(), 0, Ordinance.YES));
    design.book().start(edits.typed(LocalRule.SHARE.reference(), 0, "10 %"));
    for (int month = 0; month < design.book().rows(Sheets.MONTHS); month++) {
      String rain = Double.toString(month % 6 / 2.0);
      design.book().start(edits.typed(Rain.MONTH_RAIN.reference(), month, rain));
    }
    List<Column> columns = design.book().schema().table(Sheets.ZONES).columns();
    List<List<Entry>> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<Column, String> zone = zone(i, random);
      List<Entry> entries = new ArrayList<>();
      for (Column column : columns) {
        entries.add(Entries.read(column, zone.getOrDefault(column, ""), UnitSystem.US));
      }
      rows.add(entries);
    }
    design.book().start(edits.appended(Sheets.ZONES, rows));
    return design;
  }

  private static Map<Column, String> zone(int number, Random random) {
    Map<Column, String> zone = new LinkedHashMap<>();
    zone.put(Facts.ZONE_NAME, Integer.toString(number + 1));
    zone.put(SiteBudget.ZONE_PROGRAM, random.nextBoolean() ? "A" : "B");
    int heads = 8 + random.nextInt(60);
    zone.put(Emitters.AREA, Integer.toString(heads * (50 + random.nextInt(30))));
    zone.put(Plants.PLANT, any(random, Plants.TYPES.keys()));
    zone.put(Emitters.EMITTER, any(random, Emitters.KINDS.keys()));
    zone.put(Emitters.EMITTER_COUNT, Integer.toString(heads));
    zone.put(Emitters.WETTED_WIDTH, "9 ft");
    zone.put(Emitters.EMITTER_FLOW, Double.toString((10 + random.nextInt(110)) / 100.0));
    zone.put(Soils.SOIL_TYPE, any(random, Soils.TEXTURES.keys()));
    zone.put(Soils.SLOPE, Integer.toString(random.nextInt(20)));
    if (random.nextInt(5) == 0) {
      zone.put(Emitters.DISTRIBUTION_UNIFORMITY, Integer.toString(40 + random.nextInt(50)));
    }
    if (random.nextInt(8) == 0) {
      zone.put(Emitters.HEAD_SPACING, Integer.toString(8 + random.nextInt(10)));
      zone.put(Emitters.ROW_SPACING, Integer.toString(8 + random.nextInt(10)));
      zone.put(Emitters.RATE_METHOD, Emitters.BY_SPACING);
    }
    if (random.nextInt(6) == 0) {
      zone.put(Plants.SECOND_PLANT, any(random, Plants.TYPES.keys()));
      zone.put(Plants.SECOND_SHARE, Integer.toString(10 + random.nextInt(60)));
      zone.put(Plants.MIXED, random.nextBoolean() ? Plants.BY_AREA : Plants.THIRSTIEST);
    }
    if (random.nextInt(8) == 0) {
      zone.put(Emitters.PLANT_COUNT, Integer.toString(heads));
      zone.put(Emitters.CANOPY, Integer.toString(8 + random.nextInt(4)));
      zone.put(Emitters.RATE_METHOD, Emitters.BY_CANOPY);
    }
    if (random.nextInt(6) == 0) {
      zone.put(Ordinance.SPECIAL, Ordinance.YES);
    }
    if (random.nextInt(6) == 0) {
      zone.put(Soils.COMPACTION, Soils.COMPACTED);
    }
    if (random.nextInt(10) == 0) {
      zone.put(Demand.WATERING_DAYS, Integer.toString(1 + random.nextInt(7)));
    }
    if (random.nextInt(40) == 0) {
      zone.clear();
    }
    return zone;
  }

  private static String any(Random random, List<String> words) {
    return words.get(random.nextInt(words.size()));
  }
}
