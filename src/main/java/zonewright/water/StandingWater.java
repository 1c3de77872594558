package zonewright.water;

import java.util.ArrayList;
import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Water that stands on the soil of a zone, where it is wetted, over the time of one watering day.
 *
 * <p>Rises with the rate less intake rate while the valve runs, falls with the intake rate while it
 * rests, never below nothing: derived from the definition of both rates. The intake rate is taken
 * as steady, as the columns of {@link CycleAndSoak} do.
 *
 * @param cycles when the valve runs
 * @param given the water standing with the run given in these cycles, corner by corner
 * @param atOnce the same with the whole run at once
 * @param limit the depth that may stand before water runs off
 * @param unit the unit of all depths; times are in minutes from the first opening
 */
public record StandingWater(
    List<Cycle> cycles, List<Point> given, List<Point> atOnce, double limit, Unit unit) {
  public StandingWater {
    cycles = List.copyOf(cycles);
    given = List.copyOf(given);
    atOnce = List.copyOf(atOnce);
  }

  /** When the valve opens and closes, in minutes. */
  public record Cycle(double opens, double closes) {}

  /** How deep water stands at a time; straight lines join the points. */
  public record Point(double minutes, double depth) {}

  /** The water over time, or a sentence that says why there is none to show. */
  public sealed interface Answer permits Shown, NotKnown {}

  /** The water over time. */
  public record Shown(StandingWater water) implements Answer {}

  /** One sentence: what is missing or wrong. */
  public record NotKnown(String sentence) implements Answer {}

  /** Returns the water over time for a zone of a book. */
  public static Answer of(Book book, int zone) {
    List<Column> needed =
        List.of(
            Emitters.WETTED_RATE,
            Soils.INTAKE_RATE,
            Soils.SURFACE_STORAGE,
            CycleAndSoak.CYCLES,
            CycleAndSoak.CYCLE_MINUTES);
    double[] numbers = new double[needed.size()];
    for (int i = 0; i < numbers.length; i++) {
      Outcome outcome = book.outcome(needed.get(i).reference(), zone);
      if (!(outcome instanceof Outcome.Amount amount)) {
        String because = outcome instanceof Outcome.Blank ? "it is blank" : outcome.sentence();
        return new NotKnown(needed.get(i).name() + ": " + because);
      }
      numbers[i] = amount.value();
    }
    double soak = book.number(CycleAndSoak.SOAK.reference(), zone);
    UnitSystem system = book.system();
    Unit depth = QuantityKind.DEPTH.unit(system);
    double aMinute = QuantityKind.RATE.unit(system).in(depth.per(Units.MINUTE, "depth a minute"));
    return new Shown(
        over(
            new Rates(numbers[0] * aMinute, numbers[1] * aMinute),
            numbers[2],
            (int) numbers[3],
            numbers[4],
            Double.isNaN(soak) ? 0 : soak,
            depth));
  }

  /** Depth applied and taken in, each minute. */
  record Rates(double applied, double takenIn) {
    double excess() {
      return Math.max(0, applied - takenIn);
    }
  }

  /** Returns the water over time; times in minutes, depths in {@code unit}. */
  static StandingWater over(
      Rates rates, double limit, int count, double minutes, double soak, Unit unit) {
    List<Cycle> cycles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double opens = i * (minutes + soak);
      cycles.add(new Cycle(opens, opens + minutes));
    }
    return new StandingWater(
        cycles,
        line(rates, cycles),
        line(rates, List.of(new Cycle(0, count * minutes))),
        limit,
        unit);
  }

  private static List<Point> line(Rates rates, List<Cycle> cycles) {
    List<Point> points = new ArrayList<>();
    Point last = new Point(0, 0);
    points.add(last);
    for (Cycle cycle : cycles) {
      last = rested(rates, last, cycle.opens(), points);
      double risen = last.depth() + rates.excess() * (cycle.closes() - cycle.opens());
      last = new Point(cycle.closes(), risen);
      points.add(last);
    }
    rested(rates, last, last.minutes() + last.depth() / rates.takenIn(), points);
    return points;
  }

  /** Lets water go in until {@code until}; notes the corner where none is left. */
  private static Point rested(Rates rates, Point from, double until, List<Point> points) {
    if (until <= from.minutes()) {
      return from;
    }
    double gone = from.minutes() + from.depth() / rates.takenIn();
    if (from.depth() > 0 && gone < until) {
      points.add(new Point(gone, 0));
    }
    double left = gone <= until ? 0 : from.depth() - rates.takenIn() * (until - from.minutes());
    Point end = new Point(until, left);
    points.add(end);
    return end;
  }

  /** Returns the greatest depth that stands with the run given in its cycles. */
  public double greatest() {
    return given.stream().mapToDouble(Point::depth).max().orElse(0);
  }

  /** Returns the greatest depth that would stand with the whole run at once. */
  public double greatestAtOnce() {
    return atOnce.stream().mapToDouble(Point::depth).max().orElse(0);
  }

  /** Returns when the last water has gone in, in minutes. */
  public double end() {
    double split = given.get(given.size() - 1).minutes();
    return Math.max(split, atOnce.get(atOnce.size() - 1).minutes());
  }
}
