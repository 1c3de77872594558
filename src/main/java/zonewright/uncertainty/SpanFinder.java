package zonewright.uncertainty;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.Predicate;
import zonewright.budget.SiteBudget;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;

/**
 * Finds how far answers go over all ranges of a design. First each input alone is taken through its
 * range, in all zones at once, since zones move each other by the peak month at most: that says
 * which end of it makes an answer least and which greatest. Then all inputs are put at those ends
 * together. Last, designs with all inputs anywhere in their ranges are tried: where one lies
 * beyond, the answer does not go steadily with its inputs, and the span holds it too.
 */
final class SpanFinder {
  /** Designs tried with all inputs anywhere in their ranges; half of them at ends only. */
  private static final int ANYWHERE = 48;

  /** The same of the inputs of one measurement, where it has several. */
  private static final int SEVERAL = 6;

  private static final long SEED = 20_260_101;

  private final List<UncertainInput> inputs;
  private final List<SureAnswer> ofSite;
  private final List<Column> answers;
  private final Trials trials;
  private final Corners corners;
  private final double[][][] ends;
  private final double[][] siteEnds;

  private SpanFinder(
      Book whole, Set<Column> further, BooleanSupplier stopped, DoubleConsumer told) {
    this.inputs = UncertainInput.of(whole);
    this.ofSite = SureAnswer.ofSite(whole);
    this.answers = watched(further, ofSite);
    double expected =
        inputs.size() * UncertainInput.STEPS
            + 2.0 * (answers.size() + ofSite.size())
            + Climb.designs(whole.rows(Sheets.ZONES))
            + ANYWHERE;
    this.trials =
        new Trials(
            whole,
            inputs,
            answers,
            ofSite.stream().map(SureAnswer::column).toList(),
            stopped,
            told,
            expected);
    this.corners = new Corners(inputs, answers, ofSite, trials);
    this.ends = new double[answers.size()][2][];
    this.siteEnds = new double[ofSite.size()][2];
  }

  /** Returns what is read of zones: first what is told of them, then what that goes by. */
  private static List<Column> watched(Set<Column> further, List<SureAnswer> ofSite) {
    Set<Column> zones = new LinkedHashSet<>(SureAnswer.OF_ZONES);
    zones.addAll(further);
    ofSite.forEach(answer -> zones.add(answer.zones()));
    SureAnswer.IN_STEPS.values().forEach(zones::addAll);
    zones.addAll(Drift.OF.values());
    return List.copyOf(zones);
  }

  /**
   * Returns how sure the answers of a design are.
   *
   * @param book the design; it stays as it is
   * @param further columns of zones that are told beside the usual ones
   * @param stopped asked now and then whether the answer is wanted no more
   * @param told how much is done, from 0 to 1
   * @throws CancellationException where it is not
   */
  static HowSure find(
      Book book, Set<Column> further, BooleanSupplier stopped, DoubleConsumer told) {
    SpanFinder finder = new SpanFinder(book, further, stopped, told);
    finder.tryCorners();
    finder.anywhere(ANYWHERE, input -> true, () -> {});
    new Climb(finder.inputs, finder.trials, finder.corners, new SplittableRandom(SEED))
        .all(finder.answers);
    Map<Measurement, Narrowed> narrowed = finder.narrowed();
    return finder.result(book, SureAnswer.OF_ZONES.size() + further.size(), narrowed);
  }

  private void tryCorners() {
    for (int most = 0; most < 2; most++) {
      for (int answer = 0; answer < answers.size(); answer++) {
        ends[answer][most] = corners.corner(answer, most == 1, input -> true, () -> {});
      }
      for (int answer = 0; answer < ofSite.size(); answer++) {
        siteEnds[answer][most] = corners.siteCorner(answer, most == 1, input -> true);
      }
    }
    corners.opposed(input -> true, () -> {});
  }

  /** Tries designs with some inputs anywhere in their ranges, and all others held. */
  private void anywhere(int rounds, Predicate<UncertainInput> varied, Runnable look) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < rounds && !inputs.isEmpty(); round++) {
      for (int at = 0; at < inputs.size(); at++) {
        trials.hold(at);
        for (int row = 0; varied.test(inputs.get(at)) && row < inputs.get(at).rows(); row++) {
          double part = random.nextDouble();
          trials.put(at, row, inputs.get(at).at(row, round % 2 == 0 ? part : Math.rint(part)));
        }
      }
      trials.tryOut();
      look.run();
    }
  }

  /** Returns what each measurement's inputs alone do to the water and the cycles. */
  private Map<Measurement, Narrowed> narrowed() {
    Map<Measurement, Narrowed> found = new LinkedHashMap<>();
    for (Measurement measurement : Measurement.all()) {
      Predicate<UncertainInput> own = input -> measurement.inputs().contains(input.column());
      if (inputs.stream().anyMatch(own)) {
        found.put(measurement, narrowed(own));
      }
    }
    return found;
  }

  private Narrowed narrowed(Predicate<UncertainInput> own) {
    int year = ofSite.stream().map(SureAnswer::column).toList().indexOf(SiteBudget.SITE_YEAR);
    int cycles = answers.indexOf(CycleAndSoak.CYCLES);
    Narrowed narrowed = new Narrowed(trials.ofSite().held[year][0], trials.ofZones().held[cycles]);
    for (int at = 0; at < inputs.size(); at++) {
      if (own.test(inputs.get(at))) {
        narrowed.take(corners.siteProfiles()[at][year], corners.profiles()[at][cycles]);
      }
    }
    Runnable look = () -> narrowed.take(trials.ofSite(year), trials.last()[cycles]);
    for (boolean most : new boolean[] {false, true}) {
      corners.siteCorner(year, most, own);
      look.run();
      corners.corner(cycles, most, own, look);
    }
    if (inputs.stream().filter(own).count() > 1) {
      corners.opposed(own, look);
      anywhere(SEVERAL, own, look);
    }
    return narrowed;
  }

  private HowSure result(Book book, int told, Map<Measurement, Narrowed> narrowed) {
    Steadiness steadiness = new Steadiness(answers, trials, corners.profiles(), ends);
    boolean[][] steady = new boolean[told][trials.zones()];
    for (int answer = 0; answer < SureAnswer.OF_ZONES.size(); answer++) {
      for (int zone = 0; zone < trials.zones(); zone++) {
        steady[answer][zone] = steadiness.ofZone(answer, zone);
      }
    }
    boolean[][] siteSteady = new boolean[ofSite.size()][1];
    for (int answer = 0; answer < siteSteady.length; answer++) {
      siteSteady[answer][0] =
          steadiness.ofSite(
              answer,
              answers.indexOf(ofSite.get(answer).zones()),
              corners.siteProfiles(),
              siteEnds[answer][0],
              siteEnds[answer][1]);
    }
    return new HowSure(
        book,
        inputs,
        new Ranging(answers.subList(0, told), trials.ofZones(), corners.profiles(), steady),
        new Ranging(
            ofSite.stream().map(SureAnswer::column).toList(),
            trials.ofSite(),
            corners.siteProfiles(),
            siteSteady),
        narrowed,
        trials.tried());
  }
}
