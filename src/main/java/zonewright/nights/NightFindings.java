package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;
import zonewright.timetable.Cure;
import zonewright.timetable.NightPlan;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.water.DroughtStages;
import zonewright.water.SiteRules;

/** What a timetable has to say, in words for a designer and with cures that can be carried out. */
final class NightFindings {
  private static final int MOST_NAMED = 4;

  private final Book book;
  private final NightsPlan plan;
  private final NightNames names;
  private final List<NightFinding> found = new ArrayList<>();

  private NightFindings(Book book, NightsPlan plan) {
    this.book = book;
    this.plan = plan;
    this.names = new NightNames(plan);
  }

  /** Returns the findings of a plan of the book as it is. */
  static List<NightFinding> of(Book book, NightsPlan plan) {
    NightFindings findings = new NightFindings(book, plan);
    findings.shortNights();
    findings.ofPlanner();
    findings.tooManyNights();
    findings.wishes();
    findings.firstNight();
    findings.stage();
    return findings.found;
  }

  /** The worst night of each weekday that is too short, with the cures; the best comes first. */
  private void shortNights() {
    List<NightPlan> nights = plan.timetable().overfullNights();
    ForbiddenHours forbidden = new ForbiddenHours(book);
    List<Cure> cures = plan.timetable().cures().stream().filter(forbidden::leave).toList();
    CureWords words = new CureWords(plan, names);
    for (NightPlan night : nights) {
      found.add(
          new NightFinding(
              Severity.CHECK,
              NightSheet.CLOSES.reference(),
              night.night().weekday().getValue() - 1,
              "needs %s min more than its hours give; no room for %s"
                  .formatted(night.overrunMinutes(), zones(night.undoneMinutes())),
              cures.isEmpty()
                  ? "open more nights or hours, or ask for less water in it"
                  : words.clause(cures.get(0)),
              cures.stream().findFirst().flatMap(cure -> remedy(cure, words))));
    }
    for (int i = 1; i < cures.size(); i++) {
      found.add(
          new NightFinding(
              Severity.NOTE,
              NightSheet.CLOSES.reference(),
              nights.get(0).night().weekday().getValue() - 1,
              "has another way to make room",
              words.clause(cures.get(i)),
              remedy(cures.get(i), words)));
    }
  }

  private String zones(Map<WateredZone, Integer> minutes) {
    List<String> some = new ArrayList<>();
    minutes.forEach((zone, lost) -> some.add(names.zone(zone) + " (" + lost + " min)"));
    return listed(some);
  }

  private static String listed(List<String> some) {
    int more = some.size() - MOST_NAMED;
    return more > 1
        ? String.join(", ", some.subList(0, MOST_NAMED)) + " and " + more + " more"
        : String.join(", ", some);
  }

  private Optional<Remedy> remedy(Cure cure, CureWords words) {
    return cure.ofHardware()
        ? Optional.empty()
        : Optional.of(new Remedy(words.name(cure), new CureEdit(cure, plan.input())));
  }

  private void ofPlanner() {
    PlannerWords words = new PlannerWords(plan, names);
    plan.timetable().findings().forEach(finding -> found.add(words.of(finding)));
    boolean told = plan.timetable().overrunMinutes() > 0;
    for (PlainProgram program : plan.programs()) {
      for (Misfits.Misfit misfit : Misfits.of(program, plan.input().rules())) {
        if (!(told && misfit.tooLong())) {
          found.add(
              words.ofProgram(program.program(), Severity.CHECK, misfit.clause(), misfit.cure()));
        }
      }
    }
  }

  private void tooManyNights() {
    double allowed = book.number(SiteRules.DAYS_ALLOWED.reference(), 0);
    if (!plan.weekly() || Double.isNaN(allowed)) {
      return;
    }
    Set<DayOfWeek> used = new LinkedHashSet<>();
    for (NightPlan night : plan.timetable().nights()) {
      if (!night.runs().isEmpty()) {
        used.add(night.night().weekday());
      }
    }
    if (used.size() > allowed) {
      found.add(
          new NightFinding(
              Severity.CHECK,
              SiteRules.DAYS_ALLOWED.reference(),
              0,
              "is watered on %s nights of the week, and %s are allowed"
                  .formatted(used.size(), (int) allowed),
              "say on the sheet Nights which nights are not watered, or name the weekdays allowed",
              Optional.empty()));
    }
  }

  private void wishes() {
    for (int row = 0; row < book.rows(Sheets.PROGRAMS); row++) {
      double wish = book.number(SiteNights.START_WISH.reference(), row);
      if (Double.isNaN(wish)) {
        continue;
      }
      int minute = CalendarText.minuteOfDay(wish);
      long program = book.contents().row(Sheets.PROGRAMS, row).id();
      boolean used =
          plan.input().stations().stream().anyMatch(station -> station.zone().program() == program);
      boolean open =
          plan.input().rules().windows().values().stream()
              .anyMatch(windows -> isOpen(windows, minute));
      if (used && !open) {
        found.add(
            new NightFinding(
                Severity.CHECK,
                SiteNights.START_WISH.reference(),
                row,
                "should start no earlier than %s, when no night is open: the wish cannot count"
                    .formatted(CalendarText.time(wish)),
                "choose a time between opening and closing, or clear it",
                Optional.empty()));
      }
    }
  }

  /** Which zones the stage in force leaves short of their need, the worst first. */
  private void stage() {
    if (book.outcome(DroughtStages.IN_FORCE.reference(), 0).text().isEmpty()) {
      return;
    }
    List<ZoneShare> shares = ZoneShare.of(plan);
    List<ZoneShare> suffering = ZoneShare.suffering(shares);
    List<String> some = new ArrayList<>();
    for (ZoneShare each : suffering) {
      some.add(
          "%s lacks %s (%s of %s min %s)"
              .formatted(
                  NightNames.withPlace(each.sheet()),
                  each.missingWords(),
                  each.placed(),
                  Math.round(each.needed()),
                  ZoneShare.period(plan)));
    }
    found.add(
        new NightFinding(
            suffering.isEmpty() ? Severity.NOTE : Severity.CHECK,
            DroughtStages.IN_FORCE.reference(),
            0,
            suffering.isEmpty()
                ? "leaves no zone short of what it needs"
                : "leaves %s of %s zones short: %s"
                    .formatted(suffering.size(), shares.size(), listed(some)),
            suffering.isEmpty()
                ? "nothing needs to be done"
                : "see to the first of them first; the nights show what each zone lacks",
            Optional.empty()));
  }

  private static boolean isOpen(List<WateringWindow> windows, int minute) {
    int opens = windows.get(0).startMinute();
    int closes = windows.get(windows.size() - 1).endMinute();
    return Math.floorMod(minute - opens, WateringWindow.DAY) < closes - opens;
  }

  private void firstNight() {
    if (!plan.weekly() && Double.isNaN(book.number(SiteNights.FIRST_NIGHT.reference(), 0))) {
      found.add(
          new NightFinding(
              Severity.NOTE,
              SiteNights.FIRST_NIGHT.reference(),
              0,
              "has zones that water by dates, and no first night: dates are counted from %s"
                  .formatted(plan.input().firstDay()),
              "type the first night",
              Optional.empty()));
    }
  }
}
