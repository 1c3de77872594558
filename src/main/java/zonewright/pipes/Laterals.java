package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.LATERAL;
import static zonewright.trade.Sheets.PIPES;

import java.util.ArrayList;
import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the laterals: pipes that give off their water to heads on the way. */
public final class Laterals {
  static final PipeRun RUN =
      new PipeRun(
          "lateral", "Lateral", LATERAL, "PVC Class 200", "from the valve to its farthest head");

  public static final Column SIZE = RUN.size;
  public static final Column KIND = RUN.kind;
  public static final Column LENGTH = RUN.length;
  public static final Column RISE = RUN.rise;
  public static final Column OWN = RUN.own;

  public static final Column NEEDED =
      Column.defaulted(
              PIPES,
              "pressure-needed",
              "Pressure needed",
              QuantityKind.PRESSURE,
              Emitters.KINDS
                  .numbers("Working pressure (psi)", QuantityKind.PRESSURE)
                  .of(Emitters.EMITTER))
          .band(LATERAL)
          .within(Bounds.above(0, 200, Units.POUND_PER_SQUARE_INCH))
          .means(
              "Pressure the emitters are made for. Follows from their kind as a rough guide; type over it what their data sheet says"
                  + " for the flow you entered.")
          .source("Table Emitters, by row: common practice, no source.")
          .build();

  public static final Column COUNT =
      Column.defaulted(PIPES, "laterals", "Laterals of a valve", QuantityKind.COUNT, number(1))
          .band(LATERAL)
          .within(Bounds.from(1, 1000, Units.ONE).wholeNumbers())
          .means("Into how many like branches the pipe parts behind the valve.")
          .source("One, unless typed over.")
          .build();

  public static final Column OUTLETS =
      Column.defaulted(
              PIPES,
              "outlets",
              "Lateral outlets",
              QuantityKind.COUNT,
              Valves.HEADS.over(COUNT).roundedUpTo(Units.ONE))
          .band(LATERAL)
          .within(Bounds.from(1, 100_000, Units.ONE).wholeNumbers())
          .means(
              "Heads or emission points on the longest lateral, evenly spaced, the first a full spacing in.")
          .source("Heads spread evenly over the laterals, unless typed over.")
          .build();

  public static final Column FLOW =
      Column.defaulted(
              PIPES,
              "lateral-flow",
              "Lateral flow",
              QuantityKind.FLOW,
              OUTLETS.times(Valves.FLOW_A_HEAD))
          .band(LATERAL)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(2, 1)
          .means("Flow at the beginning of the longest lateral.")
          .source("By definition.")
          .build();

  public static final Column PIECES =
      Column.calculated(
              PIPES,
              "lateral-pieces",
              "Fittings on the laterals",
              QuantityKind.COUNT,
              COUNT.times(OUTLETS.plus(1)).minus(1))
          .band(LATERAL)
          .means("A tee or an elbow for each outlet of each lateral, and a tee wherever they part.")
          .source("Common practice, no source.")
          .build();

  public static final Column INSERTS =
      Column.defaulted(
              PIPES,
              "lateral-inserts",
              "Insert fittings on a lateral",
              QuantityKind.COUNT,
              Formula.when(RUN.kind.is(PipeTables.kindsWithInserts())).then(OUTLETS).otherwise(0))
          .band(LATERAL)
          .within(Bounds.from(0, 100_000, Units.ONE).wholeNumbers())
          .means(
              "Barbed fittings put into the longest lateral, which narrow its bore: one for each outlet of polyethylene made to its"
                  + " inside diameter, none of other pipe.")
          .source("Common practice, no source.")
          .build();

  public static final Column FITTINGS =
      RUN.fittings(
          RUN.fittingsShare().plus(INSERTS.times(PipeLimits.INSERT_LENGTH)),
          "Length of straight pipe that loses as much as the fittings: the fittings allowance, and a length for each insert fitting;"
              + " type over it what you counted.",
          "Fittings allowance and length for an insert fitting of the sheet Supply.");

  public static final Column FACTOR =
      Column.calculated(
              PIPES,
              "outlet-factor",
              "Outlet factor",
              QuantityKind.FACTOR,
              Hydraulics.outletFactor(OUTLETS))
          .band(LATERAL)
          .decimals(3, 3)
          .means(
              "Part of the friction that is left because water leaves the lateral all along its way.")
          .source(Hydraulics.CHRISTIANSEN)
          .build();

  public static final Column ROOM =
      Column.calculated(
              PIPES,
              "lateral-room",
              "Pressure to lose in the lateral",
              QuantityKind.PRESSURE,
              PipeLimits.VARIATION_SHARE
                  .times(NEEDED)
                  .minus(
                      Formula.larger(Formula.zero(QuantityKind.PRESSURE), Hydraulics.lift(RISE))))
          .band(LATERAL)
          .means(
              "What friction in the lateral may take if the heads are to work alike: the variation allowed less the rise.")
          .source("The 20 % rule, from memory.")
          .build();

  public static final Column LEAST_INSIDE =
      RUN.leastInside(
          FLOW,
          Formula.when(ROOM.atMost(Formula.zero(QuantityKind.PRESSURE)))
              .then(
                  Formula.doesNotApply(
                      "too steep",
                      "The rise alone takes more pressure than may vary between the heads."))
              .otherwise(
                  Hydraulics.diameterFor(
                      LENGTH.plus(FITTINGS),
                      FLOW,
                      PipeTables.coefficient(RUN.kind),
                      ROOM.over(FACTOR))),
          "The least diameter that keeps the velocity and leaves the heads within the variation allowed.");

  public static final Column TOO_SMALL = RUN.tooSmall(LEAST_INSIDE);
  public static final Column SMALLEST = RUN.proposed(TOO_SMALL);
  public static final Column LAID_STEP = RUN.laidStep(TOO_SMALL);
  private static final Column PLACE = RUN.place("laid", LAID_STEP);
  public static final Column PIPE =
      RUN.laidPipe(
          PLACE,
          "Pipe of the laterals: the kind and size chosen, or the smallest size that will do.");

  public static final Column INSIDE = RUN.inside(PLACE);
  public static final Column COEFFICIENT = RUN.coefficient();
  public static final Column VELOCITY = RUN.velocity(FLOW, INSIDE);

  public static final Column FRICTION =
      Column.calculated(
              PIPES,
              "lateral-friction",
              "Lateral friction",
              QuantityKind.PRESSURE,
              FACTOR.times(Hydraulics.friction(LENGTH.plus(FITTINGS), FLOW, INSIDE, COEFFICIENT)))
          .band(LATERAL)
          .decimals(2, 1)
          .means(
              "Pressure lost by friction from the valve to the last head, with water leaving on the way.")
          .source(Hydraulics.HAZEN_WILLIAMS + " " + Hydraulics.CHRISTIANSEN)
          .build();

  private Laterals() {}

  static List<Column> columns() {
    List<Column> columns = new ArrayList<>(List.of(NEEDED, COUNT, OUTLETS, PIECES, FLOW));
    columns.addAll(RUN.chosen());
    columns.addAll(
        List.of(
            INSERTS,
            FITTINGS,
            FACTOR,
            ROOM,
            LEAST_INSIDE,
            TOO_SMALL,
            SMALLEST,
            LAID_STEP,
            PLACE,
            PIPE,
            INSIDE,
            COEFFICIENT,
            VELOCITY,
            FRICTION));
    return columns;
  }
}
