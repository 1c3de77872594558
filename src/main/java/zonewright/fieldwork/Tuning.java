package zonewright.fieldwork;

import static zonewright.trade.Sheets.VERDICTS;
import static zonewright.trade.Sheets.ZONES;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.units.QuantityText;
import zonewright.water.TuningPercents;

/** The tuning log of a book: what waits to be weighed, and the edit that takes advice. */
public final class Tuning {
  private static final Reference ZONE_TUNING = TuningPercents.ZONE_TUNING.reference();
  private static final Reference SITE_TUNING = TuningPercents.SITE_TUNING.reference();

  private Tuning() {}

  /** Returns the rows of the log that hold a whole verdict and wait to be weighed. */
  public static List<Integer> waiting(Book book) {
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < book.rows(VERDICTS); row++) {
      boolean open = book.entry(Verdicts.DONE.reference(), row) instanceof Entry.Blank;
      if (open && judgement(book, row).isPresent() && whole(book, row)) {
        rows.add(row);
      }
    }
    return rows;
  }

  private static boolean whole(Book book, int row) {
    return !Double.isNaN(book.number(Verdicts.ZONE.reference(), row))
        && book.number(Verdicts.ZONE.reference(), row) < book.rows(ZONES)
        && !Double.isNaN(book.number(Verdicts.DATE.reference(), row));
  }

  private static Optional<Judgement> judgement(Book book, int row) {
    return book.outcome(Verdicts.VERDICT.reference(), row) instanceof Outcome.Words words
        ? Judgement.of(words.text())
        : Optional.empty();
  }

  /**
   * Returns what there is to judge by. TuningPercents out of their range counts as 100 percent; a
   * setting that cannot be read counts as usual.
   */
  public static TuningState state(Book book) {
    List<TuningState.Zone> zones = new ArrayList<>();
    for (int row = 0; row < book.rows(ZONES); row++) {
      zones.add(new TuningState.Zone(zoneName(book, row), number(book, ZONE_TUNING, row, 1)));
    }
    List<TuningState.Look> looks = new ArrayList<>();
    for (int row : waiting(book)) {
      looks.add(
          new TuningState.Look(
              (int) book.number(Verdicts.ZONE.reference(), row),
              book.number(Verdicts.DATE.reference(), row),
              judgement(book, row).orElseThrow(),
              book.number(Verdicts.OVER.reference(), row)));
    }
    looks.sort(Comparator.comparingDouble(TuningState.Look::day));
    return new TuningState(
        zones,
        number(book, SITE_TUNING, 0, 1),
        looks,
        number(book, TuningPercents.STEP.reference(), 0, 0.1),
        number(book, Watching.TOLERANCE.reference(), 0, 0.2));
  }

  private static String zoneName(Book book, int row) {
    Entry name = book.contents().row(ZONES, row).entry(0);
    return name instanceof Entry.Words words ? words.text() : "in row " + (row + 1);
  }

  private static double number(Book book, Reference column, int row, double usual) {
    double number = book.number(column, row);
    return Double.isNaN(number) ? usual : number;
  }

  /**
   * Returns the edit that sets what the advice says and writes into each verdict weighed what was
   * done and when. None where the advice changes nothing.
   */
  public static Optional<Edit> applied(Book book, TuningAdvice advice, LocalDate day) {
    if (!advice.changes()) {
      return Optional.empty();
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    String site = "";
    if (advice.site().isPresent()) {
      double to = advice.site().get();
      site = "site " + change(number(book, SITE_TUNING, 0, 1), to);
      parts.add(edits.set(SITE_TUNING, 0, new Entry.Figure(to)));
    }
    for (int zone : advice.zones().keySet()) {
      parts.add(edits.set(ZONE_TUNING, zone, new Entry.Figure(advice.zones().get(zone))));
    }
    for (int row : waiting(book)) {
      int zone = (int) book.number(Verdicts.ZONE.reference(), row);
      List<String> said = new ArrayList<>();
      if (!site.isEmpty()) {
        said.add(site);
      }
      if (advice.zones().containsKey(zone)) {
        double before = number(book, ZONE_TUNING, zone, 1);
        said.add("zone " + change(before, advice.zones().get(zone)));
      }
      String words = said.isEmpty() ? "not changed" : String.join(", ", said);
      parts.add(edits.set(Verdicts.DONE.reference(), row, new Entry.Words(day + ": " + words)));
    }
    return Optional.of(new Edit.Several("tuning: " + advice.sentence(), parts));
  }

  private static String change(double from, double to) {
    return percent(from) + " to " + percent(to);
  }

  private static String percent(double share) {
    return QuantityText.readable(share * 100, 0) + " %";
  }
}
