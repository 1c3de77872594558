package zonewright.workbook.pack;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.design.Design;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsPlan;
import zonewright.nights.ScheduleCard;
import zonewright.nights.ScheduleCards;
import zonewright.nights.WaysOut;
import zonewright.workbook.kit.CellStyleName;

/** What someone keys into the controller: a page for each program. */
final class ScheduleCardSheet implements PackSheet {
  private static final int LONGEST_NAME = 10;

  private static final List<String> CAUTIONS =
      List.of(
          "Work on the controller's mains wiring is for a licensed electrician. Switch the power off before any wire is touched.",
          "Before the schedule is left alone, run each station by hand: look for leaks, tilted heads, spray on paths, and water that runs off.",
          "Local rules and drought orders decide on days and hours. Where it freezes, shut down and drain before winter.");

  @Override
  public String word() {
    return "cards";
  }

  @Override
  public String title() {
    return "Card";
  }

  @Override
  public String about() {
    return "Schedule cards, a page for each program, as they are keyed into the controller.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return new TimetableSheet().lacks(design);
  }

  @Override
  public void write(PackBook book) {
    Optional<NightsPlan> plan = book.design().nights().plan();
    if (plan.isEmpty()) {
      book.page(title(), false, 90)
          .title("Schedule cards", "")
          .across("There is no timetable yet.", CellStyleName.PLAIN);
      return;
    }
    Set<String> taken = new HashSet<>();
    List<String> ways = WaysOut.sentences(book.design().book(), plan.get());
    for (ScheduleCard card : ScheduleCards.of(plan.get())) {
      write(book.page(name(card, taken), true, 12, 32, 11, 11, 10, 20, 28, 20), book, card, ways);
    }
  }

  /** A sheet's name holds no letters that files forbid, and is not taken twice. */
  private String name(ScheduleCard card, Set<String> taken) {
    String plain = called(card).replaceAll("[\\[\\]:*?/\\\\'\\p{Cntrl}]", " ").strip();
    String shortened =
        plain.length() > LONGEST_NAME ? plain.substring(0, LONGEST_NAME).strip() : plain;
    String name = title() + " " + (shortened.isEmpty() ? "–" : shortened);
    int number = 2;
    String free = name;
    while (!taken.add(free.toLowerCase(Locale.ROOT))) {
      free = name + " " + number++;
    }
    return free;
  }

  private static String called(ScheduleCard card) {
    return card.letter().isEmpty() ? card.program() : card.letter();
  }

  private static void write(Page page, PackBook book, ScheduleCard card, List<String> ways) {
    page.title(card.title(), "Schedule card of " + book.project() + ", for the peak month.")
        .restingOnClimate();
    if (!card.misfits().isEmpty()) {
      page.band("Does not fit: key in what stands here, and see to the rest");
      card.misfits().forEach(misfit -> page.across(misfit, CellStyleName.CAUTION));
      if (!ways.isEmpty()) {
        page.across("Ways out, the cheapest first:", CellStyleName.NAME);
        ways.forEach(way -> page.across(way, CellStyleName.PLAIN));
      }
      page.next();
    }
    if (card.lines().isEmpty()) {
      return;
    }
    boolean keepsSoaks = card.way() == ScheduleCard.Way.CYCLE_AND_SOAK;
    page.words(0, "Days", CellStyleName.NAME).across(1, card.days(), CellStyleName.PLAIN);
    if (!card.starts().isEmpty()) {
      page.words(0, "Start times", CellStyleName.NAME)
          .across(1, String.join(", ", card.starts()), CellStyleName.PLAIN);
      page.words(0, "Done at", CellStyleName.NAME)
          .across(
              1,
              card.finish() + ", after " + card.minutes() + " min of watering",
              CellStyleName.PLAIN);
    }
    List<String> percents =
        MonthBook.toKeyIn(book.design().book()).stream().map(MonthBook.Month::percent).toList();
    page.words(0, "Percent", CellStyleName.NAME)
        .across(
            1,
            "100 in the peak month, whose minutes these are; a sensor sets it, or by hand: "
                + String.join(", ", percents),
            CellStyleName.PLAIN);
    page.across(card.way().sentence(), CellStyleName.PLAIN);
    page.next();
    page.headings(
        "Station",
        "Where",
        keepsSoaks ? "Run time (min)" : "Minutes a cycle",
        keepsSoaks ? "Longest cycle (min)" : "Cycles",
        "Soak at least (min)",
        "Days",
        card.starts().isEmpty() ? "Start times" : "Will run at",
        "");
    for (ScheduleCard.Line line : card.lines()) {
      page.words(0, line.zone().name(), CellStyleName.NAME)
          .words(1, line.zone().place(), CellStyleName.PLAIN)
          .number(2, line.minutes(), "0", CellStyleName.CALCULATED)
          .number(
              3, keepsSoaks ? line.longestCycle() : line.cycles(), "0", CellStyleName.CALCULATED);
      if (line.soak() > 0) {
        page.number(4, line.soak(), "0", CellStyleName.CALCULATED);
      } else {
        page.words(4, "none", CellStyleName.CALCULATED);
      }
      page.words(5, line.days(), CellStyleName.PLAIN)
          .words(6, String.join(", ", line.starts()), CellStyleName.PLAIN)
          .words(7, line.lacks(), CellStyleName.CAUTION)
          .next();
    }
    if (!card.rounding().isEmpty()) {
      page.across(card.rounding(), CellStyleName.PLAIN);
    }
    page.next().band("Take care");
    CAUTIONS.forEach(caution -> page.across(caution, CellStyleName.CAUTION));
  }
}
