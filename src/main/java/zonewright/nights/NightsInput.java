package zonewright.nights;

import java.time.LocalDate;
import java.util.List;
import zonewright.timetable.NightRules;
import zonewright.timetable.StartRuns;
import zonewright.timetable.WateredZone;

/**
 * All that a timetable depends on, at one moment. Two that are equal have the same timetable.
 *
 * @param stations the zones that water, in their order
 * @param rules what holds for the site
 * @param plain whether the controller starts programs at set times
 * @param startRuns what a start of a program runs then
 * @param firstDay the date from which dates are counted
 */
public record NightsInput(
    List<Station> stations,
    NightRules rules,
    boolean plain,
    StartRuns startRuns,
    LocalDate firstDay) {
  /** Keeps a copy. */
  public NightsInput {
    stations = List.copyOf(stations);
  }

  /**
   * A zone as the timetable sees it.
   *
   * @param zone what the planner must know
   * @param row its row in the sheet of zones
   * @param name its name there
   * @param place where it is, in words; may be blank
   * @param mostDaysApart most days it can go without water
   */
  public record Station(WateredZone zone, int row, String name, String place, int mostDaysApart) {}

  /** Returns the same for a controller that starts programs at set times. */
  public NightsInput forPlainController() {
    return new NightsInput(stations, rules, true, startRuns, firstDay);
  }

  /** Returns the zones as the planner takes them. */
  List<WateredZone> zones() {
    return stations.stream().map(Station::zone).toList();
  }
}
