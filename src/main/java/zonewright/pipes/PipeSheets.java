package zonewright.pipes;

import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.SUPPLY;
import static zonewright.trade.Sheets.VALVES;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** The sheets of the way of the water. */
public final class PipeSheets {
  private PipeSheets() {}

  /** Returns the sheet of the supply: one row. */
  public static TableDefinition supply() {
    List<Column> columns = new ArrayList<>(Supply.columns());
    columns.addAll(PressureClass.ofSupply());
    columns.addAll(
        List.of(
            PipeLimits.MOST_VELOCITY,
            PipeLimits.FITTINGS_SHARE,
            PipeLimits.INSERT_LENGTH,
            PipeLimits.VARIATION_SHARE,
            PipeLimits.VALVES_AT_ONCE,
            PipeLimits.USUAL_VALVE,
            PipeLimits.VALVE_CURRENT,
            PipeLimits.MOST_VOLTAGE_DROP));
    columns.addAll(AllZones.columns());
    return new TableDefinition(SUPPLY, "Supply", "supply", new TableDefinition.Rows.One(), columns);
  }

  /** Returns the sheet of valves to choose among. */
  public static TableDefinition valves() {
    return new TableDefinition(
        VALVES, "Valves", "valve", new TableDefinition.Rows.Free(), ValveLosses.columns());
  }

  /** Returns the sheet of pipes the designer adds. */
  public static TableDefinition materials() {
    return new TableDefinition(
        MATERIALS, "Materials", "pipe", new TableDefinition.Rows.Free(), OwnPipes.columns());
  }

  /** Returns the sheet with a row for each zone; it stands after the zones. */
  public static TableDefinition pipes() {
    List<Column> columns =
        Stream.of(
                List.of(
                    Valves.ZONE,
                    Valves.FLOW_A_HEAD,
                    Valves.MOST_HEADS,
                    Valves.VALVES_NEEDED,
                    Valves.HEADS,
                    Valves.VALVE_FLOW),
                Together.ofZones(),
                Losses.beforeTheMain(),
                Mains.columns(),
                Reaches.columns(),
                Losses.ofTheValve(),
                Laterals.columns(),
                Losses.ofTheLateral(),
                Pressures.columns(),
                PressureClass.ofZones(),
                Wiring.columns())
            .flatMap(List::stream)
            .toList();
    return new TableDefinition(
            PIPES, "Pipes", "zone", new TableDefinition.Rows.Alongside(ZONES), columns)
        .without(List.of("Loss of the usual valve"));
  }
}
