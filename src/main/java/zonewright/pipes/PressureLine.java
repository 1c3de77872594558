package zonewright.pipes;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;

/**
 * The pressure on its way to the worst head of a zone: where it goes, step by step.
 *
 * @param begins the static pressure
 * @param steps what takes pressure, in the order of the water's way
 * @param needed the pressure the heads are made for
 * @param unit the unit of all pressures
 */
public record PressureLine(double begins, List<Step> steps, double needed, Unit unit) {
  public PressureLine {
    steps = List.copyOf(steps);
  }

  /**
   * What takes pressure.
   *
   * @param name in a word or two
   * @param left the pressure behind it
   * @param loss what it took; below zero where a fall gave some back
   */
  public record Step(String name, double left, double loss) {}

  /** The line, or a sentence that says why there is none to show. */
  public sealed interface Answer permits Shown, NotKnown {}

  /** The line. */
  public record Shown(PressureLine line) implements Answer {}

  /** One sentence: what is missing or wrong. */
  public record NotKnown(String sentence) implements Answer {}

  /** Returns what the worst head gets. */
  public double ends() {
    return steps.get(steps.size() - 1).left();
  }

  /** Returns the line for a zone of a book, by its row on the sheet Pipes. */
  public static Answer of(Book book, int row) {
    for (Column column : List.of(Pressures.WORST_HEAD, Laterals.NEEDED)) {
      Outcome outcome = book.outcome(column.reference(), row);
      if (!(outcome instanceof Outcome.Amount)) {
        String because = outcome instanceof Outcome.Blank ? "it is blank" : outcome.sentence();
        return new NotKnown(column.name() + ": " + because);
      }
    }
    return new Shown(
        new PressureLine(
            book.number(FlowTest.STATIC_PRESSURE.reference(), 0),
            steps(book, row),
            number(book, Laterals.NEEDED, row),
            QuantityKind.PRESSURE.unit(book.system())));
  }

  private static double number(Book book, Column column, int row) {
    return book.number(column.reference(), row);
  }

  private static List<Step> steps(Book book, int row) {
    double left = book.number(FlowTest.STATIC_PRESSURE.reference(), 0);
    double into = number(book, Losses.INTO_MAIN, row);
    double device = book.number(Supply.BACKFLOW_LOSS.reference(), 0);
    List<Step> steps = new ArrayList<>();
    boolean tested = book.outcome(FlowTest.BASIS.reference(), 0).text().equals(FlowTest.DOWNSTREAM);
    double drop = number(book, Losses.SUPPLY_DROP, row);
    if (drop != 0) {
      left = add(steps, tested ? "supply as tested" : "street main", left, left - drop);
    }
    if (!tested) {
      left = add(steps, "meter", left, left - number(book, Losses.METER_LOSS, row));
    }
    double reached =
        left
            - book.number(Supply.RISE_LOSS.reference(), 0)
            - (tested ? 0 : number(book, Losses.SERVICE_LOSS, row));
    left = add(steps, tested ? "rise" : "service line", left, reached);
    left = add(steps, "backflow device", left, left - device);
    if (into < left - 1e-6) {
      left = add(steps, "regulator", left, into);
    }
    left = add(steps, "main", left, number(book, Pressures.BEFORE_VALVE, row));
    left = add(steps, "valve", left, left - number(book, Losses.VALVE_LOSS, row));
    double behind = number(book, Pressures.BEHIND_VALVE, row);
    if (behind < left - 1e-6) {
      left = add(steps, "regulator", left, behind);
    }
    add(steps, "lateral", left, number(book, Pressures.WORST_HEAD, row));
    return steps;
  }

  private static double add(List<Step> steps, String name, double before, double after) {
    steps.add(new Step(name, after, before - after));
    return after;
  }
}
