package zonewright.weather;

import static zonewright.weather.WeatherElement.DEW_POINT;
import static zonewright.weather.WeatherElement.EVAPOTRANSPIRATION;
import static zonewright.weather.WeatherElement.HIGHEST;
import static zonewright.weather.WeatherElement.HIGHEST_HUMIDITY;
import static zonewright.weather.WeatherElement.HUMIDITY;
import static zonewright.weather.WeatherElement.LOWEST;
import static zonewright.weather.WeatherElement.LOWEST_HUMIDITY;
import static zonewright.weather.WeatherElement.RADIATION;
import static zonewright.weather.WeatherElement.RAIN;
import static zonewright.weather.WeatherElement.SUNSHINE;
import static zonewright.weather.WeatherElement.TEMPERATURE;
import static zonewright.weather.WeatherElement.VAPOUR;
import static zonewright.weather.WeatherElement.WIND;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Reference evapotranspiration day by day from what was measured, with what is missing filled in as
 * FAO Irrigation and Drainage Paper 56 says (chapter 3, "Estimating missing climatic data"): dew
 * point from the lowest temperature (equation 48), radiation from the range of temperatures
 * (equation 50), wind of 2 m/s; Hargreaves (equation 52) where there is nothing but temperatures.
 */
final class DailyCalculation {
  private static final int HOURS = 24;
  private static final int FEWEST_HOURS = 20;
  private static final double WIND_HEIGHT = 2;
  private static final double MISSING_WIND = 2;
  private static final double DRY_BELOW = 2;

  /** From a tenth on a reading above the clear sky is told. */
  private static final double ABOVE_CLEAR = 1.1;

  private static final double SUSPICIOUS_SHARE = 0.3;
  private static final double LOW_SUN = 0.3;
  private static final double FIRST_NIGHT = 0.6;

  private final String file;
  private final String form;
  private final Observations observed;
  private final WeatherChoices choices;
  private final StationSite site;
  private final Quality quality;
  private final double windHeight;
  private final double psychrometric;
  private final double clearSky;
  private int[] days = new int[0];
  private final Map<WeatherElement, double[]> daily = new EnumMap<>(WeatherElement.class);
  private double[] byHours = new double[0];

  DailyCalculation(String file, String form, Observations observed, WeatherChoices choices) {
    this.file = file;
    this.form = form;
    this.observed = observed;
    this.choices = choices;
    this.site = observed.site();
    this.quality = observed.quality();
    this.windHeight = Double.isNaN(site.windHeight()) ? WIND_HEIGHT : site.windHeight();
    this.psychrometric = GrassEvapotranspiration.psychrometric(site.elevation());
    this.clearSky = GrassEvapotranspiration.clearSky(site.elevation());
  }

  /**
   * Calculates all days.
   *
   * @throws WeatherProblem where the place must be known for it and is not
   */
  DailyRecord record() throws WeatherProblem {
    placed();
    if (observed.step() == WeatherStep.HOUR) {
      gatherHours();
    } else {
      takeDays();
    }
    int size = days.length;
    Map<DailyRecord.Of, double[]> columns = new EnumMap<>(DailyRecord.Of.class);
    for (DailyRecord.Of each : DailyRecord.Of.values()) {
      columns.put(each, new double[size]);
    }
    int[] notes = new int[size];
    int year = Integer.MIN_VALUE;
    int yearBegins = 0;
    int yearEnds = Integer.MIN_VALUE;
    Sun[] suns = new Sun[367];
    for (int day = 0; day < size; day++) {
      if (days[day] > yearEnds) {
        LocalDate date = LocalDate.ofEpochDay(days[day]);
        year = date.getYear();
        yearBegins = (int) LocalDate.ofYearDay(year, 1).toEpochDay();
        yearEnds = (int) LocalDate.of(year, 12, 31).toEpochDay();
      }
      int dayOfYear = days[day] - yearBegins + 1;
      Sun sun = suns[dayOfYear];
      if (sun == null) {
        sun = new Sun(Double.isNaN(site.latitude()) ? 0 : site.latitude(), dayOfYear);
        suns[dayOfYear] = sun;
      }
      Worked worked = ofDay(day, sun);
      columns.get(DailyRecord.Of.EVAPOTRANSPIRATION)[day] = worked.depth();
      notes[day] = worked.notes();
      columns.get(DailyRecord.Of.RAIN)[day] = value(RAIN, day);
      columns.get(DailyRecord.Of.LOWEST)[day] = value(LOWEST, day);
      columns.get(DailyRecord.Of.MEAN)[day] = (value(HIGHEST, day) + value(LOWEST, day)) / 2;
    }
    DailyRecord record =
        new DailyRecord(
            file,
            site,
            choices.equation(),
            observed.typical(),
            choices.storage(),
            days,
            columns,
            notes,
            List.of());
    List<String> report = new QualityReport(form, record, observed, windHeight).sentences();
    return new DailyRecord(
        file,
        site,
        choices.equation(),
        observed.typical(),
        choices.storage(),
        days,
        columns,
        notes,
        report);
  }

