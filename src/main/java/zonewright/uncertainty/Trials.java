package zonewright.uncertainty;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import zonewright.climate.Peak;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.water.CycleAndSoak;

/** Designs tried one after the other, and what their answers came to over all of them. */
final class Trials {
  private final List<UncertainInput> inputs;
  private final List<Column> answers;
  private final TriedDesign design;
  private final double[][] numbers;
  private final Spans ofZones;
  private final Spans ofSite;
  private final BooleanSupplier stopped;
  private final DoubleConsumer told;
  private final double expected;
  private double[][] last;
  private int tried;

  /**
   * Begins with the design as it is.
   *
   * @param answers the answers of zones that are watched
   * @param ofSite the answers of the site that are watched, beside the peak month
   * @param stopped asked before each design whether the answer is wanted no more
   * @param told how much is done, from 0 to 1
   * @param expected about how many designs there will be
   */
  Trials(
      Book whole,
      List<UncertainInput> inputs,
      List<Column> answers,
      List<Column> ofSite,
      BooleanSupplier stopped,
      DoubleConsumer told,
      double expected) {
    this.inputs = inputs;
    this.answers = answers;
    this.stopped = stopped;
    this.told = told;
    this.expected = expected;
    Set<Column> watched = new LinkedHashSet<>(ofSite);
    watched.add(Peak.MONTH);
    this.design = new TriedDesign(whole, inputs, answers, List.copyOf(watched));
    this.numbers = inputs.stream().map(UncertainInput::allHeld).toArray(double[][]::new);
    this.last = read();
    this.ofZones = new Spans(last);
    this.ofSite = new Spans(asRows(design.ofSite()));
  }

  private static double[][] asRows(double[] numbers) {
    return Arrays.stream(numbers).mapToObj(each -> new double[] {each}).toArray(double[][]::new);
  }

  /** A soak that is not needed lasts no time. */
  private double[][] read() {
    double[][] read = design.ofZones();
    int soak = answers.indexOf(CycleAndSoak.SOAK);
    int cycles = answers.indexOf(CycleAndSoak.CYCLES);
    for (int zone = 0; zone < zones(); zone++) {
      if (Double.isNaN(read[soak][zone]) && read[cycles][zone] == 1) {
        read[soak][zone] = 0;
      }
    }
    return read;
  }

  /** Has an input at the number the design rests on again, in all rows. */
  void hold(int input) {
    numbers[input] = inputs.get(input).allHeld();
  }

  void put(int input, int row, double number) {
    numbers[input][row] = number;
  }

  double put(int input, int row) {
    return numbers[input][row];
  }

  /**
   * Tries the design with the numbers put, and returns what each answer comes to, zone by zone.
   *
   * @throws CancellationException where nobody wants to know any more
   */
  double[][] tryOut() {
    if (stopped.getAsBoolean()) {
      throw new CancellationException();
    }
    design.type(numbers);
    last = read();
    ofZones.take(last);
    ofSite.take(asRows(design.ofSite()));
    tried++;
    told.accept(Math.min(1, tried / expected));
    return last;
  }

  /** Returns what the answers of zones came to in the design tried last. */
  double[][] last() {
    return last;
  }

  /** Returns what an answer of the site came to in the design tried last. */
  double ofSite(int answer) {
    return design.ofSite()[answer];
  }

  int zones() {
    return design.zones();
  }

  /** Returns what the answers of zones came to so far. */
  Spans ofZones() {
    return ofZones;
  }

  /** Returns what the answers of the site came to so far, and last the peak month. */
  Spans ofSite() {
    return ofSite;
  }

  /** Returns how many designs were tried. */
  int tried() {
    return tried;
  }
}
