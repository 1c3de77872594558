package zonewright.timetable;

import java.util.List;

/**
 * The nights of a site with every cycle placed.
 *
 * @param nights every night that has a window, in order: Monday to Sunday of a week that repeats,
 *     or eight weeks of dates when a zone waters by dates
 * @param zones when each zone waters, in the order the zones were given
 * @param findings what the designer should know
 * @param cures for nights that are too short, what would help, the smallest change first; empty
 *     when everything fits
 */
public record Timetable(
    List<NightPlan> nights, List<ZoneNights> zones, List<Finding> findings, List<Cure> cures) {

  /** Keeps copies. */
  public Timetable {
    nights = List.copyOf(nights);
    zones = List.copyOf(zones);
    findings = List.copyOf(findings);
    cures = List.copyOf(cures);
  }

  /** True when every night ends before its last window closes. */
  public boolean fits() {
    return nights.stream().allMatch(night -> night.overrunMinutes() == 0);
  }

  /**
   * The largest ratio of a night's length to its proven bound; 1 when every night is proven
   * shortest.
   */
  public double worstRatioToBound() {
    return nights.stream().mapToDouble(NightPlan::ratioToBound).max().orElse(1);
  }
}