  private void placed() throws WeatherProblem {
    boolean given = observed.elements().contains(EVAPOTRANSPIRATION);
    if (given
        && !observed.elements().contains(HIGHEST)
        && !observed.elements().contains(TEMPERATURE)) {
      return;
    }
    List<String> unknown = new ArrayList<>();
    if (Double.isNaN(site.latitude())) {
      unknown.add("its latitude");
    }
    if (Double.isNaN(site.elevation())) {
      unknown.add("its height above the sea");
    }
    if (!unknown.isEmpty() && !given) {
      throw new WeatherProblem(
          "%s does not say where it was measured; say %s."
              .formatted(file, String.join(" and ", unknown)));
    }
  }

  private double value(WeatherElement element, int day) {
    double[] all = daily.get(element);
    return all == null ? Double.NaN : all[day];
  }

  private void takeDays() {
    days = new int[observed.size()];
    for (int i = 0; i < days.length; i++) {
      days[i] = observed.time(i);
    }
    for (WeatherElement element : observed.elements()) {
      double[] all = new double[days.length];
      for (int i = 0; i < days.length; i++) {
        all[i] = observed.value(element, i);
      }
      daily.put(element, all);
    }
    double[] high = daily.get(HIGHEST);
    double[] low = daily.get(LOWEST);
    for (int i = 0; high != null && low != null && i < days.length; i++) {
      if (low[i] > high[i]) {
        quality.value(LOWEST, Quality.Fault.LOW_ABOVE_HIGH, 0);
        low[i] = Double.NaN;
        high[i] = Double.NaN;
      }
    }
  }

  /** The result of a day. */
  private record Worked(double depth, int notes) {}

  private Worked ofDay(int day, Sun sun) {
    double given = value(EVAPOTRANSPIRATION, day);
    if (!Double.isNaN(given)) {
      return new Worked(Math.max(0, given), DayNote.GIVEN.bit());
    }
    double solar = trusted(day, sun);
    if (byHours.length > 0 && !Double.isNaN(byHours[day])) {
      return new Worked(byHours[day], DayNote.BY_HOURS.bit());
    }
    double high = value(HIGHEST, day);
    double low = value(LOWEST, day);
    if (Double.isNaN(high) || Double.isNaN(low) || Double.isNaN(site.latitude())) {
      return new Worked(Double.NaN, DayNote.NONE.bit());
    }
    double vapour = vapour(day, high, low);
    double wind = value(WIND, day);
    double sunshine = value(SUNSHINE, day);
    double above = sun.radiation();
    boolean only =
        Double.isNaN(vapour) && Double.isNaN(wind) && Double.isNaN(solar) && Double.isNaN(sunshine);
    if (only) {
      return new Worked(
          GrassEvapotranspiration.hargreaves(high, low, above), DayNote.HARGREAVES.bit());
    }
    if (Double.isNaN(site.elevation())) {
      return new Worked(Double.NaN, DayNote.NONE.bit());
    }
    int notes = DayNote.BY_DAY.bit();
    double saturated =
        (GrassEvapotranspiration.saturation(high) + GrassEvapotranspiration.saturation(low)) / 2;
    if (Double.isNaN(vapour)) {
      notes |= DayNote.DEW_FROM_LOWEST.bit();
      vapour = GrassEvapotranspiration.saturation(low - (choices.dry() ? DRY_BELOW : 0));
    } else if (vapour > saturated) {
      notes |= DayNote.AT_SATURATION.bit();
      vapour = saturated;
    }
    if (Double.isNaN(wind)) {
      notes |= DayNote.WIND_OF_TWO.bit();
      wind = MISSING_WIND;
    } else {
      wind = GrassEvapotranspiration.windAtTwoMetres(wind, windHeight);
    }
    double clear = clearSky * above;
    if (Double.isNaN(solar) && !Double.isNaN(sunshine)) {
      notes |= DayNote.SUN_FROM_SUNSHINE.bit();
      double share = sun.daylight() > 0 ? Math.min(1, sunshine / sun.daylight()) : 0;
      solar = (0.25 + 0.5 * share) * above;
    } else if (Double.isNaN(solar)) {
      notes |= DayNote.SUN_FROM_RANGE.bit();
      solar = Math.min((choices.coast() ? 0.19 : 0.16) * Math.sqrt(high - low) * above, clear);
    }
    double depth =
        GrassEvapotranspiration.ofDay(
            choices.equation(), high, low, vapour, wind, solar, clear, psychrometric);
    return new Worked(depth, notes);
  }

