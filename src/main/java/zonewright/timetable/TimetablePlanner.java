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
   * Plans the site. A night that holds the same zones as in an earlier timetable, under rules no
   * tighter than then, finishes no later than it did then.
   *
   * @param zones the zones; of one that alone exceeds the available flow all is left undone
   * @param rules what holds for the site
   * @param firstDay the first date of the plan; matters only when a zone waters by dates
   * @param earlier a timetable made before
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static Timetable plan(
      List<WateredZone> zones, NightRules rules, LocalDate firstDay, Optional<Timetable> earlier) {
    return plan(zones, rules, firstDay, earlier, true);
  }

  /** Plans it the same way, and seeks nothing that would help. */
  static Timetable withoutCures(List<WateredZone> zones, NightRules rules, LocalDate firstDay) {
    return plan(zones, rules, firstDay, Optional.empty(), false);
  }

  private static Timetable plan(
      List<WateredZone> zones,
      NightRules rules,
      LocalDate firstDay,
      Optional<Timetable> earlier,
      boolean cured) {
    List<WateredZone> possible =
        zones.stream().filter(zone -> zone.flow() <= rules.availableFlow()).toList();
    List<Waterings> waterings = Waterings.of(possible);
    WeekdayChoice.Result choice = WeekdayChoice.choose(waterings, rules);
    List<TimetableFinding> findings = new ArrayList<>(choice.findings());
    Calendar calendar =
        new Calendar(waterings, rules, firstDay, choice.days(), Calendar.weekly(zones));
    NightSchedule schedule = new NightSchedule(possible, rules, calendar, choice.days());
    List<NightPlan> nights =
        schedule.place(earlier.map(Timetable::nights).orElse(List.of()), findings);
    findings.addAll(ImpossibleZones.find(possible, rules, calendar, choice.days()));
    List<Cure> cures =
        cured && nights.stream().anyMatch(night -> night.overrunMinutes() > 0)
            ? new CureSearch(possible, rules, calendar, choice.days(), nights).find()
            : List.of();
    return new Timetable(
        nights, water(zones, rules, calendar, choice.days(), nights), findings, cures);
  }

  private static List<ZoneWater> water(
      List<WateredZone> zones,
      NightRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      List<NightPlan> plans) {
    List<List<Night>> nights = calendar.nightsOfEach(days);
    WaterBalance balance = new WaterBalance(plans);
    int place = 0;
    for (WateredZone zone : zones) {
      if (zone.flow() <= rules.availableFlow()) {
        int asked = calendar.asked(zone.days(), calendar.firstDay(place));
        balance.add(zone, asked, nights.get(place), Undone.Why.CLOSED_NIGHTS);
        place++;
      } else {
        balance.add(zone, calendar.asked(zone.days(), 0), List.of(), Undone.Why.OVER_FLOW);
      }
    }
    return balance.zones();
  }
}
