package zonewright.pipes;

import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.PRESSURE_CLASS;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the pressure that stands in the pipes while no water flows, beside what each is rated
 * for. The static pressure counts, not the working pressure: a main is under it day and night.
 */
public final class PressureClass {
  private static final String AT_REST =
      "By definition: water at rest loses nothing to friction and changes with the height alone.";

  public static final Column SERVICE_LAID =
      Column.calculatedWord(
              SUPPLY,
              "service-laid-pipe",
              "Service line laid",
              new WordList.Published(PipeTables.EVERY_PIPE),
              PipeTables.position(Supply.SERVICE_KIND.reference(), Supply.SERVICE_PLACE))
          .band(PRESSURE_CLASS)
          .means("Pipe of the service line, by its kind and size.")
          .source("Table PipeSizes.")
          .build();

  public static final Column SERVICE_RATED =
      Column.defaulted(
              SUPPLY,
              "service-rated",
              "Service rated pressure",
              QuantityKind.PRESSURE,
              PipeTables.ratedPressure(SERVICE_LAID))
          .band(PRESSURE_CLASS)
          .within(Bounds.above(0, 2000, Units.POUND_PER_SQUARE_INCH))
          .decimals(0, 0)
          .means(
              "Pressure the service line is rated for; type over it what is printed on the pipe.")
          .source("Table PipeSizes, by row.")
          .build();

  private static final Formula UNREGULATED = FlowTest.STATIC_PRESSURE.minus(Supply.RISE_LOSS);

  public static final Column AT_CONNECTION =
      Column.calculated(
              SUPPLY,
              "connection-static",
              "Static pressure at the connection",
              QuantityKind.PRESSURE,
              Formula.when(Supply.REGULATED.given())
                  .then(Formula.smaller(Supply.REGULATED, UNREGULATED))
                  .otherwise(UNREGULATED))
          .band(PRESSURE_CLASS)
          .means(
              "What stands behind the connection while no water flows, and no more than a regulator there lets through.")
          .source(AT_REST)
          .build();

  private static final Formula NONE = Formula.zero(QuantityKind.PRESSURE);

  public static final Column AT_VALVE =
      atRest(
          "valve-static",
          "Static pressure at the valve",
          AT_CONNECTION.minus(Hydraulics.lift(Mains.RISE)),
          "What stands before the valve while no water flows.");

  public static final Column IN_MAIN =
      atRest(
          "main-static",
          "Main static pressure",
          Formula.larger(AT_CONNECTION, AT_VALVE),
          "The greatest pressure that stands in the main: at its lower end.");

  public static final Column BEHIND_VALVE =
      atRest(
          "lateral-entry-static",
          "Static pressure behind the valve",
          Formula.when(Losses.REGULATED.given())
              .then(Formula.smaller(Losses.REGULATED, AT_VALVE))
              .otherwise(AT_VALVE),
          "What the lateral would stand under if its valve were open and nothing flowed, as when its heads are capped or hold"
              + " the water.");

  public static final Column IN_LATERAL =
      atRest(
          "lateral-static",
          "Lateral static pressure",
          BEHIND_VALVE.plus(Formula.larger(NONE, NONE.minus(Hydraulics.lift(Laterals.RISE)))),
          "The greatest pressure that can stand in the lateral: at its lower end.");

  public static final Column MAIN_RATED = Mains.RUN.rated(Reaches.PIPE);
  public static final Column LATERAL_RATED = Laterals.RUN.rated(Laterals.PIPE);

  private static final Rule WEAK_SERVICE =
      weak(
          "service-rating",
          SUPPLY,
          "service line",
          FlowTest.STATIC_PRESSURE,
          SERVICE_RATED,
          "ask the supplier for a regulator before it, or lay pipe of a higher class");

  private static final Rule WEAK_MAIN =
      weak(
          "main-rating",
          PIPES,
          Mains.RUN.inWords(),
          IN_MAIN,
          MAIN_RATED,
          "lay pipe of a higher class, or set a pressure regulator at the connection");

  private static final Rule WEAK_LATERAL =
      weak(
          "lateral-rating",
          PIPES,
          Laterals.RUN.inWords(),
          IN_LATERAL,
          LATERAL_RATED,
          "lay pipe of a higher class, or regulate the pressure at the valve or the connection");

  private static Column atRest(String id, String name, Term formula, String means) {
    return Column.calculated(PIPES, id, name, QuantityKind.PRESSURE, formula)
        .band(PRESSURE_CLASS)
        .means(means)
        .source(AT_REST)
        .build();
  }

  private static Rule weak(
      String id, String table, String pipe, Column atRest, Column rated, String cure) {
    return new Rule(
        id,
        Severity.WRONG,
        table,
        atRest.above(rated),
        rated,
        "has a " + pipe + " rated for {1} under a static pressure of {0}; surge comes on top of it",
        cure,
        List.of(atRest, rated));
  }

  private PressureClass() {}

  /** Returns the columns of the sheet Supply. */
  static List<Column> ofSupply() {
    return List.of(SERVICE_LAID, SERVICE_RATED, AT_CONNECTION);
  }

  /** Returns the columns of the sheet Pipes. */
  static List<Column> ofZones() {
    return List.of(AT_VALVE, IN_MAIN, MAIN_RATED, BEHIND_VALVE, IN_LATERAL, LATERAL_RATED);
  }

  /** Returns the rules in the order in which they should be read. */
  static List<Rule> rules() {
    return List.of(WEAK_SERVICE, WEAK_MAIN, WEAK_LATERAL);
  }
}
