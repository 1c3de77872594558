package zonewright.retrofit;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.LATERAL;
import static zonewright.trade.Sheets.MAIN_LINE;
import static zonewright.trade.Sheets.TAKEOFF;
import static zonewright.trade.Sheets.WIRE;

import java.util.List;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.pipes.PipeTables;
import zonewright.pipes.Wiring;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of what a zone takes of pipe, fittings and wire. They follow from the sheet Pipes where
 * it is filled in.
 */
public final class PipeTakeoff {
  private static final String FROM_PIPES = "The sheet Pipes, unless typed over.";

  private static final WordList SIZES = new WordList.Published(PipeTables.EVERY_PIPE);

  public static final Column MAIN_RUN =
      Column.calculated(
              TAKEOFF,
              "main-run",
              "Main as drawn",
              QuantityKind.LENGTH,
              Formula.when(new Condition.Given(Mains.LENGTH.reference()))
                  .then(Mains.LENGTH.cell())
                  .otherwise(Formula.zero(QuantityKind.LENGTH)))
          .band(MAIN_LINE)
          .means(
              "Length of the main of the sheet Pipes from the connection to the valve; nothing where none is typed.")
          .source("The sheet Pipes.");

  /** Zones whose main ends before this one's. */
  private static final Matching NEARER =
      Matching.rowsWith(MAIN_RUN.reference(), Comparator.BELOW, MAIN_RUN.cell());

  private static final Matching NO_FARTHER =
      Matching.rowsWith(MAIN_RUN.reference(), Comparator.AT_MOST, MAIN_RUN.cell());

  private static final Matching NO_NEARER =
      Matching.rowsWith(MAIN_RUN.reference(), Comparator.AT_LEAST, MAIN_RUN.cell());

  public static final Column LENGTH =
      length(
          "lateral",
          "Lateral pipe",
          LATERAL,
          Laterals.LENGTH.cell().times(Laterals.COUNT.cell()).times(Takeoff.VALVES.cell()),
          "Length of all lateral pipe from the valve to the last head: the lateral of the sheet Pipes, as many of them as a valve"
              + " has. Type over it what you scale off the plan.");

  public static final Column PIPE =
      word(
          "lateral-size",
          "Lateral kind and size",
          LATERAL,
          Laterals.pipeAt(Laterals.LAID_STEP.cell()),
          "Pipe of the laterals: the kind and size chosen on the sheet Pipes, or the smallest size that will do.");

  public static final Column FITTINGS =
      count(
          "lateral-fittings",
          "Lateral fittings",
          LATERAL,
          Takeoff.VALVES
              .cell()
              .times(
                  Formula.when(Takeoff.isLine())
                      .then(Laterals.COUNT.cell())
                      .otherwise(
                          Laterals.COUNT
                              .cell()
                              .times(Laterals.OUTLETS.cell().plus(number(1)))
                              .minus(number(1)))),
          "A tee or an elbow for each head, and a tee wherever the laterals part; one for each lateral where it feeds drip line.",
          "Common practice, no source; from the outlets of the sheet Pipes.");

  public static final Column MAIN =
      length(
          "main",
          "Main pipe",
          MAIN_LINE,
          Formula.when(NEARER.count().atMost(number(0)))
              .then(Mains.LENGTH.cell())
              .otherwise(Mains.LENGTH.cell().minus(NEARER.largest(MAIN_RUN.reference())))
              .over(alike()),
          "The reach of the main that this zone adds: its main on the sheet Pipes, less the longest that ends before it, shared by"
              + " zones that end alike. So all zones add up to one line to the farthest valve; type over it where the main branches.");

  public static final Column MAIN_PIPE =
      word(
          "main-size",
          "Main kind and size",
          MAIN_LINE,
          Mains.pipeAt(NO_NEARER.largest(Mains.LAID_STEP.reference())),
          "Pipe of this reach of the main: of the zone's kind, and as large as this zone and those beyond it ask for.");

