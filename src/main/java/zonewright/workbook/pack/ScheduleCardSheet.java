package zonewright.workbook.pack;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.design.Design;
import zonewright.nights.NightsPlan;
import zonewright.nights.ScheduleCard;
import zonewright.nights.ScheduleCards;
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
    for (ScheduleCard card : ScheduleCards.of(plan.get())) {
      write(book.page(name(card, taken), false, 12, 32, 10, 9, 10, 20, 34), book, card);
    }
  }

  /** A sheet's name holds no letters that files forbid, and is not taken twice. */
  private String name(ScheduleCard card, Set<String> taken) {
    String plain = card.program().replaceAll("[\\[\\]:*?/\\\\'\\p{Cntrl}]", " ").strip();
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

  private static void write(Page page, PackBook book, ScheduleCard card) {
    page.title(card.title(), "Schedule card of " + book.project() + ", for the peak month.")
        .restingOnClimate();
    if (!card.misfits().isEmpty()) {
      page.band("Does not fit: key in what stands here, and see to the rest");
      card.misfits().forEach(misfit -> page.across(misfit, CellStyleName.CAUTION));
      page.next();
    }
    if (card.lines().isEmpty()) {
      return;
    }
    page.words(0, "Days", CellStyleName.NAME).across(1, card.nights(), CellStyleName.PLAIN);
    page.words(0, "Percent", CellStyleName.NAME)
        .across(
            1,
            "100: the minutes are those of the peak month. Other months get their percent, or a sensor sets it.",
            CellStyleName.PLAIN);
    if (card.startsProgram()) {
      page.words(0, "Start times", CellStyleName.NAME)
          .across(1, String.join(", ", card.starts()), CellStyleName.PLAIN);
    }
    page.next();
    page.headings(
        "Station",
        "Where",
        "Minutes a cycle",
        "Cycles",
        "Soak at least (min)",
        "Nights",
        card.startsProgram() ? "Will run at" : "Start times");
    for (ScheduleCard.Line line : card.lines()) {
      page.words(0, line.zone().name(), CellStyleName.NAME)
          .words(1, line.zone().place(), CellStyleName.PLAIN)
          .number(2, line.minutes(), "0", CellStyleName.CALCULATED)
          .number(3, line.cycles(), "0", CellStyleName.CALCULATED);
      if (line.cycles() > 1) {
        page.number(4, line.soak(), "0", CellStyleName.CALCULATED);
      } else {
        page.words(4, "none", CellStyleName.CALCULATED);
      }
      page.words(5, line.nights(), CellStyleName.PLAIN)
          .words(6, String.join(", ", line.starts()), CellStyleName.PLAIN)
          .next();
    }
    page.next().band("Take care");
    CAUTIONS.forEach(caution -> page.across(caution, CellStyleName.CAUTION));
  }
}
