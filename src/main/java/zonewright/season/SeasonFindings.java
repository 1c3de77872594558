package zonewright.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.balance.Application;
import zonewright.balance.RunTotals;
import zonewright.balance.WateringRule;
import zonewright.balance.ZoneRun;
import zonewright.climate.Climate;
import zonewright.units.QuantityText;

/**
 * What a season has to say. Each cure was tried: the zone was followed through the same days with
 * the change, and what that gave is told.
 */
public final class SeasonFindings {
  /** Plants that get less than this part of their need in a month are short; common practice. */
  static final double ENOUGH = 0.95;

  /** More than this part lost below the roots is worth a change; common practice. */
  static final double MUCH_BELOW = 0.10;

  private static final double MUCH_RUNOFF = 0.02;
  private static final double DRY_QUARTER = 0.85;
  private static final double CURED = 0.97;
  private static final double MOST_TIMES = 3;
  private static final double STEP = 0.05;
  private static final double OFTEN_AT_MOST = 0.05;
  private static final double OFTEN_BELOW = 0.10;
  private static final double SENSOR_DEPTH = 6;
  private static final double SENSOR_DAYS = 3;
  private static final double WORTH_IT = 0.03;
  private static final double HARM = 0.01;

  private final Season season;
  private final List<SeasonFinding> found = new ArrayList<>();

  private SeasonFindings(Season season) {
    this.season = season;
  }

  /** Returns the findings of a season, zone by zone; may follow each zone some twenty times. */
  public static List<SeasonFinding> of(Season season) {
    SeasonFindings findings = new SeasonFindings(season);
    findings.percentAtItsMost();
    findings.rainyMonths();
    findings.rainSensor();
    for (ZoneResult result : season.results()) {
      findings.shortness(result);
      findings.dips(result);
      findings.belowRoots(result);
      findings.runoff(result);
      findings.drierQuarter(result);
    }
    return List.copyOf(findings.found);
  }

  private void add(ZoneResult result, String sentence, String cure) {
    found.add(new SeasonFinding(result.zone().row(), result.zone().called(), sentence, cure));
  }

  private static String percent(double share) {
    return QuantityText.grouped(100 * share, 0) + " %";
  }

  private void percentAtItsMost() {
    if (season.rule().setting() instanceof WateringRule.Daily daily) {
      int size = season.weather().days().size();
      long limited =
          IntStream.range(0, size)
              .filter(day -> season.percent(day) >= daily.most() - 1e-9)
              .count();
      if (limited > OFTEN_AT_MOST * size) {
        found.add(
            new SeasonFinding(
                -1,
                "Site",
                "has its percent at its most, %s, on %s of %s days"
                    .formatted(percent(daily.most()), limited, size),
                "make the baseline for a hotter month, or allow the controller more"));
      }
    }
  }

  /** Months in which rain alone covers what every zone needs, on average. */
  private boolean rainCovers(int month) {
    return season.results().stream()
        .allMatch(result -> month(result, month).rain() >= month(result, month).need());
  }

  private void rainyMonths() {
    WateringRule rule = season.rule();
    int first = rule.firstMonth();
    int last = rule.lastMonth();
    while (first != last && rainCovers(first)) {
      first = (first + 1) % 12;
    }
    while (first != last && rainCovers(last)) {
      last = (last + 11) % 12;
    }
    if (first == rule.firstMonth() && last == rule.lastMonth()) {
      return;
    }
    WateringRule shorter =
        new WateringRule(rule.setting(), rule.pause(), rule.sensor(), rule.coldest(), first, last);
    Season tried = season.drivenBy(shorter);
    site(
        tried,
        "waters in months in which rain alone covers what all zones need",
        "water from %s to %s only"
            .formatted(Climate.MONTH_NAMES.get(first), Climate.MONTH_NAMES.get(last)));
  }

  private void rainSensor() {
    WateringRule rule = season.rule();
    if (rule.sensor().isPresent() || rule.pause().isPresent()) {
      return;
    }
    Season tried =
        season.drivenBy(
            new WateringRule(
                rule.setting(),
                Optional.empty(),
                Optional.of(new WateringRule.RainSensor(SENSOR_DEPTH, SENSOR_DAYS)),
                rule.coldest(),
                rule.firstMonth(),
                rule.lastMonth()));
    site(tried, "waters whether it rains or not", "add a rain sensor (6 mm, dry in 3 days)");
  }

  /** Tells of a change to the whole site, where it saves and harms nobody. */
  private void site(Season tried, String sentence, String cure) {
    double saved = 1 - tried.litres() / season.litres();
    if (saved >= WORTH_IT && tried.adequacy() >= season.adequacy() - HARM) {
      found.add(
          new SeasonFinding(
              -1,
              "Site",
              sentence,
              "%s: %s less water, %s of the need met and %s wasted, in place of %s and %s"
                  .formatted(
                      cure,
                      percent(saved),
                      percent(tried.adequacy()),
                      percent(tried.excess()),
                      percent(season.adequacy()),
                      percent(season.excess()))));
    }
  }

  /** The month of the year in which a zone is short most often. */
  private record ShortMonth(int month, int years, int of, double adequacy) {
    String inWords() {
      String name = Climate.MONTH_NAMES.get(month);
      return of == 1 ? name : "%s of %s %ss".formatted(years, of, name);
    }
  }

  private static RunTotals month(ZoneResult result, int month) {
    RunTotals[] all =
        IntStream.range(0, result.months().size())
            .filter(at -> at % 12 == month)
            .mapToObj(result.months()::get)
            .toArray(RunTotals[]::new);
    return ZoneRun.sum(all);
  }

