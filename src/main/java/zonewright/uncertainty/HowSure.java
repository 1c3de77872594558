package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.InputRange;

/** How sure the answers of a design are, over all ranges of its inputs; never changes. */
public final class HowSure {
  private final Book book;
  private final List<UncertainInput> inputs;
  private final Profile[][] profiles;
  private final Spans spans;
  private final boolean[][] steady;
  private final List<SureAnswer> ofSite;
  private final Spans siteSpans;
  private final boolean[] siteSteady;
  private final Map<Measurement, double[]> water;
  private final int tried;

  HowSure(
      Book book,
      List<UncertainInput> inputs,
      Profile[][] profiles,
      Spans spans,
      boolean[][] steady,
      List<SureAnswer> ofSite,
      Spans siteSpans,
      boolean[] siteSteady,
      Map<Measurement, double[]> water,
      int tried) {
    this.book = book;
    this.inputs = inputs;
    this.profiles = profiles;
    this.spans = spans;
    this.steady = steady;
    this.ofSite = ofSite;
    this.siteSpans = siteSpans;
    this.siteSteady = siteSteady;
    this.water = water;
    this.tried = tried;
  }

  /**
   * Returns how sure the answers of a design are.
   *
   * @param snapshot the design; it stays as it is
   * @param stopped asked now and then whether the answer is wanted no more
   * @param told how much is done, from 0 to 1
   * @throws java.util.concurrent.CancellationException where it is not
   */
  public static HowSure of(BookSnapshot snapshot, BooleanSupplier stopped, DoubleConsumer told) {
    return SpanFinder.find(Design.of(snapshot).book(), stopped, told);
  }

  /** Returns how sure the answers of a design are, however long that takes. */
  public static HowSure of(BookSnapshot snapshot) {
    return of(snapshot, () -> false, done -> {});
  }

  /**
   * What an answer lies between.
   *
   * @param column the answer
   * @param held what the design has
   * @param least the least over all ranges
   * @param greatest the greatest
   * @param steady whether it goes one way with each input; where not, between the designs tried
   *     there may be others that lie a little beyond
   * @param missing whether there is no number for some of them
   */
  public record Span(
      Column column, double held, double least, double greatest, boolean steady, boolean missing) {
    /** Says whether there is no number to be sure of. */
    public boolean none() {
      return Double.isNaN(held);
    }

    /** Says whether it is sure, as far as the ranges go. */
    public boolean single() {
      return !Spans.above(greatest, least);
    }
  }

  /**
   * What one input alone does to an answer.
   *
   * @param words what a person calls the input, within a sentence
   */
  public record Part(Column input, String words, double least, double greatest) {
    double width() {
      return greatest - least;
    }
  }

  /** Returns the name of the project. */
  public String project() {
    return book.outcome(Facts.PROJECT_NAME.reference(), 0) instanceof Outcome.Words words
        ? words.text()
        : "Irrigation";
  }

  /** Returns the unit system of the design. */
  public UnitSystem system() {
    return book.system();
  }

  /** Returns the design, for its words. */
  Book book() {
    return book;
  }

  /** Returns how many designs were tried. */
  public int tried() {
    return tried;
  }

  /** Returns the rows of the zones that are in use. */
  public List<Integer> zones() {
    return IntStream.range(0, book.rows(Sheets.ZONES))
        .filter(row -> book.counts(Sheets.ZONES, row))
        .boxed()
        .toList();
  }

  /** Returns the name of a zone. */
  public String name(int zone) {
    return book.shown(Facts.ZONE_NAME.reference(), book.outcome(Facts.ZONE_NAME.reference(), zone));
  }

  /** Returns the columns of zones whose spans are told, in their order. */
  public static List<Column> answers() {
    return SureAnswer.OF_ZONES;
  }

  /** Returns what an answer of a zone lies between. */
  public Span span(Column answer, int zone) {
    int at = SureAnswer.OF_ZONES.indexOf(answer);
    return new Span(
        answer,
        spans.held[at][zone],
        spans.least[at][zone],
        spans.greatest[at][zone],
        steady[at][zone],
        spans.missing[at][zone]);
  }

  /** Returns what the answers of the site lie between. */
  public List<Span> site() {
    return IntStream.range(0, ofSite.size())
        .mapToObj(
            at ->
                new Span(
                    ofSite.get(at).column(),
                    siteSpans.held[at][0],
                    siteSpans.least[at][0],
                    siteSpans.greatest[at][0],
                    siteSteady[at],
                    siteSpans.missing[at][0]))
        .toList();
  }

