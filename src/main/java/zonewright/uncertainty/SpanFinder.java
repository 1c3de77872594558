package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Peak;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.water.CycleAndSoak;

/**
 * Finds how far answers go over all ranges of a design. First each input alone is taken through its
 * range, in all zones at once, since zones move each other by the peak month at most: that says
 * which end of it makes an answer least and which greatest. Then all inputs are put at those ends
 * together. Last, designs with all inputs anywhere in their ranges are tried: where one lies
 * beyond, the answer does not go steadily with its inputs, and the span holds it too.
 */
final class SpanFinder {
  /** The parts of a range at which an input is tried by itself, beside the number held. */
  private static final double[] PARTS = {0, 0.25, 0.5, 0.75, 1};

  /** Designs tried with all inputs anywhere in their ranges; half of them at ends only. */
  private static final int ANYWHERE = 48;

  /** Designs tried around each corner of an answer that goes in steps: more where few zones are. */
  private static final int FEWEST_ROUNDS = 20;

  private static final int MOST_ROUNDS = 100;
  private static final int ZONES_AND_ROUNDS = 10_000;

  /** Answers looked at around their corners; the year's volume goes with the week's. */
  private static final List<Column> CLIMBED =
      List.of(
          CycleAndSoak.MINUTES_GIVEN,
          CycleAndSoak.CYCLES,
          CycleAndSoak.SOAK,
          ZoneBudget.VOLUME_PER_WEEK);

  private static final long SEED = 20_260_101;

  private final List<UncertainInput> inputs;
  private final List<SureAnswer> ofSite;
  private final List<Column> answers;
  private final TriedDesign design;
  private final double[][] numbers;
  private final Profile[][] profiles;
  private final Profile[][] siteProfiles;
  private final double[][][] ends;
  private final double[][] siteEnds;
  private final Spans spans;
  private final Spans siteSpans;
  private final BooleanSupplier stopped;
  private final DoubleConsumer told;
  private final double expected;
  private int tried;

  private SpanFinder(
      Book whole,
      List<UncertainInput> inputs,
      List<SureAnswer> ofSite,
      BooleanSupplier stopped,
      DoubleConsumer told) {
    this.inputs = inputs;
    this.ofSite = ofSite;
    this.stopped = stopped;
    this.told = told;
    Set<Column> zones = new LinkedHashSet<>(SureAnswer.OF_ZONES);
    ofSite.forEach(answer -> zones.add(answer.zones()));
    SureAnswer.IN_STEPS.values().forEach(zones::addAll);
    this.answers = List.copyOf(zones);
    List<Column> watched = new ArrayList<>(ofSite.stream().map(SureAnswer::column).toList());
    watched.add(Peak.MONTH);
    this.design = new TriedDesign(whole, inputs, answers, watched);
    this.numbers = new double[inputs.size()][];
    for (int at = 0; at < numbers.length; at++) {
      numbers[at] = new double[inputs.get(at).rows()];
      hold(at);
    }
    this.expected =
        inputs.size() * PARTS.length
            + 2.0 * (answers.size() + ofSite.size())
            + 2.0 * rounds() * CLIMBED.size()
            + ANYWHERE;
    this.spans = new Spans(read());
    this.siteSpans = new Spans(asRows(design.ofSite()));
    this.profiles = new Profile[inputs.size()][answers.size()];
    this.siteProfiles = new Profile[inputs.size()][ofSite.size()];
    this.ends = new double[answers.size()][2][design.zones()];
    this.siteEnds = new double[ofSite.size()][2];
  }

  /**
   * Returns how sure the answers of a design are.
   *
   * @param book the design; it stays as it is
   * @param stopped asked now and then whether the answer is wanted no more
   * @param told how much is done, from 0 to 1
   * @throws CancellationException where it is not
   */
  static HowSure find(Book book, BooleanSupplier stopped, DoubleConsumer told) {
    SpanFinder finder =
        new SpanFinder(book, UncertainInput.of(book), SureAnswer.ofSite(book), stopped, told);
    finder.oneByOne();
    finder.corners();
    finder.anywhere();
    finder.beyondCorners();
    return finder.result(book);
  }

