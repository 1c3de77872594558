package zonewright.design;

import java.util.ArrayList;
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
              "Run time January",
              "Run time February",
              "Run time March",
              "Run time April",
              "Run time May",
              "Run time June",
              "Run time July",
              "Run time August",
              "Run time September",
              "Run time October",
              "Run time November",
              "Run time December"),
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
      } else if (results.contains(column.name())) {
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
    return first == null || first.contains(result.name());
  }

  /** Returns the names of the results looked at first in each of the wide sheets. */
  static Map<String, List<String>> results() {
    return RESULTS;
  }
}
