package zonewright.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

/**
 * The six zones of the climatologically based controller test protocol, as a design.
 *
 * <p>Their soil, slope, area, precipitation rate, efficiency and storage are from memory. What the
 * protocol does not give is ours: the climate, and the root depth, available water and depletion
 * whose product is the storage.
 */
final class ControllerTestZones {
  private static final String FROM_MEMORY =
      "zone of the controller test protocol, from memory; flow is its rate over its area";

  private static final List<Column> COLUMNS =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          Facts.ZONE_NOTE,
          Emitters.AREA,
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.ZONE_FLOW,
          Emitters.ROW_SPACING,
          Emitters.IRRIGATION_EFFICIENCY,
          Soils.SOIL_TYPE,
          Soils.SLOPE,
          Plants.ROOT_DEPTH,
          Plants.ALLOWED_DEPLETION,
          Soils.AVAILABLE_WATER);

  private static final String[][] ZONES = {
    {
      "1",
      "tall fescue, 75 % shade",
      FROM_MEMORY,
      "1000 ft2",
      "cool-season turf",
      "fixed spray",
      "16.62337662 gpm",
      "",
      "55 %",
      "loam",
      "6",
      "12 in",
      "50 %",
      "1.7 in/ft"
    },
    {
      "2",
      "bermuda, full sun",
      FROM_MEMORY,
      "1200 ft2",
      "warm-season turf",
      "fixed spray",
      "19.94805195 gpm",
      "",
      "60 %",
      "silty clay",
      "10",
      "8 in",
      "50 %",
      "1.65 in/ft"
    },
    {
      "3",
      "ground cover, full sun",
      FROM_MEMORY,
      "800 ft2",
      "ground cover",
      "fixed spray",
      "11.63636363 gpm",
      "",
      "70 %",
      "loamy sand",
      "8",
      "12 in",
      "50 %",
      "1.8 in/ft"
    },
    {
      "4",
      "woody shrubs, 50 % shade",
      FROM_MEMORY,
      "500 ft2",
      "shrubs (dry climate)",
      "fixed spray",
      "7.272727272 gpm",
      "",
      "75 %",
      "sandy loam",
      "12",
      "24 in",
      "50 %",
      "2 in/ft"
    },
    {
      "5",
      "trees and ground cover, full sun",
      FROM_MEMORY,
      "650 ft2",
      "trees (dry climate)",
      "drip line",
      "1.35064935 gpm",
      "18 in",
      "80 %",
      "clay",
      "2",
      "36 in",
      "50 %",
      "1.5 in/ft"
    },
    {
      "6",
      "bermuda, full sun",
      FROM_MEMORY,
      "1600 ft2",
      "warm-season turf",
      "rotor",
      "5.818181818 gpm",
      "",
      "65 %",
      "clay loam",
      "20",
      "8 in",
      "50 %",
      "1.65 in/ft"
    },
  };

  private ControllerTestZones() {}

  static Design design(UnitSystem system) {
    Map<Column, String> site = new LinkedHashMap<>();
    site.put(Facts.PROJECT_NAME, "Controller test zones (from memory)");
    site.put(Facts.LOCATION, "None; the climate is a published reference zone chosen here");
    site.put(Climate.PLACE, "CIMIS zone 8");
    site.put(SiteRules.GROSS_METHOD, SiteRules.BY_EFFICIENCY);
    return SampleText.design(system, site, COLUMNS, ZONES);
  }
}
