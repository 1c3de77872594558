package zonewright.whatif;

import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.DoubleStream;
import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Place;

/**
 * Finds what must be typed into a cell, so that another is as wanted: all it may hold is tried on a
 * copy of the design. Whatever stands on the sheets can be an answer. What a timetable places, on
 * which nights and when zones start, follows from no formula and cannot.
 */
public final class InputFinder {
  /** By what share all answers must differ for the input to count. */
  private static final double MOVES = 1e-12;

  private final Design design;
  private final Book book;
  private final InputQuestion question;
  private final BooleanSupplier stopped;
  private final FindingsBeside findings;
  private final TriedRange range;
  private final NumberSearch search;
  private final InputWords words;

  private InputFinder(Design copy, InputQuestion question, BooleanSupplier stopped) {
    this.design = copy;
    this.book = copy.book();
    this.question = question;
    this.stopped = stopped;
    this.findings = new FindingsBeside(design.findings());
    Column input = book.schema().column(question.input().column());
    double held = number(question.input());
    this.range = new TriedRange(input, book.system(), held);
    this.search = new NumberSearch(this::comes, question.goal(), question.wanted(), range.whole());
    this.words = new InputWords(book, question, range, search);
  }

  /**
   * Answers a question.
   *
   * @param snapshot the design as it is; it stays so
   * @param stopped asked now and then whether the answer is wanted no more
   * @throws CancellationException where it is not
   */
  public static InputAnswer answer(
      BookSnapshot snapshot, InputQuestion question, BooleanSupplier stopped) {
    Design copy = Design.of(snapshot);
    Optional<String> refused =
        InputQuestion.refused(copy.book(), question.input(), question.answer());
    return refused.isPresent()
        ? new InputAnswer.Refused(refused.get())
        : new InputFinder(copy, question, stopped).answer();
  }

  private double number(Place cell) {
    return book.outcome(cell.column(), cell.row()).number();
  }

  private void type(double number) {
    Place input = question.input();
    book.start(new Edits(book).set(input.column(), input.row(), new Entry.Figure(number)));
  }

  private double comes(double number) {
    if (stopped.getAsBoolean()) {
      throw new CancellationException();
    }
    type(number);
    return book.number(question.answer().column(), question.answer().row());
  }

  private InputAnswer answer() {
    Outcome before = book.outcome(question.answer().column(), question.answer().row());
    double[] points = range.points();
    double[] answers = Arrays.stream(points).map(search::at).toArray();
    Optional<String> lacking = lacking(points, answers);
    if (lacking.isPresent()) {
      return new InputAnswer.Refused(lacking.get());
    }
    double[] all = search.withTurns(points);
    List<NumberSearch.Span> spans = search.spans(all);
    if (spans.isEmpty()) {
      double nearest =
          Arrays.stream(all)
              .boxed()
              .min(Comparator.comparingDouble(search::distance))
              .orElseThrow();
      return new InputAnswer.OutOfReach(words.outOfReach(nearest), nearest);
    }
    return reached(before, spans);
  }

  /** Says why nothing can be found: no number anywhere, or always the same. */
  private Optional<String> lacking(double[] points, double[] answers) {
    DoubleSummaryStatistics known =
        DoubleStream.of(answers).filter(each -> !Double.isNaN(each)).summaryStatistics();
    if (known.getCount() == 0) {
      type(points[points.length / 2]);
      Outcome why = book.outcome(question.answer().column(), question.answer().row());
      return Optional.of(words.noNumber(why));
    }
    double moved = known.getMax() - known.getMin();
    return moved <= MOVES * Math.max(Math.abs(known.getMax()), Math.abs(known.getMin()))
        ? Optional.of(words.nothingMoves(known.getMax()))
        : Optional.empty();
  }

  private InputAnswer reached(Outcome before, List<NumberSearch.Span> spans) {
    boolean already = !Double.isNaN(range.held()) && search.holds(range.held());
    double value = already ? range.held() : nearest(spans);
    type(value);
    List<String> lines = words.reached(before, value, spans, already);
    if (!already) {
      lines.addAll(findings.changes(design.findings()));
    }
    lines.addAll(words.working());
    return new InputAnswer.Reached(question.input(), value, spans, already, lines);
  }

  /** Returns the number that does and is nearest to what the cell holds, or that changes least. */
  private double nearest(List<NumberSearch.Span> spans) {
    double held = range.held();
    if (Double.isNaN(held)) {
      return spans.stream()
          .flatMap(span -> ends(span).boxed())
          .filter(end -> !range.isLeast(end) && !range.isGreatest(end))
          .findFirst()
          .orElseGet(() -> range.within(search, spans.get(0), true));
    }
    return spans.stream()
        .flatMap(span -> ends(span).boxed())
        .min(Comparator.comparingDouble(end -> Math.abs(end - held)))
        .orElseThrow();
  }

  /** Returns both ends of a span as they are told, or its only number. */
  private DoubleStream ends(NumberSearch.Span span) {
    return span.single()
        ? DoubleStream.of(range.single(search, span))
        : DoubleStream.of(range.within(search, span, false), range.within(search, span, true));
  }
}
