package zonewright.pipes;

import static zonewright.trade.Sheets.VALVE;
import static zonewright.trade.Sheets.VALVES;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import zonewright.formula.Cells;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Columns of the valves a designer chooses among: what each loses at three flows. */
public final class ValveLosses {
  public static final Column NAME =
      Column.words(VALVES, "name", "Valve")
          .band(VALVE)
          .means("What the valve is called in lists.")
          .build();

  public static final Column FIRST_FLOW = flow("first");
  public static final Column FIRST_LOSS = loss("first");
  public static final Column SECOND_FLOW = flow("second");
  public static final Column SECOND_LOSS = loss("second");
  public static final Column THIRD_FLOW = flow("third");
  public static final Column THIRD_LOSS = loss("third");

  public static final Column TO_SECOND =
      rise("second", FIRST_FLOW, FIRST_LOSS, SECOND_FLOW, SECOND_LOSS);

  public static final Column TO_THIRD =
      rise("third", SECOND_FLOW, SECOND_LOSS, THIRD_FLOW, THIRD_LOSS);

  /** Flows that do not grow from left to right. */
  public static final Rule OUT_OF_ORDER =
      new Rule(
          "valve-flows-out-of-order",
          Severity.WRONG,
          VALVES,
          FIRST_FLOW.atLeast(SECOND_FLOW).or(SECOND_FLOW.atLeast(THIRD_FLOW)),
          SECOND_FLOW,
          "has flows that do not grow from the first to the third",
          "type the three flows in rising order, each with its loss",
          List.of());

  static final String SOURCE =
      "Between the three flows of the sheet Valves by the square of the flow (common practice); below the first flow its loss"
          + " stays, for a valve needs some pressure to open.";

  private ValveLosses() {}

  private static Column flow(String which) {
    return Column.input(VALVES, which + "-flow", capital(which) + " flow", QuantityKind.FLOW)
        .band(VALVE)
        .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
        .decimals(1, 1)
        .means(
            "A flow for which the valve's published table gives a loss, growing from the first to the third.")
        .build();
  }

  private static Column loss(String which) {
    return Column.input(
            VALVES, which + "-loss", "Loss at " + which + " flow", QuantityKind.PRESSURE)
        .band(VALVE)
        .within(Bounds.above(0, 100, Units.POUND_PER_SQUARE_INCH))
        .means(
            "Pressure the valve loses at the "
                + which
                + " flow. The figures of a new design are common practice, no source: put those of your valve in their place.")
        .build();
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private static Column rise(
      String to, Column lowFlow, Column lowLoss, Column highFlow, Column highLoss) {
    return Column.calculated(
            VALVES,
            "rise-to-" + to,
            "Rise to the %s flow".formatted(to),
            QuantityKind.LOSS_RISE,
            highLoss.minus(lowLoss).over(squared(highFlow).minus(squared(lowFlow))))
        .band(VALVE)
        .means(
            "How much the loss grows on the way to the %s flow, for each square of the flow."
                .formatted(to))
        .source(SOURCE)
        .build();
  }

  /**
   * Returns the loss at a flow of the valve that a cell names; refused above its third flow.
   *
   * <p>The first loss, and of each rise to the next as much as the square of the flow is on its
   * way.
   */
  static Formula at(Cells valve, Term flow) {
    Formula first = found(FIRST_FLOW, valve);
    Formula second = found(SECOND_FLOW, valve);
    Formula toSecond =
        squared(Formula.smaller(second, Formula.larger(first, flow))).minus(squared(first));
    Formula toThird = squared(Formula.larger(second, flow)).minus(squared(second));
    return Formula.when(flow.above(found(THIRD_FLOW, valve)))
        .then(
            Formula.refused(
                "over the valve",
                "the flow is above the greatest one of the valve; choose a larger valve"))
        .otherwise(
            found(FIRST_LOSS, valve)
                .plus(found(TO_SECOND, valve).times(toSecond))
                .plus(found(TO_THIRD, valve).times(toThird)));
  }

  private static Formula squared(Term flow) {
    return flow.times(flow);
  }

  private static Formula found(Column column, Cells valve) {
    return column.inRowOf(valve);
  }

  /** Returns the rows a new design starts with, of common practice, in the order of the columns. */
  public static List<List<Entry>> usual(UnitSystem system) {
    List<List<Entry>> rows = new ArrayList<>();
    for (int valve = 0; valve < PipeTables.VALVES.size(); valve++) {
      List<Entry> row = new ArrayList<>();
      row.add(new Entry.Words(PipeTables.VALVES.keys().get(valve)));
      for (String which : List.of("First", "Second", "Third")) {
        String flow = which + " flow (gpm)";
        String loss = "Loss at " + which.toLowerCase(Locale.ROOT) + " flow (psi)";
        row.add(figure(flow, QuantityKind.FLOW, valve, system));
        row.add(figure(loss, QuantityKind.PRESSURE, valve, system));
      }
      rows.add(row);
    }
    return rows;
  }

  private static Entry figure(String heading, QuantityKind kind, int valve, UnitSystem system) {
    return new Entry.Figure(PipeTables.VALVES.numbers(heading, kind).value(valve, system));
  }

  /** Returns the columns of the sheet in their order. */
  public static List<Column> columns() {
    return List.of(
        NAME,
        FIRST_FLOW,
        FIRST_LOSS,
        SECOND_FLOW,
        SECOND_LOSS,
        THIRD_FLOW,
        THIRD_LOSS,
        TO_SECOND,
        TO_THIRD);
  }
}
