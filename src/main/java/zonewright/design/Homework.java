package zonewright.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

/**
 * A student's problem with one zone, to be worked step by step: invented, like all its figures, but
 * for the table values it draws on.
 */
final class Homework {
  private static final List<Column> COLUMNS =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          Emitters.AREA,
          Facts.ZONE_NOTE,
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Emitters.DISTRIBUTION_UNIFORMITY,
          Soils.SOIL_TYPE,
          Soils.SLOPE);

  private static final String[][] ZONES = {
    {
      "1",
      "Lawn beside the lecture hall",
      "2000 ft2",
      "How long does it run in July, in how many cycles, and what does it use in a year?",
      "cool-season turf",
      "fixed spray",
      "20",
      "1.5 gpm",
      "65 %",
      "clay loam",
      "6"
    }
  };

  /** Inches a month. */
  private static final List<String> REFERENCE_ET =
      List.of("1.2", "1.7", "3.1", "4.5", "5.9", "6.8", "7.2", "6.3", "4.8", "3.2", "1.7", "1.1");

  private static final List<String> RAIN =
      List.of("2.9", "2.6", "2.4", "1.5", "0.9", "0.4", "0.2", "0.3", "0.6", "1.2", "2.0", "2.7");

  private Homework() {}

  /** Returns the problem, freshly made. */
  static Design oneZone(UnitSystem system) {
    Map<Column, String> site = new LinkedHashMap<>();
    site.put(Facts.PROJECT_NAME, "Homework: one zone (invented)");
    site.put(Facts.LOCATION, "An invented campus; reference ET and rain invented");
    site.put(Facts.PREPARED_BY, "A student");
    site.put(SiteRules.DAYS_ALLOWED, "3");
    site.put(SiteRules.AVAILABLE_FLOW, "35 gpm");
    return SampleText.design(
        system,
        site,
        List.of(
            SampleText.months(Map.of(Climate.REFERENCE_ET, REFERENCE_ET, Rain.MONTH_RAIN, RAIN)),
            new SampleText.Rows(Sheets.ZONES, COLUMNS, List.of(ZONES))));
  }
}
