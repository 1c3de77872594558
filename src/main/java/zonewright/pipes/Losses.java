package zonewright.pipes;

import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.VALVES;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what is lost before the main, in the valve and behind it. */
public final class Losses {
  public static final Column FLOWS_BELOW =
      Column.calculated(
              PIPES,
              "meter-flows-below",
              "Meter flows below",
              QuantityKind.COUNT,
              MeterLoss.flowsBelow(Supply.WATER_METER, Together.MAIN_FLOW))
          .band(Sheets.CONNECTION)
          .means("How many flows tabulated for the meter lie below the flow in the main.")
          .source("By counting in the table Meters.")
          .build();

  public static final Column METER_LOSS =
      loss(
          Sheets.CONNECTION,
          "meter-loss",
          "Loss in the meter",
          MeterLoss.at(Supply.WATER_METER.reference(), Together.MAIN_FLOW, FLOWS_BELOW),
          "Pressure lost in the meter while this zone runs.",
          MeterLoss.SOURCE);

  public static final Column SERVICE_LOSS =
      loss(
          Sheets.CONNECTION,
          "service-loss",
          "Loss in the service line",
          Supply.serviceLoss(Together.MAIN_FLOW),
          "Pressure lost by friction in the service line while this zone runs.",
          Hydraulics.HAZEN_WILLIAMS);

  public static final Column SUPPLY_DROP =
      loss(
          Sheets.CONNECTION,
          "supply-drop",
          "Drop of the street main",
          FlowTest.drop(Together.MAIN_FLOW),
          "How far the supply's own pressure falls while this zone runs.",
          "The supply curve of the flow test; none where only the static pressure is known.");

  public static final Column INTO_MAIN =
      loss(
          Sheets.CONNECTION,
          "pressure-into-main",
          "Pressure into the main",
          Supply.connectionPressure(SUPPLY_DROP, METER_LOSS, SERVICE_LOSS),
          "What is left at the connection, behind the backflow device.",
          "By definition: static pressure less all losses and the rise on the way.");

  public static final Column VALVE =
      Column.choice(PIPES, "valve", "Valve of the zone", new WordList.RowsOf(VALVES))
          .band(Sheets.VALVE)
          .optional()
          .means(
              "The valve, from the sheet Valves. Left blank, the usual valve of the sheet Supply.")
          .build();

  public static final Column VALVE_COUNTED =
      Column.calculatedWord(
              PIPES,
              "valve-counted",
              "Valve counted",
              new WordList.RowsOf(VALVES),
              Formula.when(VALVE.given()).then(VALVE).otherwise(PipeLimits.USUAL_VALVE))
          .band(Sheets.VALVE)
          .means("The valve of the zone, or the usual one where none is chosen.")
          .source("By definition.")
          .build();

  public static final Column VALVE_LOSS =
      Column.defaulted(
              PIPES,
              "valve-loss",
              "Valve loss",
              QuantityKind.PRESSURE,
              ValveLosses.at(VALVE_COUNTED, Valves.VALVE_FLOW))
          .band(Sheets.VALVE)
          .within(Bounds.from(0, 100, Units.POUND_PER_SQUARE_INCH))
          .means(
              "Pressure lost in the valve at its flow; a filter or regulator behind it may be added here.")
          .source(ValveLosses.SOURCE)
          .build();

  public static final Column REGULATED =
      Column.input(PIPES, "regulated", "Regulated to", QuantityKind.PRESSURE)
          .band(Sheets.VALVE)
          .within(Bounds.above(0, 200, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means("Setting of a pressure regulator behind the valve; blank where there is none.")
          .build();

  public static final Column FIRST_DROP =
      loss(
          Sheets.LATERAL,
          "first-drop",
          "Drop to the first head",
          Laterals.FRICTION
              .over(Laterals.FACTOR.times(Laterals.OUTLETS))
              .plus(Hydraulics.lift(Laterals.RISE).over(Laterals.OUTLETS)),
          "Friction and rise from the valve to its first head, one spacing in.",
          "By definition: all the lateral's flow over one spacing.");

  public static final Column LAST_DROP =
      loss(
          Sheets.LATERAL,
          "last-drop",
          "Drop to the last head",
          Laterals.FRICTION.plus(Hydraulics.lift(Laterals.RISE)),
          "Friction and rise from the valve to its last head.",
          "By definition.");

  private Losses() {}

  static Column loss(
      String band, String id, String name, Term formula, String means, String source) {
    return Column.calculated(PIPES, id, name, QuantityKind.PRESSURE, formula)
        .band(band)
        .means(means)
        .source(source)
        .build();
  }

  static List<Column> beforeTheMain() {
    return List.of(FLOWS_BELOW, METER_LOSS, SERVICE_LOSS, SUPPLY_DROP, INTO_MAIN);
  }

  static List<Column> ofTheValve() {
    return List.of(VALVE, VALVE_COUNTED, VALVE_LOSS, REGULATED);
  }

  static List<Column> ofTheLateral() {
    return List.of(FIRST_DROP, LAST_DROP);
  }
}