  /**
   * Returns what each input alone does to an answer of a zone, the one that moves it most first.
   */
  public List<Part> parts(Column answer, int zone) {
    int at = SureAnswer.OF_ZONES.indexOf(answer);
    List<Part> parts = new ArrayList<>();
    for (int input = 0; input < profiles.length; input++) {
      Profile profile = profiles[input][at];
      if (profile.moves(zone)) {
        UncertainInput known = inputs.get(input);
        parts.add(
            new Part(
                known.column(),
                known.range().words(),
                profile.least[zone],
                profile.greatest[zone]));
      }
    }
    parts.sort(Comparator.comparingDouble(Part::width).reversed());
    return parts;
  }

  /**
   * What a measurement would narrow.
   *
   * @param zones how many zones have a range that it narrows
   * @param least the least water of a year by what it makes known alone
   * @param greatest the greatest
   * @param waterShare what lies between them, as a part of the water of the design
   * @param cycles by how many cycles it moves the zone it moves most
   * @param cycleShare by how much it moves the cycles of all zones, as a part of them
   */
  public record Worth(
      Measurement measurement,
      int zones,
      double least,
      double greatest,
      double waterShare,
      int cycles,
      double cycleShare) {
    /** Returns what measurements are ranked by: the greater of the two shares. */
    public double rank() {
      return Math.max(waterShare, cycleShare);
    }

    /** Returns how long it takes for all zones it narrows. */
    public int minutes() {
      return measurement.minutes() * (measurement.ofSite() ? 1 : zones);
    }
  }

  /** Returns the measurements that would narrow anything, the one that narrows most first. */
  public List<Worth> measurements() {
    double year = siteSpans.held[1][0];
    List<Worth> worths = new ArrayList<>();
    for (Measurement measurement : Measurement.all()) {
      Optional.ofNullable(water.get(measurement))
          .map(ends -> worth(measurement, ends, year))
          .filter(worth -> worth.rank() > 0)
          .ifPresent(worths::add);
    }
    worths.sort(Comparator.comparingDouble(Worth::rank).reversed());
    return worths;
  }

  private Worth worth(Measurement measurement, double[] ends, double year) {
    int zones = 0;
    double most = 0;
    double moved = 0;
    double all = 0;
    int cycles = SureAnswer.OF_ZONES.indexOf(CycleAndSoak.CYCLES);
    for (int zone : zones()) {
      double width = 0;
      boolean ranged = false;
      for (int at = 0; at < inputs.size(); at++) {
        UncertainInput input = inputs.get(at);
        if (measurement.inputs().contains(input.column())) {
          ranged |= input.uncertain(input.rowOf(zone)) && moves(at, zone);
          width += profiles[at][cycles].greatest[zone] - profiles[at][cycles].least[zone];
        }
      }
      zones += ranged ? 1 : 0;
      most = Math.max(most, width);
      moved += width;
      all += Double.isNaN(spans.held[cycles][zone]) ? 0 : spans.held[cycles][zone];
    }
    double share = (ends[1] - ends[0]) / year;
    return new Worth(
        measurement,
        zones,
        ends[0],
        ends[1],
        share > Spans.SAME ? share : 0,
        (int) most,
        all > 0 ? moved / all : 0);
  }

  private boolean moves(int input, int zone) {
    return IntStream.range(0, SureAnswer.OF_ZONES.size())
        .anyMatch(answer -> profiles[input][answer].moves(zone));
  }

  /**
   * A range that counts.
   *
   * @param input the input
   * @param of the zone it is of, or the site
   * @param words the range with its unit
   * @param origin "typed", or the published source
   */
  public record Counted(Column input, String of, String words, String origin) {}

  /** Returns the inputs in use that have a range in no zone: they are taken as sure. */
  public List<Column> withoutRange() {
    return InputRange.all().stream()
        .filter(range -> inputs.stream().noneMatch(input -> input.range().equals(range)))
        .map(InputRange::input)
        .filter(
            column ->
                IntStream.range(0, book.rows(column.reference().table()))
                    .anyMatch(row -> !Double.isNaN(book.number(column.reference(), row))))
        .toList();
  }

  /** Returns the ranges that count, zone by zone. */
  public List<Counted> ranges() {
    List<Counted> ranges = new ArrayList<>();
    for (UncertainInput input : inputs) {
      for (int row = 0; row < input.rows(); row++) {
        String of = input.range().ofSite() ? "all zones" : name(row);
        String origin = input.origin(row);
        input
            .inWords(book, row)
            .ifPresent(words -> ranges.add(new Counted(input.column(), of, words, origin)));
      }
    }
    return ranges;
  }
}
