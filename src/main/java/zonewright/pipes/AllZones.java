package zonewright.pipes;

import static zonewright.trade.Sheets.ALL_ZONES;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;

/** Columns of one size of pipe that serves every zone. */
public final class AllZones {
  public static final Column LARGEST_VALVE_FLOW =
      Column.calculated(
              SUPPLY,
              "largest-valve-flow",
              "Largest flow of a valve",
              QuantityKind.FLOW,
              Valves.VALVE_FLOW.largest())
          .band(ALL_ZONES)
          .decimals(1, 1)
          .means("The flow of the valve that draws most.")
          .source("By definition.")
          .build();

  public static final Column MAIN_SIZE =
      size(
          "main-for-all",
          "Smallest main for all zones",
          Mains.TOO_SMALL,
          "Nominal size of a main that keeps velocity and pressure for every zone, in the kind of pipe chosen for each.");

  public static final Column LATERAL_SIZE =
      size(
          "lateral-for-all",
          "Smallest lateral for all zones",
          Laterals.TOO_SMALL,
          "Nominal size of lateral that serves every zone, in the kind of pipe chosen for each.");

  private AllZones() {}

  private static Column size(String id, String name, Column tooSmall, String means) {
    Formula largest = tooSmall.largest();
    return Column.calculatedWord(
            SUPPLY,
            id,
            name,
            new WordList.Published(PipeTables.SIZES),
            Formula.when(largest.atLeast(PipeTables.SIZES.size()))
                .then(
                    Formula.refused(
                        "none", "no size of pipe in the table is large enough for every zone"))
                .otherwise(largest))
        .band(ALL_ZONES)
        .means(means)
        .source("The zone that needs most decides.")
        .build();
  }

  static List<Column> columns() {
    return List.of(
        LARGEST_VALVE_FLOW,
        Together.LARGEST_AT_ONCE,
        Together.LARGEST_BESIDE,
        MAIN_SIZE,
        LATERAL_SIZE);
  }
}
