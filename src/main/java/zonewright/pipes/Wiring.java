package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.WIRE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Columns of the low-voltage wire from the controller to a valve. */
public final class Wiring {
  private static final ReferenceTable.Numbers RESISTANCES =
      PipeTables.WIRES.numbers("Resistance (ohm/1000 ft)", QuantityKind.RESISTANCE);

  private static final String PRACTICE =
      "Common practice for low-voltage valve circuits: voltage lost = run × resistance × current, once for the valve's own wire and once for the common wire, which carries the current of all valves open at once. Wiring rules and a licensed"
          + " electrician decide, not this sum.";

  public static final Column RUN =
      Column.input(PIPES, "wire-run", "Wire run", QuantityKind.PIPE_LENGTH)
          .band(WIRE)
          .within(Bounds.from(0, 50_000, Units.FOOT))
          .optional()
          .means(
              "Length of wire from the controller to the valve, one way; the way back is counted too.")
          .build();

  public static final Column TOGETHER =
      Column.defaulted(
              PIPES,
              "valves-together",
              "Valves on the common wire",
              QuantityKind.COUNT,
              PipeLimits.VALVES_AT_ONCE)
          .band(WIRE)
          .within(Bounds.from(1, 1000, Units.ONE).wholeNumbers())
          .means(
              "How many valves draw their current through the common wire of this run at the same time.")
          .source("Valves at once of the sheet Supply.")
          .build();

  public static final Column MOST_RESISTANCE =
      Column.calculated(
              PIPES,
              "wire-most-resistance",
              "Wire resistance at most",
              QuantityKind.RESISTANCE,
              Formula.when(RUN.atMost(Formula.zero(QuantityKind.LENGTH)))
                  .then(Formula.doesNotApply("no run", "The valve stands at the controller."))
                  .otherwise(
                      PipeLimits.MOST_VOLTAGE_DROP.over(
                          RUN.times(PipeLimits.VALVE_CURRENT).times(number(1).plus(TOGETHER)))))
          .band(WIRE)
          .means("Resistance of a length of wire at which all the voltage drop allowed is used.")
          .source(PRACTICE)
          .build();

  public static final Column SMALLEST =
      Column.calculatedWord(
              PIPES,
              "smallest-wire",
              "Smallest wire",
              new WordList.Published(PipeTables.WIRES),
              Formula.when(MOST_RESISTANCE.below(resistance(PipeTables.WIRES.size() - 1)))
                  .then(
                      Formula.refused(
                          "none",
                          "no wire of the table is thick enough; shorten the run or let fewer valves open at once"))
                  .otherwise(tooThin()))
          .band(WIRE)
          .means("The thinnest wire of the table Wires that keeps the voltage drop.")
          .source("Table Wires, by row. " + PRACTICE)
          .build();

  public static final Column WIRE_CHOSEN =
      Column.choice(PIPES, "wire", "Wire", new WordList.Published(PipeTables.WIRES))
          .band(WIRE)
          .optional()
          .means("Wire laid, solid copper. Left blank, the smallest that keeps the voltage drop.")
          .build();

  public static final Column RESISTANCE =
      Column.defaulted(
              PIPES,
              "wire-resistance",
              "Wire resistance",
              QuantityKind.RESISTANCE,
              Formula.when(WIRE_CHOSEN.given())
                  .then(RESISTANCES.of(WIRE_CHOSEN))
                  .otherwise(RESISTANCES.of(SMALLEST)))
          .band(WIRE)
          .within(Bounds.above(0, 1000, Units.OHM_PER_THOUSAND_FEET))
          .means("Resistance of a length of one conductor.")
          .source(
              "NFPA 70 chapter 9 table 8, solid uncoated copper at 75 °C, verified (secondary): on the safe side, a wire in the ground"
                  + " is cooler.")
          .build();

  public static final Column DROP =
      Column.calculated(
              PIPES,
              "voltage-drop",
              "Voltage drop",
              QuantityKind.VOLTAGE,
              RUN.times(RESISTANCE).times(PipeLimits.VALVE_CURRENT).times(number(1).plus(TOGETHER)))
          .band(WIRE)
          .decimals(2, 2)
          .means("Voltage lost on the way to the valve and back while it opens.")
          .source(PRACTICE)
          .build();

  private Wiring() {}

  private static Formula resistance(int wire) {
    return Formula.amount(
        RESISTANCES.value(wire, UnitSystem.US), QuantityKind.RESISTANCE.unit(UnitSystem.US));
  }

  /** How many wires, from the thinnest on, resist too much. */
  private static Formula tooThin() {
    Formula count = number(0);
    for (int wire = 0; wire < PipeTables.WIRES.size() - 1; wire++) {
      Formula one = Formula.when(MOST_RESISTANCE.below(resistance(wire))).then(1).otherwise(0);
      count = wire == 0 ? one : count.plus(one);
    }
    return count;
  }

  static List<Column> columns() {
    return List.of(RUN, TOGETHER, MOST_RESISTANCE, SMALLEST, WIRE_CHOSEN, RESISTANCE, DROP);
  }
}