  /** Returns the radiation measured, unless it is more than there is above the air. */
  private double trusted(int day, Sun sun) {
    double solar = value(RADIATION, day);
    if (Double.isNaN(solar) || Double.isNaN(site.latitude())) {
      return solar;
    }
    if (solar > sun.radiation() && solar > 1) {
      quality.value(RADIATION, Quality.Fault.ABOVE_THE_AIR, 0);
      if (byHours.length > 0) {
        byHours[day] = Double.NaN;
      }
      return Double.NaN;
    }
    if (solar > ABOVE_CLEAR * clearSky * sun.radiation()) {
      quality.value(RADIATION, Quality.Fault.ABOVE_CLEAR_SKY, 0);
    }
    return solar;
  }

  /** Returns the share of days from which on radiation above the sky speaks of a wrong unit. */
  static double suspiciousShare() {
    return SUSPICIOUS_SHARE;
  }

  /** Vapour pressure by what was measured, the best first; not-a-number where nothing was. */
  private double vapour(int day, double high, double low) {
    double measured = value(VAPOUR, day);
    if (!Double.isNaN(measured)) {
      return measured;
    }
    double dew = value(DEW_POINT, day);
    if (!Double.isNaN(dew)) {
      return GrassEvapotranspiration.saturation(dew);
    }
    double most = value(HIGHEST_HUMIDITY, day) / 100;
    double least = value(LOWEST_HUMIDITY, day) / 100;
    double atLow = GrassEvapotranspiration.saturation(low);
    double atHigh = GrassEvapotranspiration.saturation(high);
    if (!Double.isNaN(most) && !Double.isNaN(least)) {
      return (atLow * most + atHigh * least) / 2;
    }
    if (!Double.isNaN(most)) {
      return atLow * most;
    }
    return value(HUMIDITY, day) / 100 * ((atHigh + atLow) / 2);
  }

  /** Gathers hours into days, and calculates those days of which every hour is complete. */
  private void gatherHours() {
    int size = observed.size();
    int count = 0;
    int last = Integer.MIN_VALUE;
    for (int i = 0; i < size; i++) {
      int day = Math.floorDiv(observed.time(i), HOURS);
      count += day == last ? 0 : 1;
      last = day;
    }
    days = new int[count];
    byHours = new double[count];
    for (WeatherElement element :
        List.of(
            HIGHEST,
            LOWEST,
            DEW_POINT,
            HIGHEST_HUMIDITY,
            LOWEST_HUMIDITY,
            WIND,
            RADIATION,
            RAIN,
            EVAPOTRANSPIRATION)) {
      daily.put(element, new double[count]);
    }
    double clearness = FIRST_NIGHT;
    int at = -1;
    for (int from = 0; from < size; ) {
      int day = Math.floorDiv(observed.time(from), HOURS);
      int to = from;
      while (to < size && Math.floorDiv(observed.time(to), HOURS) == day) {
        to++;
      }
      at++;
      days[at] = day;
      gather(at, from, to);
      clearness = hours(at, from, to, clearness);
      from = to;
    }
  }