  private static double[][] asRows(double[] numbers) {
    return Arrays.stream(numbers).mapToObj(each -> new double[] {each}).toArray(double[][]::new);
  }

  private void hold(int at) {
    for (int row = 0; row < numbers[at].length; row++) {
      numbers[at][row] = inputs.get(at).held(row);
    }
  }

  /** A soak that is not needed lasts no time. */
  private double[][] read() {
    double[][] read = design.ofZones();
    int soak = answers.indexOf(CycleAndSoak.SOAK);
    int cycles = answers.indexOf(CycleAndSoak.CYCLES);
    for (int zone = 0; zone < design.zones(); zone++) {
      if (Double.isNaN(read[soak][zone]) && read[cycles][zone] == 1) {
        read[soak][zone] = 0;
      }
    }
    return read;
  }

  private double[][] tryOut() {
    if (stopped.getAsBoolean()) {
      throw new CancellationException();
    }
    design.type(numbers);
    double[][] read = read();
    spans.take(read);
    siteSpans.take(asRows(design.ofSite()));
    tried++;
    told.accept(Math.min(1, tried / expected));
    return read;
  }

  private void oneByOne() {
    for (int at = 0; at < inputs.size(); at++) {
      for (int answer = 0; answer < answers.size(); answer++) {
        profiles[at][answer] = new Profile(design.zones());
      }
      for (int answer = 0; answer < ofSite.size(); answer++) {
        siteProfiles[at][answer] = new Profile(1);
      }
      alone(at);
      hold(at);
    }
  }

  private void alone(int at) {
    UncertainInput input = inputs.get(at);
    boolean[] passed = new boolean[input.rows()];
    for (double part : PARTS) {
      for (int row = 0; row < input.rows(); row++) {
        numbers[at][row] = input.at(row, part);
      }
      double[][] read = tryOut();
      for (int zone = 0; zone < design.zones(); zone++) {
        int row = input.rowOf(zone);
        for (int answer = 0; answer < answers.size(); answer++) {
          Profile profile = profiles[at][answer];
          if (!passed[row] && numbers[at][row] >= input.held(row)) {
            profile.take(zone, input.held(row), spans.held[answer][zone]);
          }
          profile.take(zone, numbers[at][row], read[answer][zone]);
        }
      }
      for (int row = 0; row < input.rows(); row++) {
        passed[row] |= numbers[at][row] >= input.held(row);
      }
      double[] site = design.ofSite();
      for (int answer = 0; answer < ofSite.size(); answer++) {
        siteProfiles[at][answer].take(0, numbers[at][0], site[answer]);
      }
    }
  }

  /** Puts all inputs at the ends that make an answer least, and at those that make it greatest. */
  private void corners() {
    for (int answer = 0; answer < answers.size(); answer++) {
      for (boolean most : new boolean[] {false, true}) {
        ofAllZones(answer, most);
        List<List<Double>> wanted = new ArrayList<>();
        for (int zone = 0; zone < design.zones(); zone++) {
          wanted.add(wanted(answer, most, zone));
        }
        for (List<Double> site : new LinkedHashSet<>(wanted)) {
          siteInputs(site);
          double[][] read = tryOut();
          for (int zone = 0; zone < design.zones(); zone++) {
            if (wanted.get(zone).equals(site)) {
              ends[answer][most ? 1 : 0][zone] = read[answer][zone];
            }
          }
        }
      }
    }
    for (int answer = 0; answer < ofSite.size(); answer++) {
      SureAnswer asked = ofSite.get(answer);
      for (boolean most : new boolean[] {false, true}) {
        ofAllZones(answers.indexOf(asked.zones()), most == asked.more());
        siteInputs(siteEnd(answer, most));
        tryOut();
        siteEnds[answer][most ? 1 : 0] = design.ofSite()[answer];
      }
    }
  }

