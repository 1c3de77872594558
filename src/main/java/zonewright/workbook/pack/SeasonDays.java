package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import zonewright.balance.Baseline;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.SoilDays;
import zonewright.units.CalendarText;
import zonewright.workbook.kit.CellStyleName;

/** The days of a season, a row each, as formulas of the day before. */
final class SeasonDays {
  /** Days before 1970 in the count of spreadsheets. */
  private static final int EPOCH = 25_569;

  private SeasonDays() {}

  /** Writes a row for each day. */
  static void write(SeasonPage season) {
    Page page = season.page;
    String unit = season.depth.symbol();
    page.band("The days: depths in " + unit);
    List<String> headings = new ArrayList<>();
    for (SeasonDay column : SeasonDay.values()) {
      headings.add(column.heading);
    }
    headings.add("Allowed");
    page.headings(headings.toArray(String[]::new)).repeated();
    if (page.row() != season.firstDay) {
      throw new IllegalStateException("the sums stand over other rows: " + page.row());
    }
    for (int day = 0; day < season.of.season().weather().days().size(); day++) {
      day(season, day);
      page.next();
    }
  }

  private static void day(SeasonPage season, int day) {
    Page page = season.page;
    int row = page.row();
    DaysOfWeather weather = season.of.season().weather().days();
    SoilDays soil = season.run.scheduled();
    String depths = season.depths();
    put(page, SeasonDay.DATE, CalendarText.days(weather.date(day)), "d\\ mmm");
    put(page, SeasonDay.ET, season.shown(weather.evapotranspiration(day)), depths);
    put(page, SeasonDay.RAIN, season.shown(weather.rain(day)), depths);
    set(
        season,
        SeasonDay.NEED,
        "INDEX(%s,MONTH(%s))*%s"
            .formatted(season.coefficients, SeasonDay.DATE.in(row), SeasonDay.ET.in(row)),
        season.shown(soil.need(day)));
    percent(season, day, row);
    runs(season, day, row);
    set(
        season,
        SeasonDay.REACHING,
        "%s*%s*%s/60".formatted(season.rate, season.reaching, SeasonDay.MINUTES.in(row)),
        season.shown(season.run.given().reaching(day)));
    set(
        season,
        SeasonDay.RUN_OFF,
        "MAX(0,(%2$s-%3$s)*%6$s/60-%4$s)*%5$s*%1$s*%7$s/%2$s"
            .formatted(
                season.rate,
                season.wetted,
                season.intake,
                season.storage,
                SeasonDay.CYCLES.in(row),
                SeasonDay.CYCLE_MINUTES.in(row),
                season.reaching),
        season.shown(season.run.given().runOff(day)));
    set(
        season,
        SeasonDay.SOAKS_IN,
        "(%s-%s)*%s".formatted(SeasonDay.REACHING.in(row), SeasonDay.RUN_OFF.in(row), season.part),
        season.shown(soil.irrigation(day)));
    String used = day == 0 ? season.before : SeasonDay.USED.in(row - 1);
    double before = day == 0 ? soil.before() : soil.depletion(day - 1);
    double afterWater = Math.max(0, before - soil.irrigation(day));
    set(
        season,
        SeasonDay.DRAINED,
        "MAX(0,%s-%s)".formatted(SeasonDay.SOAKS_IN.in(row), used),
        season.shown(soil.drainedIrrigation(day)));
    set(
        season,
        SeasonDay.AFTER_WATER,
        "MAX(0,%s-%s)".formatted(used, SeasonDay.SOAKS_IN.in(row)),
        season.shown(afterWater));
    set(
        season,
        SeasonDay.RAIN_COUNTED,
        "IF(%1$s<%3$s*%2$s,0,%1$s)"
            .formatted(SeasonDay.RAIN.in(row), SeasonDay.ET.in(row), season.light),
        season.shown(soil.rain(day)));
    set(
        season,
        SeasonDay.RAIN_DRAINED,
        "MAX(0,%s-%s)".formatted(SeasonDay.RAIN_COUNTED.in(row), SeasonDay.AFTER_WATER.in(row)),
        season.shown(soil.drainedRain(day)));
    set(
        season,
        SeasonDay.AFTER_RAIN,
        "MAX(0,%s-%s)".formatted(SeasonDay.AFTER_WATER.in(row), SeasonDay.RAIN_COUNTED.in(row)),
        season.shown(Math.max(0, afterWater - soil.rain(day))));
    set(
        season,
        SeasonDay.TAKEN,
        "MIN(%1$s*MIN(1,(%2$s-%3$s)/(%2$s-%4$s)),%2$s-%3$s)"
            .formatted(
                SeasonDay.NEED.in(row), season.held, SeasonDay.AFTER_RAIN.in(row), season.allowed),
        season.shown(soil.taken(day)));
    set(
        season,
        SeasonDay.USED,
        "%s+%s".formatted(SeasonDay.AFTER_RAIN.in(row), SeasonDay.TAKEN.in(row)),
        season.shown(soil.depletion(day)));
    page.formula(
        SeasonDay.BELOW.place,
        "IF(%s>%s+0.0000001,1,0)".formatted(SeasonDay.USED.in(row), season.allowed),
        soil.belowAllowed(day) ? 1 : 0,
        "0",
        CellStyleName.TABLE);
    page.formula(
        SeasonDay.values().length,
        season.allowed,
        season.shown(season.zone.soil().readilyAvailable()),
        depths,
        CellStyleName.TABLE);
  }

