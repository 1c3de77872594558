package zonewright.design;

import static java.util.Map.entry;

import java.util.ArrayList;
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

  /** What a sheet is opened on in the window, of the results looked at first: its answers. */
  private static final Map<String, List<String>> ANSWERS =
      Map.of(
          Sheets.ZONES,
          List.of("Watering days", "Run time a watering day", "Cycles", "Minutes a cycle"),
          Sheets.FOUND,
          List.of("Run time a week", "What changes", "Present volume a week"));

  private AtAGlance() {}

  /**
   * Returns the columns a wide sheet is opened on: its names and what must be typed at the left,
   * and what follows at the right; empty for a sheet that is narrow enough as it is, and for one
   * that lives by what may be typed and need not.
   */
  public static List<Column> opening(TableDefinition table) {
    List<String> results = ANSWERS.getOrDefault(table.id(), RESULTS.get(table.id()));
    boolean asks = table.columns().stream().anyMatch(column -> mayBeTyped(table, column));
    if (results == null || (asks && !ANSWERS.containsKey(table.id()))) {
      return List.of();
    }
    List<Column> opening = new ArrayList<>();
    List<Column> answers = new ArrayList<>();
    for (Column column : table.columns()) {
      boolean names = opening.isEmpty() || isPlace(table, column);
      if (names || table.needs(column)) {
        opening.add(column);
      } else if (results.contains(column.name()) || isOwn(column)) {
        answers.add(column);
      }
    }
    opening.addAll(answers);
    return List.copyOf(opening);
  }

  private static boolean mayBeTyped(TableDefinition table, Column column) {
    return column.role() == Column.Role.INPUT
        && column.content() != Column.Content.WORDS
        && column.isOptional()
        && table.takesEntries(column);
  }

  /** Says whether a column says in words, right after the name, which row that is. */
  private static boolean isPlace(TableDefinition table, Column column) {
    return column.content() == Column.Content.WORDS && table.columns().indexOf(column) == 1;
  }

  /** Says whether a result is among those looked at first; in a narrow sheet all are. */
  public static boolean shows(TableDefinition table, Column result) {
    List<String> first = RESULTS.get(table.id());
    return first == null || first.contains(result.name()) || isOwn(result);
  }

  /** Says whether a result is one of a wide or long sheet that is looked at first. */
  public static boolean lists(TableDefinition table, Column result) {
    return RESULTS.getOrDefault(table.id(), List.of()).contains(result.name()) || isOwn(result);
  }

  /** Whoever defines a column wants to see it. */
  private static boolean isOwn(Column column) {
    return column.role() == Column.Role.CALCULATED && column.band().equals(Sheets.OWN);
  }

  /** Returns the names of what is looked at first in each of the wide or long sheets. */
  static Map<String, List<String>> results() {
    return RESULTS;
  }
}
