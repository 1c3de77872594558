package zonewright.fieldwork;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.units.QuantityText;
import zonewright.water.TuningPercents;

/**
 * What to do after the first weeks: what was seen zone by zone, and the three choices there are,
 * one of which the advice may have chosen.
 *
 * @param zones what was seen, in the order of the sheet of zones
 * @param choices the three choices, in the order in which they are thought of
 * @param advice what all that was seen comes to
 */
public record FirstWeeks(List<Zone> zones, List<Choice> choices, TuningAdvice advice) {
  /** What to do with the page, for whoever begins with it. */
  public static final String BEGIN =
      "Two or three weeks after the start look at every zone just before a watering day, and write down what is seen. One of three things follows.";

  /**
   * A zone with what was seen of it since the last change.
   *
   * @param row its row in the sheet of zones
   * @param name its name
   * @param place where it is, in words; may be empty
   * @param tuning its tuning in force, such as {@code 110 %}
   * @param day the day of the last look; empty where nobody looked
   * @param seen what was seen then; empty where nobody looked
   */
  public record Zone(int row, String name, String place, String tuning, String day, String seen) {}

  /**
   * One of the three choices.
   *
   * @param when what was seen
   * @param then what to do then
   * @param chosen whether the advice comes to it now
   */
  public record Choice(String when, String then, boolean chosen) {}

  public FirstWeeks {
    zones = List.copyOf(zones);
    choices = List.copyOf(choices);
  }

  /** Returns the page of a book as it is. */
  public static FirstWeeks of(Book book) {
    TuningState state = Tuning.state(book);
    TuningAdvice advice = TuningAdvice.on(state);
    List<Zone> zones = new ArrayList<>();
    for (int row = 0; row < state.zones().size(); row++) {
      if (book.counts(Sheets.ZONES, row)) {
        zones.add(zone(book, state, row));
      }
    }
    return new FirstWeeks(zones, choices(state, advice.kind()), advice);
  }

  private static Zone zone(Book book, TuningState state, int row) {
    TuningState.Zone zone = state.zones().get(row);
    TuningState.Look last = null;
    for (TuningState.Look look : state.looks()) {
      last = look.zone() == row ? look : last;
    }
    return new Zone(
        row,
        zone.name(),
        place(book, row),
        percent(zone.tuning()),
        last == null ? "" : CalendarText.date(last.day()).toString(),
        last == null ? "" : last.judgement().word());
  }

  private static String place(Book book, int row) {
    return book.schema().table(Sheets.ZONES).columns().stream()
        .filter(column -> column.reference().column().equals("place"))
        .map(column -> book.outcome(column.reference(), row).text())
        .findFirst()
        .orElse("");
  }

  private static List<Choice> choices(TuningState state, TuningAdvice.Kind kind) {
    return List.of(
        new Choice(
            "Everything is too wet, or everything is too dry",
            "Move the one setting of the site by a step of %s points, and leave the zones alone. It stands at %s; its range is %s to %s."
                .formatted(
                    QuantityText.readable(state.step() * 100, 0),
                    percent(state.site()),
                    percent(TuningPercents.LEAST),
                    percent(TuningPercents.MOST)),
            kind == TuningAdvice.Kind.SITE),
        new Choice(
            "One zone or two are too wet or too dry",
            "Change those zones, a step each, and leave the setting of the site alone.",
            kind == TuningAdvice.Kind.ZONES),
        new Choice(
            "The setting of the site is at its end, and it is still not enough",
            "The climate chosen was wrong, not the zones: choose the place or the weather of the site anew, or check the peak climate value in the controller, its"
                + " sensor and its shut-off. Then set the site back to 100 %.",
            kind == TuningAdvice.Kind.CONTROLLER));
  }

  private static String percent(double share) {
    return QuantityText.readable(share * 100, 0) + " %";
  }

  /** Returns what is to be done now, in a sentence, and why. */
  public List<String> now() {
    List<String> sentences = new ArrayList<>(List.of(advice.sentence()));
    sentences.addAll(advice.reasons());
    return sentences;
  }

  /**
   * Returns the edit that writes down what a zone looks like on a day. What was written down for
   * the zone on that day and not yet taken into account is replaced.
   *
   * @param zone row of the zone
   * @param seen what was seen; empty takes back what was written down that day
   */
  public static Edit looked(Book book, int zone, LocalDate day, Optional<Judgement> seen) {
    Edits edits = new Edits(book);
    double date = CalendarText.days(day);
    for (int row : Tuning.waiting(book)) {
      if (book.number(Verdicts.ZONE.reference(), row) == zone
          && book.number(Verdicts.DATE.reference(), row) == date) {
        return seen.isEmpty()
            ? edits.removed(Sheets.VERDICTS, row, 1)
            : edits.set(Verdicts.VERDICT.reference(), row, new Entry.Words(seen.get().word()));
      }
    }
    if (seen.isEmpty()) {
      return new Edit.Several("nothing seen", List.of());
    }
    Map<Column, Entry> written =
        Map.of(
            Verdicts.LOOK,
            new Entry.Words(String.valueOf(book.rows(Sheets.VERDICTS) + 1)),
            Verdicts.DATE,
            new Entry.Figure(date),
            Verdicts.ZONE,
            book.contents().row(Sheets.ZONES, zone).entry(0),
            Verdicts.VERDICT,
            new Entry.Words(seen.get().word()));
    List<Entry> entries =
        Verdicts.ALL.stream().map(column -> written.getOrDefault(column, Entry.BLANK)).toList();
    return edits.appended(Sheets.VERDICTS, List.of(entries));
  }
}