  private static void percent(SeasonPage season, int day, int row) {
    int back = Math.min(day, season.of.daily().days());
    String mean =
        day == 0
            ? SeasonDay.ET.in(row)
            : "AVERAGE(%s:%s)".formatted(SeasonDay.ET.in(row - back), SeasonDay.ET.in(row - 1));
    season.page.formula(
        SeasonDay.PERCENT.place,
        "MAX(%s,MIN(%s,%s*INT(%s/%s/%s+0.500000001)))*%s"
            .formatted(
                season.least,
                season.most,
                season.percentStep,
                mean,
                season.peak,
                season.percentStep,
                season.times),
        season.of.season().percent(day),
        "0%",
        CellStyleName.TABLE);
  }

  private static void runs(SeasonPage season, int day, int row) {
    Baseline baseline = season.zone.baseline();
    String date = SeasonDay.DATE.in(row) + (baseline.evening() ? "-1" : "");
    String runs =
        baseline
            .oddDates()
            .map(odd -> "*(MOD(DAY(%s),2)=%s)".formatted(date, odd ? 1 : 0))
            .orElse(
                baseline.every() > 0
                    ? "*(MOD(%s-%s,%s)=0)"
                        .formatted(date, baseline.from() + EPOCH, baseline.every())
                    : "");
    String weekday = "WEEKDAY(%s,2)".formatted(date);
    String keyed = "INDEX(%s,%s)".formatted(season.weekMinutes, weekday);
    String cycles = "INDEX(%s,%s)%s".formatted(season.weekCycles, weekday, runs);
    String scaled =
        "%1$s*INT(%2$s*%3$s/%1$s+0.500000001)"
            .formatted(season.step, keyed, SeasonDay.PERCENT.in(row));
    double minutes = season.run.given().minutes(day);
    double count = cycleCount(season, day);
    if (season.longest == null) {
      set(season, SeasonDay.CYCLES, cycles, count, "0");
      set(season, SeasonDay.CYCLE_MINUTES, scaled, cycleMinutes(season, day), "0");
      set(
          season,
          SeasonDay.MINUTES,
          SeasonDay.CYCLES.in(row) + "*" + SeasonDay.CYCLE_MINUTES.in(row),
          minutes,
          "0");
    } else {
      set(
          season,
          SeasonDay.CYCLES,
          "ROUNDUP(%s/%s,0)".formatted(SeasonDay.MINUTES.in(row), season.longest),
          Math.ceil(minutes / baseline.longestCycle() - 1e-9),
          "0");
      set(
          season,
          SeasonDay.CYCLE_MINUTES,
          "IF(%1$s=0,0,%2$s/%1$s)".formatted(SeasonDay.CYCLES.in(row), SeasonDay.MINUTES.in(row)),
          minutes == 0 ? 0 : minutes / Math.ceil(minutes / baseline.longestCycle() - 1e-9),
          "0.0");
      set(season, SeasonDay.MINUTES, scaled + "*" + cycles, minutes, "0");
    }
  }

  private static int named(SeasonPage season, int day) {
    int weekday = season.of.season().weather().days().weekday(day);
    return season.zone.baseline().evening() ? Math.floorMod(weekday - 1, 7) : weekday;
  }

  /**
   * How many cycles the controller begins on a day, also where the percent leaves them no minute.
   */
  private static double cycleCount(SeasonPage season, int day) {
    boolean due = true;
    Baseline baseline = season.zone.baseline();
    DaysOfWeather days = season.of.season().weather().days();
    int at = baseline.evening() ? day - 1 : day;
    if (baseline.oddDates().isPresent()) {
      due = days.dayOfMonth(at) % 2 == (baseline.oddDates().get() ? 1 : 0);
    } else if (baseline.every() > 0) {
      due = Math.floorMod(days.dayNumber(at) - baseline.from(), baseline.every()) == 0;
    }
    return due ? baseline.weekday(named(season, day)).size() : 0;
  }

  private static double cycleMinutes(SeasonPage season, int day) {
    List<Integer> keyed = season.zone.baseline().weekday(named(season, day));
    double step = season.zone.baseline().step();
    return keyed.isEmpty()
        ? 0
        : step * Math.floor(keyed.get(0) * season.of.season().percent(day) / step + 0.500000001);
  }

  private static void put(Page page, SeasonDay column, double value, String format) {
    page.number(column.place, value, format, CellStyleName.TABLE);
  }

  private static void set(SeasonPage season, SeasonDay column, String formula, double result) {
    set(season, column, formula, result, season.depths());
  }

  private static void set(
      SeasonPage season, SeasonDay column, String formula, double result, String format) {
    season.page.formula(column.place, formula, result, format, CellStyleName.TABLE);
  }
}