  /** Puts the inputs of each zone at the ends that make its own answer least or greatest. */
  private void ofAllZones(int answer, boolean most) {
    for (int at = 0; at < inputs.size(); at++) {
      if (!inputs.get(at).range().ofSite()) {
        for (int zone = 0; zone < design.zones(); zone++) {
          numbers[at][zone] = end(profiles[at][answer], at, zone, most);
        }
      }
    }
  }

  private double end(Profile profile, int at, int row, boolean most) {
    return profile.moves(row)
        ? profile.at(row, most)
        : inputs.get(at).held(inputs.get(at).rowOf(row));
  }

  /** Returns the numbers of the site's inputs at which a zone's answer is least or greatest. */
  private List<Double> wanted(int answer, boolean most, int zone) {
    List<Double> wanted = new ArrayList<>();
    for (int at = 0; at < inputs.size(); at++) {
      if (inputs.get(at).range().ofSite()) {
        wanted.add(end(profiles[at][answer], at, zone, most));
      }
    }
    return wanted;
  }

  private List<Double> siteEnd(int answer, boolean most) {
    List<Double> wanted = new ArrayList<>();
    for (int at = 0; at < inputs.size(); at++) {
      if (inputs.get(at).range().ofSite()) {
        wanted.add(end(siteProfiles[at][answer], at, 0, most));
      }
    }
    return wanted;
  }

  private void siteInputs(List<Double> wanted) {
    Iterator<Double> next = wanted.iterator();
    for (int at = 0; at < inputs.size(); at++) {
      if (inputs.get(at).range().ofSite()) {
        numbers[at][0] = next.next();
      }
    }
  }