  private void gather(int at, int from, int to) {
    Span temperature = new Span(TEMPERATURE, from, to);
    Span humidity = new Span(HUMIDITY, from, to);
    boolean enough = temperature.count >= FEWEST_HOURS;
    daily.get(HIGHEST)[at] = enough ? temperature.most : Double.NaN;
    daily.get(LOWEST)[at] = enough ? temperature.least : Double.NaN;
    boolean humid = humidity.count >= FEWEST_HOURS;
    daily.get(HIGHEST_HUMIDITY)[at] = humid ? humidity.most : Double.NaN;
    daily.get(LOWEST_HUMIDITY)[at] = humid ? humidity.least : Double.NaN;
    daily.get(DEW_POINT)[at] = new Span(DEW_POINT, from, to).meanOf(FEWEST_HOURS);
    daily.get(WIND)[at] = new Span(WIND, from, to).meanOf(FEWEST_HOURS);
    daily.get(RADIATION)[at] = new Span(RADIATION, from, to).meanOf(HOURS);
    daily.get(RAIN)[at] = new Span(RAIN, from, to).sumOf(HOURS);
    daily.get(EVAPOTRANSPIRATION)[at] = new Span(EVAPOTRANSPIRATION, from, to).sumOf(HOURS);
  }

  /** What the hours of a day come to in one element. */
  private final class Span {
    private int count;
    private double sum;
    private double most = Double.NEGATIVE_INFINITY;
    private double least = Double.POSITIVE_INFINITY;

    Span(WeatherElement element, int from, int to) {
      for (int i = from; i < to; i++) {
        double value = observed.value(element, i);
        if (!Double.isNaN(value)) {
          count++;
          sum += value;
          most = Math.max(most, value);
          least = Math.min(least, value);
        }
      }
    }

    double meanOf(int fewest) {
      return count >= fewest ? sum / count : Double.NaN;
    }

    double sumOf(int fewest) {
      return count >= fewest ? sum : Double.NaN;
    }
  }

  /** Adds up the hours of a day where all are complete; returns the clearness of its evening. */
  private double hours(int at, int from, int to, double evening) {
    double latitude = Double.isNaN(site.latitude()) ? 0 : site.latitude();
    Sun sun = new Sun(latitude, LocalDate.ofEpochDay(days[at]).getDayOfYear());
    double noon = sun.height(0);
    // where the sun stays low all day, the hours around noon tell how clear the sky is
    double enough = Math.min(LOW_SUN, 0.9 * noon);
    boolean complete =
        to - from == HOURS && !Double.isNaN(site.elevation()) && !Double.isNaN(site.latitude());
    double clearness = evening;
    double sum = 0;
    for (int i = from; i < to; i++) {
      double celsius = observed.value(TEMPERATURE, i);
      double vapour = vapourOfHour(i, celsius);
      double wind = observed.value(WIND, i);
      double solar = observed.value(RADIATION, i) / HOURS;
      complete &= !Double.isNaN(celsius + vapour + wind + solar);
      // an hour counts by its middle: what a file calls hour 1 is 0:00 to 1:00, and 0:30 here
      double clock = Math.floorMod(observed.time(i), HOURS) + 0.5;
      double angle =
          Double.isNaN(site.longitude()) || Double.isNaN(site.timeZone())
              ? Math.PI / 12 * (clock - 12)
              : sun.angle(clock, site.timeZone(), site.longitude());
      double clear = clearSky * sun.radiationOfHour(angle);
      if (noon > 0 && sun.height(angle) >= enough && !Double.isNaN(solar)) {
        clearness = GrassEvapotranspiration.clearness(choices.equation(), solar, clear);
      }
      if (complete) {
        sum +=
            GrassEvapotranspiration.ofHour(
                choices.equation(),
                celsius,
                vapour,
                GrassEvapotranspiration.windAtTwoMetres(wind, windHeight),
                solar,
                clearness,
                psychrometric);
      }
    }
    byHours[at] = complete ? Math.max(0, sum) : Double.NaN;
    return clearness;
  }

  private double vapourOfHour(int hour, double celsius) {
    double saturated = GrassEvapotranspiration.saturation(celsius);
    double measured = observed.value(VAPOUR, hour);
    double dew = observed.value(DEW_POINT, hour);
    double vapour =
        !Double.isNaN(measured)
            ? measured
            : !Double.isNaN(dew)
                ? GrassEvapotranspiration.saturation(dew)
                : saturated * observed.value(HUMIDITY, hour) / 100;
    return Math.min(vapour, saturated);
  }
}
