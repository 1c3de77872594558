package zonewright.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.water.InputRange;

/** The range of the input in a cell, as a person types it: "0.2 to 0.5 in/h", or "± 10 %". */
public final class TypedRange {
  private static final Pattern ENDS =
      Pattern.compile(
          "(?i)(?:between\\b|from\\b)?\\s*(.+?)\\s*(?:\\b(?:to|and)\\b|–|—|\\.\\.+|(?<=[\\d%a-z²³])\\s*-)\\s*(.+)");
  private static final Pattern AROUND =
      Pattern.compile("(?:±|\\+\\s*/?\\s*-)\\s*(\\d+(?:[.,]\\d+)?)\\s*%");
  private static final Pattern UNIT = Pattern.compile("[\\d.,\\s+/*()-]*(.*)");

  /** Of a number a part of which is taken no more digits are meant. */
  private static final MathContext DIGITS = new MathContext(12);

  private final Book book;
  private final InputRange range;
  private final int row;

  private TypedRange(Book book, Place place, InputRange range) {
    this.book = book;
    this.range = range;
    this.row = range.ofSite() ? 0 : place.row();
  }

  /** What came of a text. */
  public sealed interface Reading {}

  /** It can be done: both ends, as one edit. */
  public record Made(Edit edit) implements Reading {}

  /** It cannot be understood or used. */
  public record Refused(String sentence) implements Reading {}

  /** Returns the range of a cell of an input, or of an end of its range; none for other cells. */
  public static Optional<TypedRange> at(Book book, Place place) {
    Reference column = place.column();
    return InputRange.all().stream()
        .filter(
            each ->
                List.of(each.input(), each.least(), each.greatest()).stream()
                    .anyMatch(one -> one.reference().equals(column)))
        .filter(each -> place.row() < book.rows(column.table()))
        .map(each -> new TypedRange(book, place, each))
        .findFirst();
  }

  /** Returns why a cell can have no range. */
  public static String refused(Book book, Place place) {
    return "%s can be given no range. An input of a zone can, such as its intake rate or its area; and so can reference ET and rain of the sheet Months."
        .formatted(book.schema().column(place.column()).name());
  }

  /** Returns what the range is of, such as "zone 7, Intake rate". */
  public String name() {
    return range.ofSite()
        ? range.input().name() + " of all months"
        : book.cellName(range.input().reference(), row).inWords();
  }

  /** Returns what the design rests on, with its unit. */
  public String held() {
    return range.ofSite()
        ? "100 %"
        : book.shown(range.input().reference(), book.outcome(range.input().reference(), row));
  }

  /** Returns how a range is written, in a sentence. */
  public String form() {
    return range.least().kind() == QuantityKind.SHARE
        ? "Write it as 50 to 70 %, or as ± 10 % around what it is."
        : "Write it as 0.2 to 0.5, with the unit if you like, or as ± 10 % around what it is.";
  }

  /**
   * Returns the range that was typed, as it is typed; blank where none was. Of one end alone the
   * other is the number held.
   */
  public String typed() {
    List<Column> ends = List.of(range.least(), range.greatest());
    return ends.stream().allMatch(end -> entry(end) instanceof Entry.Blank)
        ? ""
        : ends.stream()
            .map(
                end ->
                    Entries.typed(
                        end, entry(end) instanceof Entry.Blank ? heldFigure() : entry(end)))
            .collect(Collectors.joining(" to "));
  }

  private Entry entry(Column end) {
    return book.entry(end.reference(), row);
  }

  private Entry heldFigure() {
    double held = heldNumber();
    return Double.isNaN(held) ? Entry.BLANK : new Entry.Figure(held);
  }

  private double heldNumber() {
    return range.ofSite() ? 1 : book.number(range.input().reference(), row);
  }

  /** Returns the range somebody typed, as a sentence; blank where none was. */
  public String told() {
    return typed().isEmpty()
        ? ""
        : "Its range, as typed: %s to %s.".formatted(shown(range.least()), shown(range.greatest()));
  }

  private String shown(Column end) {
    double number = book.number(end.reference(), row);
    return Words.of(book, end, Double.isNaN(number) ? heldNumber() : number);
  }

  /** Returns the published range that counts while none is typed, with its source. */
  public Optional<String> published() {
    return new PublishedRanges(book)
        .of(range, row)
        .map(
            known ->
                "%s to %s: %s"
                    .formatted(
                        Words.of(book, range.least(), known.least()),
                        Words.of(book, range.least(), known.greatest()),
                        known.origin()));
  }

  /** Reads a range; a blank one takes the range away. */
  public Reading read(String text) {
    String plain = text.strip();
    if (plain.isEmpty()) {
      return made(Entry.BLANK, Entry.BLANK);
    }
    Matcher around = AROUND.matcher(plain);
    if (around.matches()) {
      return around(Double.parseDouble(around.group(1).replace(',', '.')) / 100);
    }
    Matcher ends = ENDS.matcher(plain);
    if (!ends.matches()) {
      return new Refused("“%s” is no range. %s".formatted(plain, form()));
    }
    Matcher unit = UNIT.matcher(ends.group(2));
    boolean bare = ends.group(1).matches("[\\d.,\\s+/*()-]+");
    String first =
        bare && unit.matches() && !unit.group(1).isEmpty()
            ? ends.group(1) + " " + unit.group(1)
            : ends.group(1);
    QuantityText.Reading least = number(first);
    QuantityText.Reading greatest = number(ends.group(2));
    for (QuantityText.Reading each : List.of(least, greatest)) {
      if (each instanceof QuantityText.Unreadable not) {
        return new Refused(not.sentence() + ". " + form());
      }
    }
    double from = ((QuantityText.Read) least).value();
    double to = ((QuantityText.Read) greatest).value();
    return from > to
        ? new Refused(
            "The least comes first: write %s to %s."
                .formatted(Words.of(book, range.least(), to), Words.of(book, range.least(), from)))
        : ends(from, to);
  }

  private QuantityText.Reading number(String text) {
    return QuantityText.read(text, range.least().kind(), book.system());
  }

  private Reading around(double part) {
    double number = heldNumber();
    return Double.isNaN(number)
        ? new Refused(name() + " has no number yet to give a range around.")
        : ends(rounded(number * (1 - part)), rounded(number * (1 + part)));
  }

  private static double rounded(double number) {
    return new BigDecimal(number).round(DIGITS).doubleValue();
  }

  private Reading ends(double least, double greatest) {
    for (double each : new double[] {least, greatest}) {
      Optional<String> problem =
          range.least().bounds().orElseThrow().problem(each, range.least().kind(), book.system());
      if (problem.isPresent()) {
        return new Refused(problem.get() + ".");
      }
    }
    return made(new Entry.Figure(least), new Entry.Figure(greatest));
  }

  private Reading made(Entry least, Entry greatest) {
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    parts.add(edits.set(range.least().reference(), row, least));
    parts.add(edits.set(range.greatest().reference(), row, greatest));
    return new Made(new Edit.Several("range of " + name(), parts));
  }
}
