package zonewright.desk.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import zonewright.balance.WateringRule;
import zonewright.season.Season;
import zonewright.season.SeasonRules;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZones;

/**
 * What is asked of a season at one moment; never changes, so any thread may carry it out.
 *
 * @param rule what drives it
 * @param setting its setting in the design
 * @param zones the zones it drives
 * @param weather the days
 * @param more what all percents are multiplied with
 * @param firstMonth the month in which watering begins, January 0
 * @param lastMonth the month with which it ends
 * @param sensor whether there is a rain sensor
 */
record SeasonChoice(
    SeasonRules rule,
    WateringRule.Setting setting,
    SeasonZones zones,
    SeasonWeather weather,
    double more,
    int firstMonth,
    int lastMonth,
    boolean sensor) {
  /** What fills the rain sensor of the window, mm, and in how many days it dries. */
  static final WateringRule.RainSensor SENSOR = new WateringRule.RainSensor(6, 3);

  private WateringRule watering() {
    return new WateringRule(
        setting,
        Optional.empty(),
        sensor ? Optional.of(SENSOR) : Optional.empty(),
        OptionalDouble.empty(),
        firstMonth,
        lastMonth);
  }

  /** Returns the season of all zones. */
  Season season() {
    return new Season(zones, weather, watering(), more);
  }

  /** Returns the season of one zone alone, which takes a moment. */
  Season seasonOf(int zone) {
    return new Season(
        new SeasonZones(zones.zones().subList(zone, zone + 1), List.of(), zones.schedule()),
        weather,
        watering(),
        more);
  }

  /** Returns it in words, as it stands in titles. */
  String words() {
    return rule.label()
        + (more == 1 ? "" : ", times " + Math.round(more * 100) + " %")
        + (sensor ? ", rain sensor" : "");
  }

  /** Returns where a zone of that name stands; -1 for none. */
  int place(String name) {
    for (int zone = 0; zone < zones.zones().size(); zone++) {
      if (zones.zones().get(zone).name().equals(name)) {
        return zone;
      }
    }
    return -1;
  }
}
