package zonewright.design;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/**
 * What a reader of a wide or long sheet looks at first. In the workbook they are on view, and the
 * others behind a sign that opens them.
 */
public final class AtAGlance {
  private static final Map<String, List<String>> RESULTS =
      Map.ofEntries(
          entry(
              Sheets.ZONES,
              List.of(
                  "Landscape coefficient",
                  "Zone flow",
                  "Precipitation rate",
                  "Distribution uniformity",
                  "Run time a week",
                  "Watering days",
                  "Run time a watering day",
                  "Cycles",
                  "Minutes a cycle",
                  "Shortest soak",
                  "Volume a week",
                  "Volume a year")),
          entry(
              "found",
              List.of(
                  "Zone flow",
                  "Precipitation rate",
                  "Distribution uniformity",
                  "Run time a week",
                  "What changes",
                  "Present volume a week",
                  "Present part of the need")),
          entry(
              "months",
              List.of(
                  "Reference ET",
                  "Effective rain",
                  "Percent of the baseline",
                  "Site volume",
                  "Controller percent")),
          entry(
              "monthly",
              List.of(
                  "Percent",
"Watering days",
"Run time",
"Cycles",
"Minutes a cycle",
"Shortest soak",
"Volume")),
          entry("weather", List.of("Penman-Monteith ET", "Hargreaves ET")),
          entry(
              "pipes",
              List.of(
                  "Valves needed",
                  "Flow of a valve",
                  "Main laid",
                  "Main velocity",
                  "Lateral laid",
                  "Lateral velocity",
                  "Pressure at the worst head",
                  "Variation in the zone",
                  "Pressure left over",
                  "Smallest wire",
                  "Voltage drop")),
          entry(
              "years",
              List.of(
                  "Net cash, expected",
                  "Cumulative cash, expected",
                  "Cumulative cash, low",
                  "Cumulative cash, high")),
          entry(
              "takeoff",
              List.of(
                  "Heads new",
                  "Drip line new",
                  "Valves new",
                  "Lateral pipe new",
                  "Main run new",
                  "Cost")),
          entry("counts", List.of("Number new", "Length new", "Area new", "Cost of new")),
          entry(
              Sheets.SITE,
              List.of(
                  "Project",
                  "Location",
                  "Prepared by",
                  "Reference ET from",
                  "Climate place",
                  "Peak month",
                  "Peak reference ET",
                  "Plant factors by",
                  "Effective rain",
                  "Gross depth",
                  "Weekdays allowed",
                  "Watering days allowed",
                  "Available flow",
                  "The controller",
                  "Month shown",
                  "First night",
                  "Irrigated area",
                  "Mean landscape coefficient",
                  "Volume a week",
                  "Volume in the peak month",
                  "Volume a year",
                  "Site tuning")),
          entry(
              Sheets.SUPPLY,
              List.of(
                  "Static pressure",
                  "Supply known by",
                  "Water meter",
                  "Service pipe",
                  "Service size",
                  "Service length",
                  "Backflow device",
                  "Usable flow",
                  "Largest flow at once",
                  "Pressure at the connection",
                  "Usual valve",
                  "Smallest main for all zones",
                  "Smallest lateral for all zones")));

  private AtAGlance() {}

  /** Says whether a column is among those looked at first; in a small sheet all are. */
  public static boolean shows(TableDefinition table, Column column) {
    List<String> first = RESULTS.get(table.id());
    return first == null || first.contains(column.name());
  }

  /** Returns the names of what is looked at first in each of the wide or long sheets. */
  static Map<String, List<String>> results() {
    return RESULTS;
  }
}
