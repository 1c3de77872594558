package zonewright.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.nights.NightSheet;
import zonewright.nights.SiteNights;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.AllowedDays;
import zonewright.water.Controller;
import zonewright.water.SiteRules;

/**
 * A garden to look at: invented, like all its figures, but for the published climate and table
 * values it draws on.
 */
public final class Demo {
  private static final List<Column> COLUMNS =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          SiteBudget.ZONE_PROGRAM,
          Emitters.AREA,
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.EMITTER_FLOW,
          Soils.SOIL_TYPE,
          Soils.SLOPE);

  /** The garden is open to readings on these evenings. */
  private static final Set<String> CLOSED_NIGHTS = Set.of("Wednesday", "Saturday");

  private static final String[][] ZONES = {
    {
      "1",
      "Reading lawn, north half",
      "A",
      "2250 ft2",
      "cool-season turf",
      "fixed spray",
      "24",
      "1.55 gpm",
      "loam",
      "2"
    },
    {
      "2",
      "Reading lawn, south half",
      "A",
      "2250 ft2",
      "cool-season turf",
      "fixed spray",
      "24",
      "1.55 gpm",
      "loam",
      "3"
    },
    {
      "3",
      "Amphitheatre bank",
      "A",
      "1800 ft2",
      "cool-season turf",
      "multi-stream rotating nozzle",
      "22",
      "0.55 gpm",
      "clay loam",
      "14"
    },
    {
      "4",
      "Forecourt lawn",
      "A",
      "4100 ft2",
      "warm-season turf",
      "rotor",
      "10",
      "3 gpm",
      "sandy loam",
      "4"
    },
    {
      "5",
      "Entrance flower beds",
      "A",
      "620 ft2",
      "annual flowers",
      "fixed spray",
      "14",
      "0.9 gpm",
      "loam",
      "1"
    },
    {
      "6",
      "Children's discovery border",
      "B",
      "900 ft2",
      "herbaceous perennials (dry climate)",
      "drip line",
      "600",
      "0.6 gph",
      "loam",
      "2"
    },
    {
      "7",
      "Poets' walk shrubs",
      "B",
      "1600 ft2",
      "shrubs (dry climate)",
      "pressure-compensating drip line",
      "1070",
      "0.6 gph",
      "clay loam",
      "5"
    },
    {
      "8",
      "Car park islands",
      "B",
      "1200 ft2",
      "low water use",
      "pressure-compensating drip line",
      "540",
      "0.53 gph",
      "clay",
      "1"
    },
    {
      "9",
      "Grove of young trees",
      "B",
      "960 ft2",
      "trees (dry climate)",
      "bubbler",
      "16",
      "0.5 gpm",
      "clay loam",
      "3"
    },
    {
      "10",
      "Dry garden",
      "B",
      "1400 ft2",
      "desert plants",
      "pressure-compensating drip emitter",
      "120",
      "1 gph",
      "loamy sand",
      "6"
    },
    {
      "11",
      "West slope ground cover",
      "A",
      "2000 ft2",
      "ground cover",
      "multi-stream rotating nozzle",
      "26",
      "0.5 gpm",
      "clay",
      "22"
    },
    {
      "12",
      "Roof terrace planters",
      "B",
      "340 ft2",
      "strawberries",
      "micro-spray",
      "20",
      "9 gph",
      "sandy loam",
      "0"
    },
  };

  /** Inches a month, invented like the garden. */
  private static final List<String> RAIN =
      List.of("3.1", "2.8", "2.3", "1.1", "0.5", "0.2", "0", "0.1", "0.3", "0.9", "1.7", "2.6");

  private Demo() {}

  /** Returns the demo garden, freshly made. */
  public static Design libraryGarden(UnitSystem system) {
    Map<Column, String> site = new LinkedHashMap<>();
    site.put(Facts.PROJECT_NAME, "Library garden (invented example)");
    site.put(Facts.LOCATION, "An invented town; climate of a published reference zone");
    site.put(Facts.PREPARED_BY, "Zonewright demo");
    site.put(Climate.PLACE, "CIMIS zone 8");
    site.put(WaterSense.APPLIES, "yes");
    site.put(SiteRules.DAYS_ALLOWED, "5");
    site.put(SiteRules.AVAILABLE_FLOW, "40 gpm");
    site.put(Controller.KIND, Controller.STATION_STARTS);
    site.put(SiteNights.MOST_VALVES, "2");
    site.put(SiteNights.GAP, "1 min");
    site.put(SiteNights.FIRST_NIGHT, "2026-06-01");
    site.putAll(DemoPipes.supply());
    List<SampleText.Rows> sheets = new ArrayList<>();
    sheets.add(new SampleText.Rows(Sheets.ZONES, COLUMNS, List.of(ZONES)));
    sheets.add(SampleText.months(Map.of(Rain.MONTH_RAIN, RAIN)));
    sheets.add(new SampleText.Rows(Sheets.PIPES, DemoPipes.COLUMNS, List.of(DemoPipes.ZONES)));
    sheets.addAll(DemoField.rows());
    Design design = SampleText.design(UnitSystem.US, site, sheets);
    Edits edits = design.edits();
    List<Edit> others = new ArrayList<>();
    others.add(edits.typed(Emitters.WETTED_WIDTH.reference(), 9, "26 in"));
    for (int night = 0; night < AllowedDays.DAY_NAMES.size(); night++) {
      boolean closed = CLOSED_NIGHTS.contains(AllowedDays.DAY_NAMES.get(night));
      others.add(edits.typed(NightSheet.OPENS.reference(), night, "9 pm"));
      others.add(edits.typed(NightSheet.CLOSES.reference(), night, "7 am"));
      others.add(edits.typed(NightSheet.WATERED.reference(), night, closed ? NightSheet.NO : ""));
    }
    design.book().start(new Edit.Several("nights", others));
    if (system != UnitSystem.US) {
      design.book().start(design.edits().switched(system));
    }
    return design;
  }
}
