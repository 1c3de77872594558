package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import zonewright.budget.SiteBudget;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;
import zonewright.timetable.Cure;
import zonewright.timetable.Finding;
import zonewright.timetable.NightPlan;
import zonewright.timetable.Shortfall;
import zonewright.timetable.WateringWindow;
import zonewright.trade.Sheets;
import zonewright.units.CalendarText;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;

/** What a timetable has to say, in words for a designer and with cures that can be carried out. */
final class NightFindings {
  private static final int MOST_NAMED = 4;

  private final Book book;
  private final NightsPlan plan;
  private final List<NightFinding> found = new ArrayList<>();

  private NightFindings(Book book, NightsPlan plan) {
    this.book = book;
    this.plan = plan;
  }

  /** Returns the findings of a plan of the book as it is. */
  static List<NightFinding> of(Book book, NightsPlan plan) {
    NightFindings findings = new NightFindings(book, plan);
    findings.shortNights();
    findings.ofPlanner();
    findings.tooManyNights();
    findings.wishes();
    findings.firstNight();
    return findings.found;
  }

  /** The worst night of each weekday that is too short, with the cures; the best comes first. */
  private void shortNights() {
    List<NightPlan> shortest = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      plan.timetable().nights().stream()
          .filter(night -> night.night().weekday() == day && night.overrunMinutes() > 0)
          .max(Comparator.comparingInt(NightPlan::overrunMinutes))
          .ifPresent(shortest::add);
    }
    List<Cure> cures = plan.timetable().cures();
    for (NightPlan night : shortest) {
      int row = night.night().weekday().getValue() - 1;
      String cure =
          cures.isEmpty()
              ? "open more nights or hours, or ask for less water in it"
              : lower(cures.get(0).sentence());
      Optional<Remedy> remedy = cures.stream().findFirst().flatMap(this::remedy);
      found.add(
          new NightFinding(
              Severity.CHECK,
              NightSheet.CLOSES.reference(),
              row,
              "needs %s min more than its hours give; no room for %s"
                  .formatted(night.overrunMinutes(), names(night.shortfalls())),
              cure,
              remedy));
    }
    for (int i = 1; i < cures.size(); i++) {
      found.add(
          new NightFinding(
              Severity.NOTE,
              NightSheet.CLOSES.reference(),
              shortest.get(0).night().weekday().getValue() - 1,
              "has another way to make room",
              lower(cures.get(i).sentence()),
              remedy(cures.get(i))));
    }
  }

  private static String names(List<Shortfall> shortfalls) {
    List<String> names = new ArrayList<>();
    for (Shortfall each : shortfalls) {
      names.add(each.zone().name() + " (" + each.minutes() + " min)");
    }
    int more = names.size() - MOST_NAMED;
    return more > 1
        ? String.join(", ", names.subList(0, MOST_NAMED)) + " and " + more + " more"
        : String.join(", ", names);
  }

  private Optional<Remedy> remedy(Cure cure) {
    String name =
        switch (cure.kind()) {
          case ANOTHER_NIGHT -> "Move to other nights: " + String.join(", ", cure.zones());
          case ONE_MORE_VALVE -> "Let one more valve run at once";
          case WIDER_WINDOW -> "Widen the hours by as much";
          case SPLIT_DAYS -> "Share the zones out over the nights";
          case NO_SOAK, ANOTHER_CONTROLLER -> "";
        };
    return cure.change() instanceof Cure.Change.Hardware
        ? Optional.empty()
        : Optional.of(new Remedy(name, new CureEdit(cure.change(), plan.input())));
  }

  private void ofPlanner() {
    Map<String, NightsInput.Station> stations = plan.stations();
    for (Finding finding : plan.timetable().findings()) {
      switch (finding.kind()) {
        case NIGHT_TOO_SHORT, OVER_AVAILABLE_FLOW, TOO_MANY_STARTS -> {
          // told with the night, or by the rules of the zone itself
        }
        case CYCLE_OVER_WINDOW, SOAK_OVER_WINDOW ->
            add(finding, stations, CycleAndSoak.CYCLE_MINUTES.reference());
        case NO_NIGHT, GAP_TOO_LONG, TOO_FEW_DAYS, DAY_WITHOUT_WATER ->
            add(finding, stations, Demand.WATERING_DAYS.reference());
        case PROGRAM_SPLIT -> add(finding, stations, SiteBudget.ZONE_PROGRAM.reference());
        case REST_BETWEEN_NIGHTS, NO_COMMON_HOURS ->
            add(finding, stations, CycleAndSoak.SOAK.reference());
      }
    }
  }

  private void add(Finding finding, Map<String, NightsInput.Station> stations, Reference ofZone) {
    Optional<NightsInput.Station> station = finding.zone().map(stations::get);
    String plain = finding.sentence();
    if (station.isPresent() && plain.startsWith(station.get().zone().name() + " ")) {
      plain = plain.substring(station.get().zone().name().length() + 1);
    } else {
      plain = lower(plain);
    }
    int end = plain.indexOf(". ");
    String sentence = end < 0 ? plain.replaceAll("\\.$", "") : plain.substring(0, end);
    String cure = end < 0 ? "" : lower(plain.substring(end + 2).replaceAll("\\.$", ""));
    boolean site = station.isEmpty();
    boolean ofController = finding.kind() == Finding.Kind.PROGRAM_SPLIT;
    found.add(
        new NightFinding(
            ofController ? Severity.NOTE : Severity.CHECK,
            site ? (ofController ? SiteNights.CONTROLLER : NightSheet.CLOSES).reference() : ofZone,
            station.map(NightsInput.Station::row).orElse(0),
            site && !ofController ? "has hours that do not go together: " + sentence : sentence,
            cure,
            Optional.empty()));
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
      Entry name = book.entry(SiteBudget.PROGRAM.reference(), row);
      if (Double.isNaN(wish) || !(name instanceof Entry.Words words)) {
        continue;
      }
      OptionalInt minute = OptionalInt.of(CalendarText.minuteOfDay(wish));
      boolean used =
          plan.input().stations().stream()
              .anyMatch(station -> station.zone().program().equals(words.text()));
      boolean open =
          plan.input().rules().windows().values().stream()
              .anyMatch(windows -> isOpen(windows, minute.getAsInt()));
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

  private static String lower(String sentence) {
    String plain = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    // A day's name keeps its capital.
    boolean day = NightSheet.NIGHT_NAMES.stream().anyMatch(plain::startsWith);
    return day || plain.isEmpty()
        ? plain
        : plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
  }
}
