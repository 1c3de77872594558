package zonewright.nights;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import zonewright.climate.Peak;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.timetable.StartRuns;
import zonewright.water.Controller;
import zonewright.water.MonthlySchedule;

/**
 * What is keyed into the controller, in the order of the keys pressed, and what of it is done. A
 * step is known by its words: when the design changes what it says, its tick no longer counts.
 */
public final class KeySteps {
  private static final String BETWEEN = "; ";

  private final NightsPlan plan;
  private final Book book;

  /**
   * One thing to key in.
   *
   * @param key what its tick is kept by
   * @param words what to key in
   */
  public record Step(String key, String words) {}

  /**
   * The steps of one card.
   *
   * @param card the card
   * @param steps its steps, in order; none where nothing of it can be keyed in
   */
  public record Page(ScheduleCard card, List<Step> steps) {
    /** Keeps a copy. */
    public Page {
      steps = List.copyOf(steps);
    }
  }

  private KeySteps(NightsPlan plan, Book book) {
    this.plan = plan;
    this.book = book;
  }

  /** Returns a page for each card of a plan, with the percent of the month the design shows. */
  public static List<Page> of(NightsPlan plan, Book book) {
    KeySteps steps = new KeySteps(plan, book);
    return ScheduleCards.of(plan).stream().map(steps::page).toList();
  }

  /** Returns the month the design shows; empty where no months are known. */
  public static Optional<MonthBook.Month> month(Book book) {
    String chosen = word(book, MonthlySchedule.MONTH);
    String month = chosen.isEmpty() ? word(book, Peak.MONTH) : chosen;
    return MonthBook.toKeyIn(book).stream().filter(each -> each.name().equals(month)).findFirst();
  }

  private static String word(Book book, zonewright.sheet.Column column) {
    return book.outcome(column.reference(), 0).text();
  }

  private Page page(ScheduleCard card) {
    List<String> words = new ArrayList<>();
    if (!card.lines().isEmpty() && !card.starts().isEmpty()) {
      words.add("Days: " + card.days());
      for (int start = 0; start < card.starts().size(); start++) {
        words.add("Start %s: %s".formatted(start + 1, card.starts().get(start)));
      }
    }
    for (ScheduleCard.Line line : card.lines()) {
      words.add(station(line) + ": " + keys(card, line));
    }
    if (!card.lines().isEmpty()) {
      month(book).ifPresent(month -> words.add("Percent, " + month.percent()));
    }
    return new Page(card, words.stream().map(each -> new Step(key(card, each), each)).toList());
  }

  private static String station(ScheduleCard.Line line) {
    String place = line.zone().place().isBlank() ? "" : ", " + line.zone().place();
    return "Station " + line.zone().name() + place;
  }

  private String keys(ScheduleCard card, ScheduleCard.Line line) {
    return switch (card.way()) {
      case CYCLE_AND_SOAK ->
          line.soak() == 0
              ? line.minutes() + " min"
              : "%s min, cycle %s min, soak %s min"
                  .formatted(line.minutes(), line.longestCycle(), line.soak());
      case STATION_STARTS ->
          "%s min, %s at %s"
              .formatted(line.minutes(), line.days(), String.join(", ", line.starts()));
      case START_A_CYCLE ->
          plan.input().startRuns() == StartRuns.STATIONS_STILL_DUE
              ? "%s min, %s".formatted(line.minutes(), cycles(line.cycles()))
              : line.minutes() + " min";
    };
  }

  private static String cycles(int count) {
    return count == 1 ? "1 cycle" : count + " cycles";
  }

  private static String key(ScheduleCard card, String words) {
    return (card.title() + ", " + words).replace(';', ',').replaceAll("\\s+", " ");
  }

  /** Returns what is ticked, by the keys of the steps. */
  public static Set<String> ticked(Book book) {
    return Arrays.stream(word(book, Controller.KEYED_IN).split(BETWEEN, -1))
        .filter(key -> !key.isBlank())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * Returns the edit that ticks a step or takes its tick away. Ticks of steps that the cards no
   * longer have go with it.
   *
   * @param pages the cards as they are now
   */
  public static Edit tick(Book book, List<Page> pages, Step step, boolean done) {
    Set<String> now = ticked(book);
    if (done) {
      now.add(step.key());
    } else {
      now.remove(step.key());
    }
    String all =
        pages.stream()
            .flatMap(page -> page.steps().stream())
            .map(Step::key)
            .filter(now::contains)
            .collect(Collectors.joining(BETWEEN));
    Entry entry = all.isEmpty() ? Entry.BLANK : new Entry.Words(all);
    return new Edits(book).set(Controller.KEYED_IN.reference(), 0, entry);
  }
}
