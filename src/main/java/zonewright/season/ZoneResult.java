package zonewright.season;

import java.util.List;
import java.util.Optional;
import zonewright.balance.RunTotals;

/**
 * What a season comes to for a zone.
 *
 * @param zone the zone
 * @param whole all days of the season
 * @param months month by month, the first year's January first
 * @param worst the week in which plants lacked most; empty where they lacked nothing
 */
public record ZoneResult(
    SeasonZone zone, RunTotals whole, List<RunTotals> months, Optional<WorstWeek> worst) {
  /** Keeps a copy. */
  public ZoneResult {
    months = List.copyOf(months);
  }

  /**
   * The week in which plants lacked most.
   *
   * @param firstDay its first day, counted in the days of the season
   * @param totals what it comes to
   */
  public record WorstWeek(int firstDay, RunTotals totals) {}

  /** Returns the litres its valve gave. */
  public double litres() {
    return litres(whole);
  }

  /** Returns the litres of some of its days. */
  public double litres(RunTotals of) {
    return of.minutes() * zone.application().flow();
  }
}
