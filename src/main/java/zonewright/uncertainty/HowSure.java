package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import zonewright.budget.SiteBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.InputRange;

/** How sure the answers of a design are, over all ranges of its inputs; never changes. */
public final class HowSure {
  private final Book book;
  private final List<UncertainInput> inputs;
  private final Ranging ofZones;
  private final Ranging ofSite;
  private final Map<Measurement, Narrowed> narrowed;
  private final int tried;

  HowSure(
      Book book,
      List<UncertainInput> inputs,
      Ranging ofZones,
      Ranging ofSite,
      Map<Measurement, Narrowed> narrowed,
      int tried) {
    this.book = book;
    this.inputs = inputs;
    this.ofZones = ofZones;
    this.ofSite = ofSite;
    this.narrowed = narrowed;
    this.tried = tried;
  }

  /**
   * Returns how sure the answers of a design are.
   *
   * @param snapshot the design; it stays as it is
   * @param further numbers of zones, on whatever sheet, that are told beside the usual ones; those
   *     of the site are told anyway
   * @param stopped asked now and then whether the answer is wanted no more
   * @param told how much is done, from 0 to 1
   * @throws java.util.concurrent.CancellationException where it is not
   */
  public static HowSure of(
      BookSnapshot snapshot, Set<Column> further, BooleanSupplier stopped, DoubleConsumer told) {
    Set<Column> others = new LinkedHashSet<>(further);
    others.removeAll(SureAnswer.OF_ZONES);
    others.removeAll(SureAnswer.OF_SITE);
    return SpanFinder.find(Design.of(snapshot).book(), others, stopped, told);
  }

  /** Returns how sure the answers of a design are, however long that takes. */
  public static HowSure of(BookSnapshot snapshot) {
    return of(snapshot, Set.of(), () -> false, done -> {});
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

  /** Says whether it tells what a column of zones, or of the site, lies between. */
  public boolean tells(Column answer) {
    return ofZones.tells(answer) || ofSite.tells(answer);
  }

  /** Returns what an answer of a zone lies between; of one of the site the row is 0. */
  public Span span(Column answer, int row) {
    return of(answer).span(answer, row);
  }

  private Ranging of(Column answer) {
    return ofZones.tells(answer) ? ofZones : ofSite;
  }

  /** Returns what the answers of the site lie between. */
  public List<Span> site() {
    return ofSite.answers().stream().map(answer -> ofSite.span(answer, 0)).toList();
  }

  /** Returns what each input alone does to an answer, the one that moves it most first. */
  public List<Part> parts(Column answer, int row) {
    List<Part> parts = new ArrayList<>();
    for (int input = 0; input < inputs.size(); input++) {
      Profile alone = of(answer).alone(input, answer);
      if (alone.moves(row)) {
        InputRange range = inputs.get(input).range();
        parts.add(new Part(range.input(), range.words(), alone.least[row], alone.greatest[row]));
      }
    }
    parts.sort(Comparator.comparingDouble(Part::width).reversed());
    return parts;
  }

  /** Returns the measurements that would narrow anything, the one that narrows most first. */
  public List<Narrowing> measurements() {
    return narrowed.entrySet().stream()
        .map(each -> narrowing(each.getKey(), each.getValue()))
        .filter(narrowing -> narrowing.rank() > 0)
        .sorted(Comparator.comparingDouble(Narrowing::rank).reversed())
        .toList();
  }

  private Narrowing narrowing(Measurement measurement, Narrowed open) {
    double moved = zones().stream().mapToDouble(open::moved).sum();
    double share = (open.mostWater() - open.leastWater()) / span(SiteBudget.SITE_YEAR, 0).held();
    return new Narrowing(
        measurement,
        (int) zones().stream().filter(zone -> narrows(measurement, zone)).count(),
        open.leastWater(),
        open.mostWater(),
        share > Spans.SAME ? share : 0,
        (int) zones().stream().mapToDouble(open::moved).max().orElse(0),
        moved > 0 ? moved / open.allCycles() : 0);
  }

  private boolean narrows(Measurement measurement, int zone) {
    return IntStream.range(0, inputs.size())
        .filter(at -> measurement.inputs().contains(inputs.get(at).column()))
        .anyMatch(at -> ofZones.moves(at, zone));
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
