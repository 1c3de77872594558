package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import zonewright.balance.WateringRule;
import zonewright.balance.ZoneRun;
import zonewright.design.Design;
import zonewright.nights.NightsPlan;
import zonewright.season.Season;
import zonewright.season.SeasonReading;
import zonewright.season.SeasonRules;
import zonewright.season.SeasonWeather;
import zonewright.season.SeasonZone;
import zonewright.season.SeasonZones;

/**
 * The season of the zone whose derivation a pack shows: a percent by day on the typical year of the
 * design's months.
 */
record SeasonOfZone(Season season, SeasonZone zone, ZoneRun run, WateringRule.Daily daily) {

  /** Returns what the sheets of a season lack in a design; nothing where they can be made. */
  static Optional<String> lacks(Design design) {
    SeasonWeather.FromMonths months = SeasonWeather.of(design.book());
    if (months.weather().isEmpty()) {
      return Optional.of(months.problem());
    }
    return design.nights().asked().isPresent()
            && SeasonRules.DAILY.setting(design.book()).isPresent()
        ? Optional.empty()
        : Optional.of("There is no season yet: it takes a timetable and the peak month.");
  }

  /**
   * Returns the season of a zone; of the first that can be followed where that one cannot.
   *
   * @param row the zone's row
   */
  static Optional<SeasonOfZone> of(Design design, int row) {
    Optional<NightsPlan> plan = design.nights().plan();
    Optional<SeasonWeather> weather = SeasonWeather.of(design.book()).weather();
    Optional<WateringRule.Setting> setting = SeasonRules.DAILY.setting(design.book());
    if (plan.isEmpty() || weather.isEmpty() || setting.isEmpty()) {
      return Optional.empty();
    }
    SeasonZones zones = SeasonReading.proposed(design.book(), plan.get());
    Optional<SeasonZone> zone =
        zones.zones().stream()
            .filter(each -> each.row() == row)
            .findFirst()
            .or(() -> zones.zones().stream().findFirst());
    return zone.map(
        found -> {
          SeasonZones alone = new SeasonZones(List.of(found), List.of(), zones.schedule());
          Season season = new Season(alone, weather.get(), WateringRule.of(setting.get()), 1);
          return new SeasonOfZone(
              season, found, season.run(found), (WateringRule.Daily) setting.get());
        });
  }
}
