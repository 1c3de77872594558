package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CONNECTION;
import static zonewright.trade.Sheets.FLOW;
import static zonewright.trade.Sheets.METER;
import static zonewright.trade.Sheets.RULES;
import static zonewright.trade.Sheets.SERVICE_LINE;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the way from the street main to the connection, and of the flow it can give. */
public final class Supply {
  public static final Column WATER_METER =
      Column.choice(SUPPLY, "meter", "Water meter", new WordList.Published(PipeTables.METERS))
          .band(METER)
          .optional()
          .means("Size of the water meter, as its lid or the utility says.")
          .build();

  public static final Column SAFE_FLOW =
      Column.calculated(
              SUPPLY,
              "meter-safe-flow",
              "Safe flow of the meter",
              QuantityKind.FLOW,
              PipeTables.safeFlow(WATER_METER))
          .band(METER)
          .decimals(1, 1)
          .means("The most the meter may ever carry.")
          .source(
              "Table Meters. Texas 30 TAC 344.62 forbids use beyond published limits, the meter included (verified).")
          .build();

  public static final Column METER_SHARE =
      Column.defaulted(
              SUPPLY, "meter-share", "Part of the safe flow used", QuantityKind.SHARE, number(0.75))
          .band(METER)
          .within(Bounds.above(0, 1, Units.ONE))
          .means("How much of the meter's safe flow a design may count on.")
          .source("Common practice, from memory.")
          .build();

  public static final Column METER_LOSS_SHARE =
      Column.defaulted(
              SUPPLY,
              "meter-loss-share",
              "Part of the pressure lost in the meter",
              QuantityKind.SHARE,
              number(0.10))
          .band(METER)
          .within(Bounds.above(0, 1, Units.ONE))
          .means("How much of the static pressure may be lost in the meter.")
          .source("Common practice, from memory.")
          .build();

  public static final Column LOSSES_BELOW =
      Column.calculated(
              SUPPLY,
              "meter-losses-below",
              "Tabulated losses below",
              QuantityKind.COUNT,
              MeterLoss.lossesBelow(
                  WATER_METER.reference(), METER_LOSS_SHARE.times(FlowTest.STATIC_PRESSURE)))
          .band(METER)
          .means(
              "How many losses tabulated for the meter lie below the part of the static pressure it may take.")
          .source("By counting in the table Meters.")
          .build();

  public static final Column METER_LIMIT =
      Column.calculated(
              SUPPLY,
              "meter-limit",
              "Flow the meter allows",
              QuantityKind.FLOW,
              Formula.smaller(
                  METER_SHARE.times(SAFE_FLOW),
                  MeterLoss.flowFor(
                      WATER_METER.reference(),
                      METER_LOSS_SHARE.times(FlowTest.STATIC_PRESSURE),
                      LOSSES_BELOW)))
          .band(METER)
          .decimals(1, 1)
          .means(
              "The smaller of two: the part of the safe flow used, and the flow at which the meter takes its part of the pressure.")
          .source(MeterLoss.SOURCE)
          .build();

  public static final Column SERVICE_KIND =
      Column.choice(
              SUPPLY,
              "service-pipe",
              "Service pipe",
              new WordList.Fixed(PipeTables.KINDS.keys()),
              "copper type K")
          .band(SERVICE_LINE)
          .means("Kind of pipe from the street main through the meter to the connection.")
          .build();

  public static final Column SERVICE_SIZE =
      Column.choice(
              SUPPLY, "service-size", "Service size", new WordList.Published(PipeTables.SIZES))
          .band(SERVICE_LINE)
          .optional()
          .means("Nominal size of the service line.")
          .build();

  public static final Column SERVICE_LENGTH =
      Column.input(SUPPLY, "service-length", "Service length", QuantityKind.PIPE_LENGTH)
          .band(SERVICE_LINE)
          .within(Bounds.from(0, 5000, Units.FOOT))
          .optional()
          .means("Length of the service line, from the street main to the connection.")
          .build();