  private static Optional<ShortMonth> shortMonth(ZoneResult result) {
    List<ShortMonth> months = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      int years = 0;
      int of = 0;
      for (int at = month; at < result.months().size(); at += 12) {
        RunTotals totals = result.months().get(at);
        of += totals.need() > 0 ? 1 : 0;
        years += totals.need() > 0 && totals.adequacy() < ENOUGH ? 1 : 0;
      }
      if (years > 0 && 2 * years >= of) {
        months.add(new ShortMonth(month, years, of, month(result, month).adequacy()));
      }
    }
    return months.stream()
        .min(
            Comparator.comparingDouble((ShortMonth month) -> -(double) month.years() / month.of())
                .thenComparingDouble(ShortMonth::adequacy));
  }

  private void shortness(ZoneResult result) {
    shortMonth(result)
        .ifPresent(
            month ->
                add(
                    result,
                    "is short in %s: plants get %s of what they need there, and are below the allowed depletion on %s of %s days"
                        .formatted(
                            month.inWords(),
                            percent(month.adequacy()),
                            month(result, month.month()).daysBelow(),
                            month(result, month.month()).days()),
                    cureOfShortness(result, month.month())));
  }

  /** Soil that runs down too far between two waterings, although plants lack little. */
  private void dips(ZoneResult result) {
    RunTotals whole = result.whole();
    if (shortMonth(result).isPresent() || whole.daysBelow() <= OFTEN_BELOW * whole.days()) {
      return;
    }
    SeasonZone zone = result.zone();
    RunTotals often = season.result(zone.with(zone.baseline().daily()), 1).whole();
    boolean helps = zone.baseline().daysAWeek() < 7 && often.daysBelow() < whole.daysBelow() / 2;
    add(
        result,
        "is below the allowed depletion on %s of %s days, though plants get %s of what they need"
            .formatted(whole.daysBelow(), whole.days(), percent(whole.adequacy())),
        helps
            ? "the same minutes spread over all days would leave %s such days"
                .formatted(often.daysBelow())
            : "deeper roots, or plants that stand more");
  }

  private String cureOfShortness(ZoneResult result, int month) {
    SeasonZone zone = result.zone();
    if (!zone.partly().isEmpty()) {
      return "the timetable gives it %s: find room for the rest before anything else"
          .formatted(zone.partly());
    }
    SeasonZone often = zone.with(zone.baseline().daily());
    ZoneResult spread = season.result(often, 1);
    if (zone.baseline().daysAWeek() < 7 && month(spread, month).adequacy() >= CURED) {
      return "the same minutes a week spread over all days give %s there"
          .formatted(percent(month(spread, month).adequacy()));
    }
    for (double times = 1 + STEP; times <= MOST_TIMES; times += STEP) {
      ZoneResult more = season.result(zone, times);
      if (month(more, month).adequacy() >= CURED) {
        return "its baseline is %s low for that: with so much more plants get %s there, and %s of the season's water is wasted"
            .formatted(
                percent(times - 1),
                percent(month(more, month).adequacy()),
                percent(more.whole().excess()));
      }
      ZoneResult both = season.result(often, times);
      if (month(both, month).adequacy() >= CURED) {
        return "%s more minutes a week, spread over all days, give %s there"
            .formatted(percent(times - 1), percent(month(both, month).adequacy()));
      }
    }
    return "even three times the minutes, every day, leave it short: the soil holds too little for its plants; deeper roots or other plants";
  }

  private void belowRoots(ZoneResult result) {
    double lost = result.whole().excess() - result.whole().runningOff();
    if (lost <= MUCH_BELOW) {
      return;
    }
    double keep = Math.min(result.whole().adequacy(), CURED) - 0.005;
    SeasonZone zone = result.zone();
    ZoneResult spread = season.result(zone.with(zone.baseline().daily()), 1);
    double spreadLost = spread.whole().excess() - spread.whole().runningOff();
    double times = 1;
    ZoneResult less = result;
    while (times > 0.3) {
      ZoneResult next = season.result(zone, times - STEP);
      if (next.whole().adequacy() < keep) {
        break;
      }
      times -= STEP;
      less = next;
    }
    double lessLost = less.whole().excess() - less.whole().runningOff();
    List<String> cures = new ArrayList<>();
    if (zone.baseline().daysAWeek() < 7 && spreadLost < lost - 0.03) {
      cures.add(
          "shorter and more often, the same minutes over all days, would lose %s"
              .formatted(percent(spreadLost)));
    }
    if (times < 1 - STEP / 2) {
      cures.add(
          "%s of its minutes would lose %s, and plants still get %s"
              .formatted(percent(times), percent(lessLost), percent(less.whole().adequacy())));
    }
    add(
        result,
        "loses %s of its irrigation below the roots".formatted(percent(lost)),
        cures.isEmpty()
            ? "neither less nor more often helps without leaving plants short: let the percent follow the weather"
            : String.join("; ", cures));
  }

  private void runoff(ZoneResult result) {
    if (result.whole().runningOff() > MUCH_RUNOFF) {
      Application application = result.zone().application();
      double longest =
          60 * application.surfaceStorage() / (application.wettedRate() - application.intakeRate());
      add(
          result,
          "loses %s of its irrigation by runoff".formatted(percent(result.whole().runningOff())),
          "cycles of no more than %s min, with soaks between".formatted((int) longest));
    }
  }

  private void drierQuarter(ZoneResult result) {
    RunTotals whole = result.whole();
    if (whole.adequacy() >= ENOUGH && whole.adequacyOfDrier() < DRY_QUARTER) {
      add(
          result,
          "leaves its drier quarter at %s of its need, while the ground the schedule is made for gets %s"
              .formatted(percent(whole.adequacyOfDrier()), percent(whole.adequacy())),
          "more even emitters help; longer runs would waste on all the rest");
    }
  }
}
