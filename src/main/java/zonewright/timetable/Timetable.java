package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The nights of a site with every cycle placed, or left undone with its reason.
 *
 * @param nights every night that has a window, in order: Monday to Sunday of a week that repeats,
 *     or eight weeks of dates when a zone waters by dates
 * @param zones what each zone asks for and gets, in the order the zones were given
 * @param findings what the designer should know
 * @param cures for nights that are too short, what would help, the smallest change first; empty
 *     when every night is long enough
 */
public record Timetable(
    List<NightPlan> nights,
    List<ZoneWater> zones,
    List<TimetableFinding> findings,
    List<Cure> cures) {
  /** Weeks that a plan by dates covers. */
  public static final int DATED_WEEKS = 8;

  /** Keeps copies. */
  public Timetable {
    nights = List.copyOf(nights);
    zones = List.copyOf(zones);
    findings = List.copyOf(findings);
    cures = List.copyOf(cures);
  }

  /** True when every zone gets what it asks for. */
  public boolean fits() {
    return zones.stream().allMatch(zone -> zone.undone().isEmpty());
  }

  /** Minutes by which nights run past their last windows, all nights together. */
  public int overrunMinutes() {
    return nights.stream().mapToInt(NightPlan::overrunMinutes).sum();
  }

  /** Of each weekday, the night that runs over most; weekdays whose nights fit have none. */
  public List<NightPlan> overfullNights() {
    List<NightPlan> worst = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      nights.stream()
          .filter(night -> night.night().weekday() == day && night.overrunMinutes() > 0)
          .max(Comparator.comparingInt(NightPlan::overrunMinutes))
          .ifPresent(worst::add);
    }
    return worst;
  }
}