  public static final Column SERVICE_RISE =
      Column.defaulted(
              SUPPLY,
              "service-rise",
              "Elevation of the connection",
              QuantityKind.LENGTH,
              Formula.zero(QuantityKind.LENGTH))
          .band(SERVICE_LINE)
          .within(Bounds.from(-1000, 1000, Units.FOOT))
          .means(
              "How much higher the connection lies than the place where the pressure was read; below it, a negative number.")
          .source("As level unless typed over.")
          .build();

  public static final Column RISE_LOSS =
      Column.calculated(
              SUPPLY,
              "service-rise-loss",
              "Pressure the elevation takes",
              QuantityKind.PRESSURE,
              Hydraulics.lift(SERVICE_RISE))
          .band(SERVICE_LINE)
          .means("Pressure lost by climbing to the connection; below zero where it lies lower.")
          .source("1 psi = 2.307 ft of water, verified; water of 1000 kg/m³.")
          .build();

  static final Column SERVICE_PLACE =
      Column.calculated(
              SUPPLY,
              "service-place",
              "Service place of the size",
              QuantityKind.COUNT,
              PipeTables.place(SERVICE_KIND.reference(), PipeTables.step(SERVICE_SIZE)))
          .band(SERVICE_LINE)
          .means("Which size it is of those this kind of pipe is made in, the smallest first.")
          .source("By counting in the table PipeDiameters.")
          .build();

  public static final Column SERVICE_INSIDE =
      Column.defaulted(
              SUPPLY,
              "service-inside",
              "Service inside diameter",
              QuantityKind.DIAMETER,
              PipeTables.diameterMade(SERVICE_KIND.reference(), SERVICE_PLACE))
          .band(SERVICE_LINE)
          .within(Bounds.above(0, 48, Units.INCH))
          .means(
              "Follows from kind and size; type over it what you measured or another table says.")
          .source("Table PipeDiameters, by row.")
          .build();

  public static final Column SERVICE_MOST_VELOCITY =
      Column.defaulted(
              SUPPLY,
              "service-most-velocity",
              "Greatest velocity in the service line",
              QuantityKind.SPEED,
              Formula.amount(7.5, Units.FOOT_PER_SECOND))
          .band(SERVICE_LINE)
          .within(Bounds.above(0, 50, Units.FOOT_PER_SECOND))
          .means("Speed that the water in the service line should not exceed.")
          .source("Common practice for metal pipe, no source; 5 ft/s is usual in plastic.")
          .build();

  public static final Column SERVICE_LIMIT =
      Column.calculated(
              SUPPLY,
              "service-limit",
              "Flow the service line allows",
              QuantityKind.FLOW,
              Hydraulics.flowAt(SERVICE_MOST_VELOCITY, SERVICE_INSIDE))
          .band(SERVICE_LINE)
          .decimals(1, 1)
          .means("Flow at which the service line reaches its greatest velocity.")
          .source(Hydraulics.VELOCITY)
          .build();

  public static final Column BACKFLOW_DEVICE =
      Column.choice(
              SUPPLY,
              "backflow-device",
              "Backflow device",
              new WordList.Published(PipeTables.BACKFLOW))
          .band(CONNECTION)
          .optional()
          .means(
              "Kind of backflow device at the connection. Which kind is required, how high it stands and who tests it is set by"
                  + " plumbing code and water supplier, not by its loss.")
          .build();

  public static final Column BACKFLOW_LOSS =
      Column.defaulted(
              SUPPLY,
              "backflow-loss",
              "Backflow device loss",
              QuantityKind.PRESSURE,
              PipeTables.BACKFLOW
                  .numbers("Pressure loss (psi)", QuantityKind.PRESSURE)
                  .of(BACKFLOW_DEVICE))
          .band(CONNECTION)
          .within(Bounds.from(0, 100, Units.POUND_PER_SQUARE_INCH))
          .means(
              "Pressure lost in the backflow device. The usual figure is a rough one: type over it the published loss at your flow,"
                  + " or 0 where there truly is no device.")
          .source("Table Backflow, by row.")
          .build();

