package zonewright.season;

import zonewright.balance.Application;
import zonewright.balance.Baseline;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RootZone;
import zonewright.balance.ZoneRun;

/**
 * A zone as the season sees it.
 *
 * @param row its row on the sheet it stands on
 * @param name its name there
 * @param place where it is, in words; may be blank
 * @param soil what its roots have
 * @param application how its water comes to the ground
 * @param baseline what is keyed in for it at 100 percent
 * @param partly how much of its minutes the timetable places, in words; empty where it places all
 */
public record SeasonZone(
    int row,
    String name,
    String place,
    RootZone soil,
    Application application,
    Baseline baseline,
    String partly) {

  /** Returns what to call it within a sentence, such as {@code zone 3}. */
  public String called() {
    return name.isEmpty() ? "the zone without a name" : "zone " + name;
  }

  /** Returns it with its place. */
  public String withPlace() {
    return place.isBlank() ? called() : called() + ", " + place;
  }

  /** Returns its days under a schedule. */
  public ZoneRun run(DaysOfWeather days, double[] percents, double more, boolean again) {
    return new ZoneRun(soil, application, baseline, days, percents, more, again);
  }

  /** Returns the same zone with other runs. */
  SeasonZone with(Baseline other) {
    return new SeasonZone(row, name, place, soil, application, other, partly);
  }
}
