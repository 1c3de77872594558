package zonewright.retrofit;

import static zonewright.trade.Sheets.LATERAL;
import static zonewright.trade.Sheets.MAIN_LINE;
import static zonewright.trade.Sheets.MATERIALS;
import static zonewright.trade.Sheets.TAKEOFF;
import static zonewright.trade.Sheets.WIRE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.pipes.PipeTables;
import zonewright.pipes.Reaches;
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

  public static final Column LENGTH =
      length(
          "lateral",
          "Lateral pipe",
          LATERAL,
          Laterals.LENGTH.times(Laterals.COUNT).times(Takeoff.VALVES),
          "Length of all lateral pipe from the valve to the last head: the lateral of the sheet Pipes, as many of them as a valve"
              + " has. Type over it what you scale off the plan.");

  public static final Column PIPE =
      word(
          "lateral-size",
          "Lateral kind and size",
          LATERAL,
          Laterals.PIPE,
          "Pipe of the laterals: the kind and size chosen on the sheet Pipes, or the smallest size that will do.");

  public static final Column OWN = own("lateral-own", "Lateral of your own", LATERAL, Laterals.OWN);

  public static final Column FITTINGS =
      count(
          "lateral-fittings",
          "Fittings of the laterals",
          LATERAL,
          Takeoff.VALVES.times(
              Formula.when(Takeoff.isLine()).then(Laterals.COUNT).otherwise(Laterals.PIECES)),
          "A tee or an elbow for each head, and a tee wherever the laterals part; one for each lateral where it feeds drip line.",
          "Common practice, no source; from the outlets of the sheet Pipes.");

  public static final Column MAIN =
      length(
          "main",
          "Main run",
          MAIN_LINE,
          Reaches.REACH,
          "The reach of the main that this zone adds, so that all zones add up to one line to the farthest valve. Type over it"
              + " where the main branches.");

  public static final Column MAIN_PIPE =
      word(
          "main-size",
          "Main kind and size",
          MAIN_LINE,
          Reaches.PIPE,
          "Pipe of this reach of the main: of the zone's kind, and as large as this zone and those beyond it ask for.");

  public static final Column MAIN_OWN = own("main-own", "Main of your own", MAIN_LINE, Mains.OWN);

  public static final Column MAIN_FITTINGS =
      count(
          "main-fittings",
          "Fittings of the main",
          MAIN_LINE,
          Reaches.ELBOWS.plus(
              Formula.when(Mains.TEES.above(0)).then(Mains.TEES).otherwise(Takeoff.VALVES)),
          "Elbows of this reach of the main, and a tee for each valve unless tees are counted.",
          "Common practice, no source; from the fittings counted on the sheet Pipes.");

  public static final Column STATION_WIRE =
      length(
          "wire",
          "Station wire",
          WIRE,
          Wiring.RUN.times(Takeoff.VALVES),
          "Length of the zone's own wire from the controller to its valve: the wire run of the sheet Pipes.");

  public static final Column WIRE_SIZE =
      Column.calculatedWord(
              TAKEOFF,
              "wire-size",
              "Station wire size",
              new WordList.Published(PipeTables.WIRES),
              Formula.when(Wiring.WIRE_CHOSEN.given())
                  .then(Wiring.WIRE_CHOSEN)
                  .otherwise(Wiring.SMALLEST))
          .band(WIRE)
          .means(
              "Size of the zone's own wire: the one chosen on the sheet Pipes, or the thinnest that keeps the voltage drop.")
          .source("The sheet Pipes.")
          .build();

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
          Difference.VALVES_NEW.atMost(0),
          "Wire to be laid: none where no valve is new, otherwise all of it, unless you type it.");

  private PipeTakeoff() {}

  private static Column length(String id, String name, String band, Term formula, String means) {
    return Column.defaulted(TAKEOFF, id, name, QuantityKind.LENGTH, formula)
        .band(band)
        .within(Bounds.from(0, 200_000, Units.FOOT))
        .means(means)
        .source(FROM_PIPES)
        .build();
  }

  private static Column count(
      String id, String name, String band, Term formula, String means, String source) {
    return Column.defaulted(TAKEOFF, id, name, QuantityKind.COUNT, formula)
        .band(band)
        .within(Bounds.from(0, 1_000_000, Units.ONE))
        .decimals(1, 1)
        .means(means)
        .source(source)
        .build();
  }

  private static Column word(String id, String name, String band, Column laid, String means) {
    return Column.calculatedWord(TAKEOFF, id, name, SIZES, laid)
        .band(band)
        .means(means)
        .source("The sheet Pipes.")
        .build();
  }

  private static Column own(String id, String name, String band, Column chosen) {
    return Column.calculatedWord(
            TAKEOFF,
            id,
            name,
            new WordList.RowsOf(MATERIALS),
            Formula.when(chosen.given())
                .then(chosen)
                .otherwise(Formula.doesNotApply("–", "A tabulated pipe is laid.")))
        .band(band)
        .means("The pipe of the sheet Materials laid in place of a tabulated one.")
        .source("The sheet Pipes.")
        .build();
  }

  /** Returns the column of how much is to be laid of what is needed. */
  public static Column newOf(Column needed) {
    return List.of(LENGTH_NEW, FITTINGS_NEW, MAIN_NEW, MAIN_FITTINGS_NEW, WIRE_NEW).stream()
        .filter(column -> column.reference().column().equals(needed.reference().column() + "-new"))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the columns in their order. */
  public static List<Column> columns() {
    return List.of(
        LENGTH,
        PIPE,
        OWN,
        LENGTH_NEW,
        FITTINGS,
        FITTINGS_NEW,
        MAIN,
        MAIN_PIPE,
        MAIN_OWN,
        MAIN_NEW,
        MAIN_FITTINGS,
        MAIN_FITTINGS_NEW,
        STATION_WIRE,
        WIRE_SIZE,
        WIRE_NEW);
  }

  private static Condition there() {
    return Difference.ZONES_FOUND.above(0);
  }

  private static Column laid(Column needed, QuantityKind kind, Condition stays, String means) {
    Column.Builder column =
        Column.defaulted(
                TAKEOFF,
                needed.reference().column() + "-new",
                needed.name() + " new",
                kind,
                Formula.when(stays).then(Formula.zero(kind)).otherwise(needed))
            .band(needed.band())
            .means(means)
            .source("Common practice, no source.");
    return kind == QuantityKind.COUNT
        ? column.within(Bounds.from(0, 1_000_000, Units.ONE)).decimals(1, 1).build()
        : column.within(Bounds.from(0, 200_000, Units.FOOT)).build();
  }
}
