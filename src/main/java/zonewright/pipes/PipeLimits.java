package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.LIMITS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.SUPPLY;
import static zonewright.trade.Sheets.VALVES;

import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What all pipes, valves and wires of a design keep to. */
public final class PipeLimits {
  public static final Column MOST_VELOCITY =
      Column.defaulted(
              SUPPLY,
              "most-velocity",
              "Greatest velocity in pipes",
              QuantityKind.SPEED,
              Formula.amount(5, Units.FOOT_PER_SECOND))
          .band(LIMITS)
          .within(Bounds.above(0, 50, Units.FOOT_PER_SECOND))
          .means(
              "Speed that water in main line and laterals should not exceed: faster water strikes harder when a valve shuts.")
          .source(
              "At most 5 ft/s: Ohio State University Extension, Bulletin 912, step 6 (verified).")
          .build();

  public static final Column FITTINGS_SHARE =
      Column.defaulted(
              SUPPLY, "fittings-share", "Fittings allowance", QuantityKind.SHARE, number(0.10))
          .band(LIMITS)
          .within(Bounds.from(0, 1, Units.ONE))
          .means(
              "Length of pipe added for fittings, as a part of the length, where they are not counted.")
          .source("Common practice, no source.")
          .build();

  public static final Column INSERT_LENGTH =
      Column.defaulted(
              SUPPLY,
              "insert-length",
              "Length for an insert fitting",
              QuantityKind.PIPE_LENGTH,
              Formula.amount(3, Units.FOOT))
          .band(LIMITS)
          .within(Bounds.from(0, 100, Units.FOOT))
          .means(
              "Straight pipe that loses as much as one barbed fitting put into the pipe; its bore is about eight tenths of the pipe's.")
          .source(
              "As a coupling of 1 in pipe in the table Fittings (verified, secondary); narrowing to 0.8 of the bore and widening again"
                  + " comes to the same (derived). The bore itself is from memory: measure yours.")
          .build();

  public static final Column VARIATION_SHARE =
      Column.defaulted(
              SUPPLY,
              "variation-share",
              "Greatest variation in a zone",
              QuantityKind.SHARE,
              number(0.20))
          .band(LIMITS)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "How far the pressures of the heads on one valve may lie apart, as a part of the pressure they need.")
          .source("The 20 % rule, from memory: it keeps flows within about 10 %.")
          .build();

  /** The limit of the timetable, which is declared with it and stands on this package. */
  private static final Reference MOST_VALVES =
      new Reference(SITE, "most-valves", "Most valves at once", QuantityKind.COUNT);

  public static final Column VALVES_AT_ONCE =
      Column.defaulted(SUPPLY, "valves-at-once", "Valves at once", QuantityKind.COUNT, MOST_VALVES)
          .band(LIMITS)
          .within(Bounds.from(1, 1000, Units.ONE).wholeNumbers())
          .means(
              "How many valves may run at the same time. With more than one, the main carries the largest flows that may run together.")
          .source("Most valves at once of the sheet Site, unless typed over.")
          .build();

  public static final Column USUAL_VALVE =
      Column.choice(SUPPLY, "usual-valve", "Usual valve", new WordList.RowsOf(VALVES))
          .band(LIMITS)
          .optional()
          .means("The valve of every zone for which none is chosen on the sheet Pipes.")
          .build();

  public static final Column VALVE_CURRENT =
      Column.defaulted(
              SUPPLY,
              "valve-current",
              "Current to open a valve",
              QuantityKind.CURRENT,
              Formula.amount(0.4, Units.AMPERE))
          .band(LIMITS)
          .within(Bounds.above(0, 10, Units.AMPERE))
          .means("In-rush current of one valve's solenoid; its data sheet says it.")
          .source("Common practice, no source.")
          .build();

  public static final Column MOST_VOLTAGE_DROP =
      Column.defaulted(
              SUPPLY,
              "most-voltage-drop",
              "Greatest voltage drop",
              QuantityKind.VOLTAGE,
              Formula.amount(4, Units.VOLT))
          .band(LIMITS)
          .within(Bounds.above(0, 24, Units.VOLT))
          .means(
              "Voltage that may be lost on the wires: what the controller puts out under load less what the solenoid needs to open.")
          .source("Common practice for low-voltage valves, no source.")
          .build();

  private PipeLimits() {}
}
