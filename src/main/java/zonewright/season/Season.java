package zonewright.season;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import zonewright.balance.RunTotals;
import zonewright.balance.WateringRule;
import zonewright.balance.ZoneRun;
import zonewright.sheet.Book;

/** A season of zones under a rule, and what it came to. Never changes once made. */
public final class Season {
  private final SeasonZones zones;
  private final SeasonWeather weather;
  private final WateringRule rule;
  private final double more;
  private final double[] percents;
  private final List<ZoneResult> results;

  /**
   * Lets a season run; on any thread.
   *
   * @param more what all percents are multiplied with, 1 for nothing
   */
  public Season(SeasonZones zones, SeasonWeather weather, WateringRule rule, double more) {
    this(zones, weather, rule, more, rule.percents(weather.days()));
  }

  private Season(
      SeasonZones zones, SeasonWeather weather, WateringRule rule, double more, double[] percents) {
    this.zones = zones;
    this.weather = weather;
    this.rule = rule;
    this.more = more;
    this.percents = percents;
    results = zones.zones().stream().map(zone -> result(zone, 1)).toList();
  }

  /** Returns the same days counted in the same months, with the percents of another rule. */
  Season drivenBy(WateringRule other) {
    return new Season(zones, weather, rule, more, other.percents(weather.days()));
  }

  /** Returns what a zone would come to, with its minutes multiplied. */
  ZoneResult result(SeasonZone zone, double times) {
    ZoneRun run = zone.run(weather.days(), percents, more * times, weather.typical());
    RunTotals[] months = run.months(rule);
    int worst = run.worstWeek(rule);
    return new ZoneResult(
        zone,
        ZoneRun.sum(months),
        List.of(months),
        worst < 0
            ? Optional.empty()
            : Optional.of(new ZoneResult.WorstWeek(worst, run.week(worst))));
  }

  /** Returns a zone's days again, for who wants to see each of them. */
  public ZoneRun run(SeasonZone zone) {
    return zone.run(weather.days(), percents, more, weather.typical());
  }

  /** Returns the zones. */
  public SeasonZones zones() {
    return zones;
  }

  /** Returns the weather. */
  public SeasonWeather weather() {
    return weather;
  }

  /** Returns what drove it. */
  public WateringRule rule() {
    return rule;
  }

  /** Returns what each zone came to, in their order. */
  public List<ZoneResult> results() {
    return results;
  }

  /** Returns the percent of a day; 0 where no water could run. */
  public double percent(int day) {
    return percents[day] * more;
  }

  /** Returns the least percent at which it watered; empty where it never did. */
  public OptionalDouble leastPercent() {
    return Arrays.stream(percents).filter(percent -> percent > 0).map(p -> p * more).min();
  }

  /** Returns the greatest percent at which it watered. */
  public OptionalDouble mostPercent() {
    return Arrays.stream(percents).filter(percent -> percent > 0).map(p -> p * more).max();
  }

  /**
   * Returns on how many days within its months water was kept off by rain, cold or a percent of 0.
   */
  public int daysKeptOff() {
    return (int)
        IntStream.range(0, percents.length)
            .filter(day -> percents[day] == 0 && rule.watersIn(weather.days().month(day)))
            .count();
  }

  /** Returns how many days lie in the months in which it waters. */
  public int daysInSeason() {
    return (int)
        IntStream.range(0, percents.length)
            .filter(day -> rule.watersIn(weather.days().month(day)))
            .count();
  }

  /** Returns the years, at least one, by which sums are divided to give those of a year. */
  public double years() {
    return Math.max(1, weather.days().size() / 365.25);
  }

  /** Returns the litres of all zones. */
  public double litres() {
    return results.stream().mapToDouble(ZoneResult::litres).sum();
  }

  /** Returns the part of the need met over all zones, weighed by what each needs in litres. */
  public double adequacy() {
    double need = 0;
    double met = 0;
    for (ZoneResult result : results) {
      double area = result.zone().application().flow() / result.zone().application().rate();
      need += area * result.whole().need();
      met += area * result.whole().need() * result.whole().adequacy();
    }
    return need > 0 ? met / need : 1;
  }

  /**
   * Returns the part of all water that ran off or went below the roots beyond what unevenness asks.
   */
  public double excess() {
    double litres = litres();
    double lost =
        results.stream().mapToDouble(result -> result.litres() * result.whole().excess()).sum();
    return litres > 0 ? lost / litres : 0;
  }

  /** Returns what the water of a year costs by the rates of a design, where it has any. */
  public OptionalDouble cost(Book book) {
    Optional<WaterPrice> price = WaterPrice.of(book);
    if (price.isEmpty() || results.isEmpty()) {
      return OptionalDouble.empty();
    }
    double cost = 0;
    for (int month = 0; month < results.get(0).months().size(); month++) {
      int at = month;
      double litres =
          results.stream().mapToDouble(result -> result.litres(result.months().get(at))).sum();
      cost += price.get().cost(month % 12, litres);
    }
    return OptionalDouble.of(cost / years());
  }
}