  private void anywhere() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < ANYWHERE && !inputs.isEmpty(); round++) {
      for (int at = 0; at < inputs.size(); at++) {
        for (int row = 0; row < numbers[at].length; row++) {
          double part = random.nextDouble();
          numbers[at][row] = inputs.get(at).at(row, round % 2 == 0 ? part : Math.rint(part));
        }
      }
      tryOut();
    }
  }

  /**
   * Looks around the corners of answers in steps: where watering days, cycles or minutes go one up,
   * an answer can lie beyond them. In each design one input of each zone, by chance, is elsewhere
   * in its range; what does no worse stays.
   */
  private void beyondCorners() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (Column answer : CLIMBED) {
      for (boolean most : new boolean[] {false, true}) {
        climb(answers.indexOf(answer), most, random);
      }
    }
  }

  private int rounds() {
    return Math.max(
        FEWEST_ROUNDS, Math.min(MOST_ROUNDS, ZONES_AND_ROUNDS / Math.max(1, design.zones())));
  }

  private void climb(int answer, boolean most, SplittableRandom random) {
    ofAllZones(answer, most);
    double[] best = ends[answer][most ? 1 : 0].clone();
    for (int round = 0; round < rounds(); round++) {
      int[] moved = new int[design.zones()];
      double[] before = new double[design.zones()];
      for (int zone = 0; zone < moved.length; zone++) {
        moved[zone] = chosen(answer, zone, random);
        double part = random.nextDouble();
        if (moved[zone] >= 0) {
          before[zone] = numbers[moved[zone]][zone];
          numbers[moved[zone]][zone] = inputs.get(moved[zone]).at(zone, part);
        }
      }
      double[] read = tryOut()[answer];
      for (int zone = 0; zone < moved.length; zone++) {
        if (most ? read[zone] >= best[zone] : read[zone] <= best[zone]) {
          best[zone] = read[zone];
        } else if (moved[zone] >= 0) {
          numbers[moved[zone]][zone] = before[zone];
        }
      }
    }
  }

  /** Returns one of the zone's own inputs that move the answer, by chance; -1 where none does. */
  private int chosen(int answer, int zone, SplittableRandom random) {
    int chosen = -1;
    int seen = 0;
    for (int at = 0; at < inputs.size(); at++) {
      if (!inputs.get(at).range().ofSite() && profiles[at][answer].moves(zone)) {
        seen++;
        chosen = random.nextInt(seen) == 0 ? at : chosen;
      }
    }
    return chosen;
  }

  /**
   * Says whether an answer goes one way with each of its inputs: as far as was tried, and of an
   * answer in steps only where nothing else takes steps or moves both sides of a quotient.
   */
  private boolean steady(int answer, int zone) {
    boolean steady = !spans.missing[answer][zone] && onePeak();
    for (Column other : SureAnswer.IN_STEPS.getOrDefault(answers.get(answer), List.of())) {
      steady &= !spans.moves(answers.indexOf(other), zone);
    }
    for (Profile[] input : profiles) {
      steady &= input[answer].steady[zone];
    }
    return !spans.moves(answer, zone)
        || (steady && within(spans, answer, zone, ends[answer][0][zone], ends[answer][1][zone]));
  }

  /** Where rain counts, all zones together decide the peak month; then they move each other. */
  private boolean onePeak() {
    return Double.isNaN(siteSpans.held[ofSite.size()][0]) || !siteSpans.moves(ofSite.size(), 0);
  }

  private static boolean within(Spans spans, int answer, int row, double least, double greatest) {
    return !Spans.above(least, spans.least[answer][row])
        && !Spans.above(spans.greatest[answer][row], greatest);
  }

  private boolean siteSteady(int answer) {
    boolean steady = !siteSpans.missing[answer][0] && onePeak();
    int zones = answers.indexOf(ofSite.get(answer).zones());
    for (int zone = 0; zone < design.zones(); zone++) {
      steady &=
          Double.isNaN(spans.held[zones][zone]) || steady(zones, zone) || !spans.moves(zones, zone);
    }
    for (Profile[] input : siteProfiles) {
      steady &= input[answer].steady[0];
    }
    return steady && within(siteSpans, answer, 0, siteEnds[answer][0], siteEnds[answer][1]);
  }

  private HowSure result(Book book) {
    boolean[][] steady = new boolean[SureAnswer.OF_ZONES.size()][design.zones()];
    for (int answer = 0; answer < steady.length; answer++) {
      for (int zone = 0; zone < design.zones(); zone++) {
        steady[answer][zone] = steady(answer, zone);
      }
    }
    boolean[] siteSteady = new boolean[ofSite.size()];
    for (int answer = 0; answer < siteSteady.length; answer++) {
      siteSteady[answer] = siteSteady(answer);
    }
    return new HowSure(
        book,
        inputs,
        profiles,
        spans,
        steady,
        ofSite,
        siteSpans,
        siteSteady,
        ofMeasurements(),
        tried);
  }

  /** Returns the least and greatest water of a year by each measurement's inputs alone. */
  private Map<Measurement, double[]> ofMeasurements() {
    int year = answers.indexOf(ZoneBudget.VOLUME_PER_YEAR);
    Map<Measurement, double[]> found = new HashMap<>();
    for (Measurement measurement : Measurement.all()) {
      Set<Integer> own = new TreeSet<>();
      for (int at = 0; at < inputs.size(); at++) {
        if (measurement.inputs().contains(inputs.get(at).column())) {
          own.add(at);
        }
      }
      if (!own.isEmpty()) {
        found.put(measurement, new double[] {water(own, year, false), water(own, year, true)});
      }
    }
    return found;
  }

  private double water(Set<Integer> own, int year, boolean most) {
    for (int at = 0; at < inputs.size(); at++) {
      hold(at);
      for (int row = 0; own.contains(at) && row < numbers[at].length; row++) {
        numbers[at][row] = end(profiles[at][year], at, row, most);
      }
    }
    tryOut();
    return design.ofSite()[1];
  }
}
