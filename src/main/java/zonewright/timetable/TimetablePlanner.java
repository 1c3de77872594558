package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes the timetable of a site: chooses days, places every night, says what does not fit and what
 * would help. The same input gives the same timetable.
 */
public final class TimetablePlanner {
  private TimetablePlanner() {}

  /**
   * Plans the site.
   *
   * @param zones the zones; one that alone exceeds the available flow, or finds no day, is left out
   *     and named in a finding
   * @param rules what holds for the site
   * @param firstDay the first date of the plan; matters only when a zone waters by dates
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static Timetable plan(List<WateredZone> zones, NightRules rules, LocalDate firstDay) {
    return plan(zones, rules, firstDay, Optional.empty());
  }

  /**
   * As {@link #plan(List, NightRules, LocalDate)}; a night that holds the same zones as in an
   * earlier timetable, under rules no tighter than then, finishes no later than it did then.
   *
   * @param earlier a timetable made before
   */
  public static Timetable plan(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, Optional<Timetable> earlier) {
    List<Finding> findings = new ArrayList<>();
    List<WateredZone> possible = new ArrayList<>();
    for (WateredZone zone : zones) {
      if (zone.flow() > rules.availableFlow()) {
        findings.add(overFlow(zone, rules));
      } else {
        possible.add(zone);
      }
    }
    WeekdayChoice.Result choice = WeekdayChoice.choose(possible, rules);
    findings.addAll(choice.findings());
    Calendar calendar = new Calendar(possible, rules, firstDay, choice.days());
    NightSchedule schedule = new NightSchedule(possible, rules, calendar, choice.days());
    List<NightPlan> nights =
        schedule.place(earlier.map(Timetable::nights).orElse(List.of()), findings);
    findings.addAll(ImpossibleZones.find(possible, rules, calendar, choice.days()));
    List<Cure> cures = List.of();
    if (nights.stream().anyMatch(night -> night.overrunMinutes() > 0)) {
      findings.addAll(tooShort(nights, calendar.weekly()));
      cures = new CureSearch(possible, rules, calendar, choice.days(), nights).find();
    }
    return new Timetable(
        nights, zoneNights(zones, possible, calendar, choice.days()), findings, cures);
  }

  private static Finding overFlow(WateredZone zone, NightRules rules) {
    return Finding.of(
        Finding.Kind.OVER_AVAILABLE_FLOW,
        zone,
        zone.name()
            + " alone draws "
            + zone.flow()
            + ", more than the "
            + rules.availableFlow()
            + " available. Split it over more valves or use emitters with less flow.");
  }

  /** One finding for each overfull night; of a dated plan only the worst night of each weekday. */
  private static List<Finding> tooShort(List<NightPlan> nights, boolean weekly) {
    List<Finding> findings = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      nights.stream()
          .filter(night -> night.night().weekday() == day && night.overrunMinutes() > 0)
          .max((a, b) -> Integer.compare(a.overrunMinutes(), b.overrunMinutes()))
          .ifPresent(night -> findings.add(tooShort(night, weekly)));
    }
    return findings;
  }

  static Finding tooShort(NightPlan night, boolean weekly) {
    StringBuilder sentence = new StringBuilder();
    sentence
        .append(weekly ? "" : "At worst, ")
        .append(night.night().label())
        .append(" needs ")
        .append(night.overrunMinutes())
        .append(" min more than its windows give. No room for:");
    for (Shortfall shortfall : night.shortfalls()) {
      sentence
          .append(' ')
          .append(shortfall.zone().name())
          .append(" (")
          .append(shortfall.minutes())
          .append(" min),");
    }
    sentence.setCharAt(sentence.length() - 1, '.');
    return Finding.ofSite(Finding.Kind.NIGHT_TOO_SHORT, sentence.toString());
  }

  private static List<ZoneNights> zoneNights(
      List<WateredZone> zones,
      List<WateredZone> possible,
      Calendar calendar,
      List<Set<DayOfWeek>> days) {
    List<List<Night>> nights = new ArrayList<>();
    possible.forEach(zone -> nights.add(new ArrayList<>()));
    for (int day = 0; day < calendar.nights().size(); day++) {
      for (int zone : calendar.zonesOn(day, days)) {
        nights.get(zone).add(calendar.nights().get(day));
      }
    }
    List<ZoneNights> result = new ArrayList<>();
    int place = 0;
    for (WateredZone zone : zones) {
      // Zones were kept in order; one left out has no nights.
      boolean kept = place < possible.size() && possible.get(place).equals(zone);
      result.add(new ZoneNights(zone, kept ? nights.get(place++) : List.of()));
    }
    return result;
  }
}
