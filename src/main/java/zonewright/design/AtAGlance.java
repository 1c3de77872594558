package zonewright.design;

import java.util.List;
import java.util.Map;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/**
 * The results a reader of a wide sheet looks at first. In the workbook they are on view, and the
 * others behind a sign that opens them.
 */
public final class AtAGlance {
  private static final Map<String, List<String>> RESULTS =
      Map.of(
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
              "Volume a year"),
          "found",
          List.of(
              "Zone flow",
              "Precipitation rate",
              "Distribution uniformity",
              "Run time a week",
              "What changes",
              "Present volume a week",
              "Present part of the need"),
          "months",
          List.of(
              "Reference ET",
              "Effective rain",
              "Percent of the baseline",
              "Site volume",
              "Controller percent"),
          "monthly",
          List.of(
              "Percent",
              "Watering days",
              "Run time",
              "Cycles",
              "Minutes a cycle",
              "Shortest soak",
              "Volume"),
          "weather",
          List.of("Penman-Monteith ET", "Hargreaves ET"),
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
              "Voltage drop"),
          "years",
          List.of(
              "Net cash, expected",
              "Cumulative cash, expected",
              "Cumulative cash, low",
              "Cumulative cash, high"),
          "takeoff",
          List.of(
              "Heads new",
              "Drip line new",
              "Valves new",
              "Lateral pipe new",
              "Main run new",
              "Cost"),
          "counts",
          List.of("Number new", "Length new", "Area new", "Cost of new"));

  private AtAGlance() {}

  /** Says whether a result is among those looked at first; in a narrow sheet all are. */
  public static boolean shows(TableDefinition table, Column result) {
    List<String> first = RESULTS.get(table.id());
    return first == null || first.contains(result.name());
  }

  /** Returns the names of the results looked at first in each of the wide sheets. */
  static Map<String, List<String>> results() {
    return RESULTS;
  }
}
