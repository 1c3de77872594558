package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
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

  private Demo() {}

  /** Returns the demo garden, freshly made. */
  public static Design libraryGarden(UnitSystem system) {
    Design design = Design.blank(UnitSystem.US);
    Edits edits = design.edits();
    List<Edit> parts = new ArrayList<>();
    site(edits, parts, Facts.PROJECT_NAME, "Library garden (invented example)");
    site(edits, parts, Facts.LOCATION, "An invented town; climate of a published reference zone");
    site(edits, parts, Facts.PREPARED_BY, "Zonewright demo");
    site(edits, parts, Climate.PLACE, "CIMIS zone 8");
    site(edits, parts, SiteRules.DAYS_ALLOWED, "5");
    site(edits, parts, SiteRules.AVAILABLE_FLOW, "40 gpm");
    List<List<Entry>> rows = new ArrayList<>();
    for (String[] zone : ZONES) {
      rows.add(row(design, zone));
    }
    parts.add(edits.appended(Sheets.ZONES, rows));
    design.book().start(new Edit.Several("demo", parts));
    if (system != UnitSystem.US) {
      design.book().start(design.edits().switched(system));
    }
    return design;
  }

  private static void site(Edits edits, List<Edit> parts, Column column, String text) {
    parts.add(edits.typed(column.reference(), 0, text));
  }

  private static List<Entry> row(Design design, String[] texts) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : design.book().blueprint().table(Sheets.ZONES).columns()) {
      Reference reference = column.reference();
      int at = COLUMNS.stream().map(Column::reference).toList().indexOf(reference);
      entries.add(at < 0 ? Entry.BLANK : Entries.read(column, texts[at], UnitSystem.US));
    }
    return entries;
  }
}
