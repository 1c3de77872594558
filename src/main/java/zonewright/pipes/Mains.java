package zonewright.pipes;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.MAIN_LINE;
import static zonewright.trade.Sheets.PIPES;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the main line from the connection to the valve, which is always under pressure. */
public final class Mains {
  static final PipeRun RUN =
      new PipeRun("main", "Main", MAIN_LINE, "PVC Schedule 40", "from the connection to the valve");

  public static final Column SIZE = RUN.size;
  public static final Column KIND = RUN.kind;
  public static final Column LENGTH = RUN.length;
  public static final Column RISE = RUN.rise;
  public static final Column OWN = RUN.own;

  public static final Column ELBOWS = fitting("main-elbows", "Main elbows", "90° elbows");
  public static final Column TEES =
      fitting("main-tees", "Main tees", "tees in which the water turns into the side outlet");

  private static Column fitting(String id, String name, String what) {
    return Column.defaulted(PIPES, id, name, QuantityKind.COUNT, number(0))
        .band(MAIN_LINE)
        .within(Bounds.from(0, 10_000, Units.ONE).wholeNumbers())
        .means("How many " + what + " the water passes. Counted only once a size is chosen.")
        .source("None counted, unless typed over.")
        .build();
  }

  private static final Formula COUNTED =
      ELBOWS
          .times(PipeTables.fitting(SIZE, "elbow 90 degrees"))
          .plus(TEES.times(PipeTables.fitting(SIZE, "tee side outlet")));

  public static final Column FITTINGS =
      RUN.fittings(
          Formula.when(SIZE.given())
              .then(
                  Formula.when(ELBOWS.plus(TEES).above(0))
                      .then(COUNTED)
                      .otherwise(RUN.fittingsShare()))
              .otherwise(RUN.fittingsShare()),
          "Length of straight pipe that loses as much as the fittings: of those counted, or else the fittings allowance.",
          "Table Fittings, verified (secondary); or the fittings allowance of the sheet Supply.");

  public static final Column ROOM =
      Losses.loss(
          MAIN_LINE,
          "main-room",
          "Pressure to lose in the main",
          Losses.INTO_MAIN
              .minus(Hydraulics.lift(RISE))
              .minus(Losses.VALVE_LOSS)
              .minus(Formula.larger(Losses.FIRST_DROP, Losses.LAST_DROP))
              .minus(Laterals.NEEDED),
          "What friction in the main may take so that the worst head still gets what it needs.",
          "By definition.");

  public static final Column LEAST_INSIDE =
      RUN.leastInside(
          Together.MAIN_FLOW,
          Formula.when(ROOM.atMost(Formula.zero(QuantityKind.PRESSURE)))
              .then(
                  Formula.doesNotApply(
                      "no pressure", "No pressure is left for the main, however wide it is."))
              .otherwise(
                  Hydraulics.diameterFor(
                      LENGTH.plus(FITTINGS),
                      Together.MAIN_FLOW,
                      PipeTables.coefficient(RUN.kind),
                      ROOM)),
          "The least diameter that keeps the velocity and leaves the worst head the pressure it needs.");

  public static final Column TOO_SMALL = RUN.tooSmall(LEAST_INSIDE);
  public static final Column SMALLEST = RUN.proposed(TOO_SMALL);
  public static final Column LAID_STEP = RUN.laidStep(TOO_SMALL);
  private static final Column PLACE = RUN.place("laid", LAID_STEP);
  public static final Column INSIDE = RUN.inside(PLACE);
  public static final Column COEFFICIENT = RUN.coefficient();
  public static final Column VELOCITY = RUN.velocity(Together.MAIN_FLOW, INSIDE);
  public static final Column FRICTION =
      RUN.friction(
          FITTINGS,
          Together.MAIN_FLOW,
          INSIDE,
          COEFFICIENT,
          "Pressure lost by friction from the connection to the valve.");

  private Mains() {}

  static List<Column> columns() {
    List<Column> columns = new ArrayList<>(RUN.chosen());
    columns.addAll(
        List.of(
            ELBOWS,
            TEES,
            FITTINGS,
            ROOM,
            LEAST_INSIDE,
            TOO_SMALL,
            SMALLEST,
            LAID_STEP,
            PLACE,
            INSIDE,
            COEFFICIENT,
            VELOCITY,
            FRICTION));
    return columns;
  }
}