  public static final Column MAIN_FITTINGS =
      count(
          "main-fittings",
          "Main fittings",
          MAIN_LINE,
          Formula.larger(number(0), elbows())
              .over(alike())
              .plus(
                  Formula.when(Mains.TEES.cell().above(number(0)))
                      .then(Mains.TEES.cell())
                      .otherwise(Takeoff.VALVES.cell())),
          "Elbows of this reach of the main, and a tee for each valve unless tees are counted.",
          "Common practice, no source; from the fittings counted on the sheet Pipes.");

  public static final Column STATION_WIRE =
      length(
          "wire",
          "Station wire",
          WIRE,
          Wiring.RUN.cell().times(Takeoff.VALVES.cell()),
          "Length of the zone's own wire from the controller to its valve: the wire run of the sheet Pipes.");

  public static final Column LENGTH_NEW =
      laid(
          LENGTH,
          QuantityKind.LENGTH,
          there(),
          "Pipe to be laid: none where the zone was there before, all of it where it is new, unless you type it.");

  public static final Column FITTINGS_NEW =
      laid(
          FITTINGS,
          QuantityKind.COUNT,
          there(),
          "Fittings to be laid: none where the zone was there before, unless you type them.");

  public static final Column MAIN_NEW =
      laid(
          MAIN,
          QuantityKind.LENGTH,
          there(),
          "Main to be laid: none where the zone was there before, unless you type it.");

  public static final Column MAIN_FITTINGS_NEW =
      laid(
          MAIN_FITTINGS,
          QuantityKind.COUNT,
          there(),
          "Fittings of the main to be laid: none where the zone was there before, unless you type them.");

  public static final Column WIRE_NEW =
      laid(
          STATION_WIRE,
          QuantityKind.LENGTH,
          Difference.VALVES_NEW.cell().atMost(number(0)),
          "Wire to be laid: none where no valve is new, otherwise all of it, unless you type it.");

  private PipeTakeoff() {}

  /** How many zones share the end of the main with this one, itself counted. */
  private static Formula alike() {
    return NO_FARTHER.count().minus(NEARER.count());
  }

  private static Formula elbows() {
    return Formula.when(NEARER.count().atMost(number(0)))
        .then(Mains.ELBOWS.cell())
        .otherwise(Mains.ELBOWS.cell().minus(NEARER.largest(Mains.ELBOWS.reference())));
  }

  private static Column length(String id, String name, String band, Formula formula, String means) {
    return Column.defaulted(TAKEOFF, id, name, QuantityKind.LENGTH, formula)
        .band(band)
        .within(Bounds.from(0, 200_000, Units.FOOT))
        .means(means)
        .source(FROM_PIPES);
  }

  private static Column count(
      String id, String name, String band, Formula formula, String means, String source) {
    return Column.defaulted(TAKEOFF, id, name, QuantityKind.COUNT, formula)
        .band(band)
        .within(Bounds.from(0, 1_000_000, Units.ONE))
        .decimals(1, 1)
        .means(means)
        .source(source);
  }

  private static Column word(String id, String name, String band, Formula formula, String means) {
    return Column.calculatedWord(TAKEOFF, id, name, SIZES, formula)
        .band(band)
        .means(means)
        .source("The sheet Pipes.");
  }

  /** Returns the columns in their order. */
  static List<Column> columns() {
    return List.of(
        LENGTH,
        PIPE,
        LENGTH_NEW,
        FITTINGS,
        FITTINGS_NEW,
        MAIN_RUN,
        MAIN,
        MAIN_PIPE,
        MAIN_NEW,
        MAIN_FITTINGS,
        MAIN_FITTINGS_NEW,
        STATION_WIRE,
        WIRE_NEW);
  }

  private static Condition there() {
    return Difference.ZONES_FOUND.cell().above(number(0));
  }

  private static Column laid(Column needed, QuantityKind kind, Condition stays, String means) {
    Column column =
        Column.defaulted(
                TAKEOFF,
                needed.reference().column() + "-new",
                needed.name() + " new",
                kind,
                Formula.when(stays).then(Formula.zero(kind)).otherwise(needed.cell()))
            .band(needed.band())
            .means(means)
            .source("Common practice, no source.");
    return kind == QuantityKind.COUNT
        ? column.within(Bounds.from(0, 1_000_000, Units.ONE)).decimals(1, 1)
        : column.within(Bounds.from(0, 200_000, Units.FOOT));
  }
}