  public static final Column REGULATED =
      Column.input(SUPPLY, "regulated", "Main regulated to", QuantityKind.PRESSURE)
          .band(CONNECTION)
          .within(Bounds.above(0, 200, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means("Setting of a pressure regulator at the connection; blank where there is none.")
          .build();

  private static final Condition METER_KNOWN = WATER_METER.given();
  private static final Condition SERVICE_KNOWN = SERVICE_SIZE.given();
  private static final Condition TEST_KNOWN =
      FlowTest.WORKING_PRESSURE.given().and(FlowTest.is(FlowTest.STATIC_ALONE).negated());

  public static final Column USABLE_FLOW =
      Column.calculated(
              SUPPLY,
              "usable-flow",
              "Usable flow",
              QuantityKind.FLOW,
              Formula.when(METER_KNOWN)
                  .then(withService(METER_LIMIT, Formula.smaller(METER_LIMIT, SERVICE_LIMIT)))
                  .otherwise(
                      Formula.when(SERVICE_KNOWN)
                          .then(withTest(SERVICE_LIMIT))
                          .otherwise(
                              Formula.when(TEST_KNOWN)
                                  .then(FlowTest.FLOW_AT_PRESSURE)
                                  .otherwise(METER_LIMIT))))
          .band(FLOW)
          .decimals(1, 1)
          .means(
              "Flow the design may draw at once: the least of what the meter, the service line and the flow test allow, as far as"
                  + " they are given.")
          .source("By definition; where each limit comes from stands beside it.")
          .build();

  private static Formula withService(Term without, Term with) {
    return Formula.when(SERVICE_KNOWN).then(withTest(with)).otherwise(withTest(without));
  }

  private static Formula withTest(Term limit) {
    return Formula.when(TEST_KNOWN)
        .then(Formula.smaller(limit, FlowTest.FLOW_AT_PRESSURE))
        .otherwise(limit);
  }

  /** The site's own figure, from long before there was a sheet of the supply. */
  public static final Column AVAILABLE_FLOW =
      Column.defaulted(SITE, "available-flow", "Available flow", QuantityKind.FLOW, USABLE_FLOW)
          .band(RULES)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(1, 1)
          .means(
              "Flow the supply can give at working pressure. Follows from the sheet Supply; type over it what a flow test shows.")
          .source("Usable flow of the sheet Supply.")
          .build();

  public static final Column FLOW_AT_ONCE =
      Column.defaulted(
              SUPPLY, "flow-at-once", "Largest flow at once", QuantityKind.FLOW, AVAILABLE_FLOW)
          .band(FLOW)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(1, 1)
          .means(
              "The most that is drawn at one time, by all valves that run together. The losses below are for it; each zone's own"
                  + " stand on the sheet Pipes.")
          .source("All the available flow, unless typed over.")
          .build();

  public static final Column FLOWS_BELOW =
      Column.calculated(
              SUPPLY,
              "meter-flows-below",
              "Tabulated flows below",
              QuantityKind.COUNT,
              MeterLoss.flowsBelow(WATER_METER, FLOW_AT_ONCE))
          .band(FLOW)
          .means("How many flows tabulated for the meter lie below the largest flow at once.")
          .source("By counting in the table Meters.")
          .build();

  public static final Column METER_LOSS =
      Column.calculated(
              SUPPLY,
              "meter-loss",
              "Meter loss",
              QuantityKind.PRESSURE,
              MeterLoss.at(WATER_METER, FLOW_AT_ONCE, FLOWS_BELOW))
          .band(FLOW)
          .means("Pressure lost in the meter at the largest flow at once.")
          .source(MeterLoss.SOURCE)
          .build();

  public static final Column SERVICE_VELOCITY =
      Column.calculated(
              SUPPLY,
              "service-velocity",
              "Velocity in the service line",
              QuantityKind.SPEED,
              Hydraulics.velocity(FLOW_AT_ONCE, SERVICE_INSIDE))
          .band(FLOW)
          .means("Speed of the water in the service line at the largest flow at once.")
          .source(Hydraulics.VELOCITY)
          .build();

  public static final Column SERVICE_LOSS =
      Column.calculated(
              SUPPLY,
              "service-loss",
              "Service line friction",
              QuantityKind.PRESSURE,
              serviceLoss(FLOW_AT_ONCE))
          .band(FLOW)
          .means("Pressure lost by friction in the service line at the largest flow at once.")
          .source(Hydraulics.HAZEN_WILLIAMS)
          .build();

  public static final Column SUPPLY_DROP =
      Column.calculated(
              SUPPLY,
              "supply-drop",
              "Drop of the supply",
              QuantityKind.PRESSURE,
              FlowTest.drop(FLOW_AT_ONCE))
          .band(FLOW)
          .means("How far the supply's own pressure falls at the largest flow at once.")
          .source(
              "The supply curve of the flow test; none where only the static pressure is known.")
          .build();

  public static final Column CONNECTION_PRESSURE =
      Column.calculated(
              SUPPLY,
              "connection-pressure",
              "Pressure at the connection",
              QuantityKind.PRESSURE,
              connectionPressure(SUPPLY_DROP, METER_LOSS, SERVICE_LOSS))
          .band(FLOW)
          .means("What is left behind the backflow device at the largest flow at once.")
          .source(
              "By definition: static pressure less all losses and the rise on the way, and no more than a regulator lets through.")
          .build();

  private Supply() {}

  /** Returns the friction of the service line at a flow. */
  static Formula serviceLoss(Term flow) {
    return Hydraulics.friction(
        SERVICE_LENGTH, flow, SERVICE_INSIDE, PipeTables.coefficient(SERVICE_KIND));
  }

  /** Returns the pressure behind the backflow device, from the losses before it. */
  static Formula connectionPressure(Term drop, Term meterLoss, Term serviceLoss) {
    Formula behindDevice =
        FlowTest.STATIC_PRESSURE.minus(drop).minus(RISE_LOSS).minus(BACKFLOW_LOSS);
    Formula reached =
        Formula.when(FlowTest.is(FlowTest.DOWNSTREAM))
            .then(behindDevice)
            .otherwise(behindDevice.minus(meterLoss).minus(serviceLoss));
    return Formula.when(REGULATED.given())
        .then(Formula.smaller(REGULATED, reached))
        .otherwise(reached);
  }

  /** Returns the columns of the sheet in their order. */
  public static List<Column> columns() {
    return List.of(
        FlowTest.STATIC_PRESSURE,
        FlowTest.BASIS,
        FlowTest.FIRST_FLOW,
        FlowTest.FIRST_PRESSURE,
        FlowTest.SECOND_FLOW,
        FlowTest.SECOND_PRESSURE,
        FlowTest.THIRD_FLOW,
        FlowTest.THIRD_PRESSURE,
        FlowTest.DROP,
        FlowTest.WORKING_PRESSURE,
        FlowTest.FLOW_AT_PRESSURE,
        WATER_METER,
        SAFE_FLOW,
        METER_SHARE,
        METER_LOSS_SHARE,
        LOSSES_BELOW,
        METER_LIMIT,
        SERVICE_KIND,
        SERVICE_SIZE,
        SERVICE_LENGTH,
        SERVICE_RISE,
        RISE_LOSS,
        SERVICE_PLACE,
        SERVICE_INSIDE,
        SERVICE_MOST_VELOCITY,
        SERVICE_LIMIT,
        BACKFLOW_DEVICE,
        BACKFLOW_LOSS,
        REGULATED,
        USABLE_FLOW,
        FLOW_AT_ONCE,
        FLOWS_BELOW,
        METER_LOSS,
        SERVICE_VELOCITY,
        SERVICE_LOSS,
        SUPPLY_DROP,
        CONNECTION_PRESSURE);
  }
}
