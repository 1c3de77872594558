package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import zonewright.budget.ZoneBudget;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.QuantityText;
import zonewright.water.CycleAndSoak;
import zonewright.water.InputRange;

/** How sure a design is, in words: the same in the window, by the command and on paper. */
public final class SureWords {
  /** What spans and measurements are worth, below every page. */
  public static final String FOOT =
      "Made with Zonewright. Spans are as good as the ranges they rest on; local codes and licensed practice decide.";

  /** Stands behind a span that does not go steadily. */
  private static final String NOT_STEADILY = "*";

  /** By how much less than the first an input moves an answer to move it less. */
  private static final double LESS = 0.999;

  private static final String NONE = "?";

  private final HowSure sure;
  private final Book book;

  /** Puts into words how sure a design is. */
  public SureWords(HowSure sure) {
    this.sure = sure;
    this.book = sure.book();
  }

  /** Returns the headings of the table of zones. */
  public List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("Zone"));
    HowSure.answers().forEach(answer -> headings.add(answer.heading(book.system())));
    return headings;
  }

  /** Returns a zone's row of that table: its name, and what each answer lies between. */
  public List<String> row(int zone) {
    List<String> cells = new ArrayList<>(List.of(sure.name(zone)));
    HowSure.answers().forEach(answer -> cells.add(cell(sure.span(answer, zone))));
    return cells;
  }

  /** A span without its unit, such as "2–7". */
  private String cell(HowSure.Span span) {
    if (span.none()) {
      return NONE;
    }
    String least = bare(span.column(), span.least());
    String greatest = bare(span.column(), span.greatest());
    String ends = least.equals(greatest) ? least : least + "–" + greatest;
    return ends
        + (span.missing() ? " or none" : "")
        + (span.steady() || span.single() ? "" : NOT_STEADILY);
  }

  private String bare(Column column, double number) {
    return column.equals(CycleAndSoak.SOAK) && number == 0
        ? "none"
        : column.shown(number, book.system());
  }

  /** Returns what the mark behind a span means. */
  public String mark() {
    return "* Not steadily: minutes, cycles and watering days go in whole steps, so the ends are those of the %s designs tried."
        .formatted(QuantityText.grouped(sure.tried(), 0));
  }

  /** Returns what the answers of the site lie between, a sentence each. */
  public List<String> site() {
    return sure.site().stream().map(this::sentence).toList();
  }

  private String sentence(HowSure.Span span) {
    String name = span.column().name();
    if (span.none()) {
      return "%s: not known yet.".formatted(name);
    }
    String held = amount(span.column(), span.held());
    return span.single()
        ? "%s: %s, whatever the ranges.".formatted(name, held)
        : "%s: %s in the design, %s to %s over the ranges%s."
            .formatted(
                name,
                held,
                bare(span.column(), span.least()),
                amount(span.column(), span.greatest()),
                span.steady() ? "" : " (not steadily: as tried)");
  }

  private String amount(Column column, double number) {
    return Words.of(book, column, number);
  }

  /**
   * Returns what the number in a cell lies between, and which input moves it most, as a sentence;
   * blank where there is no number.
   */
  public String cell(CellSpan cell) {
    HowSure.Span span = sure.span(cell.column(), cell.row());
    if (span.none()) {
      return "";
    }
    String none = span.missing() ? ", or there is none" : "";
    if (span.single()) {
      return "Over the ranges of its inputs it stays %s%s."
          .formatted(amount(span.column(), span.held()), none);
    }
    return "Over the ranges of its inputs it lies between %s and %s%s%s; %s."
        .formatted(
            bare(span.column(), span.least()),
            amount(span.column(), span.greatest()),
            none,
            span.steady() ? "" : ", as tried",
            sure.parts(cell.column(), cell.row()).stream()
                .findFirst()
                .map(part -> moved(span.column(), part))
                .orElse("no input moves it by itself"));
  }

  private String moved(Column answer, HowSure.Part part) {
    return "the %s moves it most, between %s and %s by itself"
        .formatted(part.words(), bare(answer, part.least()), amount(answer, part.greatest()));
  }

  /** Returns what is said of a zone: its spans, and what to measure there. */
  public List<String> zone(int zone) {
    List<String> lines = new ArrayList<>();
    HowSure.answers().forEach(answer -> lines.add(sentence(sure.span(answer, zone))));
    lines.add("");
    lines.addAll(toMeasure(zone));
    return lines;
  }

  /** Returns which measurements would narrow the cycles and the water of a zone most. */
  public List<String> toMeasure(int zone) {
    List<String> lines = new ArrayList<>();
    for (Column answer : List.of(CycleAndSoak.CYCLES, ZoneBudget.VOLUME_PER_YEAR)) {
      HowSure.Span span = sure.span(answer, zone);
      List<HowSure.Part> parts = sure.parts(answer, zone);
      if (!parts.isEmpty()) {
        lines.add(measure(answer, parts));
      } else if (!span.none() && !span.single()) {
        lines.add(
            "%s, but no input moves %s by itself."
                .formatted(sentence(span).replaceFirst("\\.$", ""), many(answer) ? "them" : "it"));
      }
    }
    return lines.isEmpty()
        ? List.of("Nothing to measure here: no range moves its cycles or its water.")
        : lines;
  }

  private static boolean many(Column answer) {
    return answer.equals(CycleAndSoak.CYCLES);
  }

  private String measure(Column answer, List<HowSure.Part> parts) {
    HowSure.Part first = parts.get(0);
    return "Measure the %s (%s): %s by it alone; %s."
        .formatted(
            first.words(),
            Measurement.of(InputRange.of(first.input().reference()).orElseThrow())
                .name()
                .toLowerCase(Locale.ROOT),
            between(answer, first),
            others(answer, parts));
  }

  private String between(Column answer, HowSure.Part part) {
    String name = answer.name().toLowerCase(Locale.ROOT);
    return many(answer)
        ? "%s lie between %s and %s"
            .formatted(name, bare(answer, part.least()), bare(answer, part.greatest()))
        : "the %s lies between %s and %s"
            .formatted(name, bare(answer, part.least()), amount(answer, part.greatest()));
  }

  private String others(Column answer, List<HowSure.Part> parts) {
    String it = many(answer) ? "them" : "it";
    if (parts.size() == 1) {
      return "nothing else moves " + it;
    }
    HowSure.Part second = parts.get(1);
    return second.width() > LESS * parts.get(0).width()
        ? "the %s moves %s as much".formatted(second.words(), it)
        : "nothing else moves %s by more than %s".formatted(it, amount(answer, second.width()));
  }

  /** Returns the headings of the table of measurements. */
  public static List<String> measurementHeadings() {
    return List.of(
        "Measurement",
        "Zones",
        "Minutes it takes",
        "Water a year by it alone",
        "Part of all water",
        "Cycles moved",
        "Part of all cycles");
  }

  /** Returns a row of the table of measurements. */
  public List<String> row(Narrowing worth) {
    Column year = sure.site().get(1).column();
    return List.of(
        worth.measurement().name(),
        worth.measurement().ofSite() ? "all" : String.valueOf(worth.zones()),
        QuantityText.grouped(worth.minutes(), 0),
        worth.waterShare() == 0
            ? "the same"
            : bare(year, worth.least()) + "–" + amount(year, worth.greatest()),
        part(worth.waterShare()),
        worth.cycles() == 0 ? "none" : "up to " + worth.cycles(),
        part(worth.cycleShare()));
  }

  private static String part(double share) {
    double percent = 100 * share;
    return QuantityText.grouped(percent, percent > 0 && percent < 1 ? 1 : 0) + " %";
  }

  /** Returns what measurements are ranked by. */
  public static String ranking() {
    return "The measurement that narrows most comes first: by the part of the site's water of a year, or of all its cycles, that its"
        + " ranges alone leave open, whichever is the greater. Minutes are common practice and count each zone it helps.";
  }

  /** Returns which inputs are taken as sure, as a sentence; blank where all have ranges. */
  public String takenAsSure() {
    List<String> names = sure.withoutRange().stream().map(Column::name).toList();
    return names.isEmpty()
        ? ""
        : "Taken as sure, for no range is typed and none was published: %s. Type a range where you know of one."
            .formatted(String.join(", ", names));
  }

  /** Returns the ranges that count, alike ones of several zones in one line. */
  public List<String> ranges() {
    return sure.ranges().stream()
        .collect(
            Collectors.groupingBy(
                range -> "%s %s; %s".formatted(range.input().name(), range.words(), range.origin()),
                LinkedHashMap::new,
                Collectors.mapping(HowSure.Counted::of, Collectors.joining(", "))))
        .entrySet()
        .stream()
        .map(line -> line.getValue() + ": " + line.getKey())
        .toList();
  }
}
