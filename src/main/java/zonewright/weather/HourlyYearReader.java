package zonewright.weather;

import java.util.HashSet;
import java.util.Set;

/**
 * Reads hourly files of the kind made for the energy of buildings (EPW): eight lines about the
 * place, then 35 values an hour in local standard time, each hour named by its end.
 *
 * @see "EnergyPlus documentation, Auxiliary Programs, weather file data dictionary (verified):
 *     order, units and marks for missing values"
 */
final class HourlyYearReader {
  private static final String FIRST_WORD = "LOCATION";
  private static final int HEAD = 8;
  private static final int FEWEST_VALUES = 22;
  private static final double WIND_HEIGHT = 10;
  private static final int DRY_BULB = 6;
  private static final int DEW_POINT = 7;
  private static final int HUMIDITY = 8;
  private static final int GLOBAL_RADIATION = 13;
  private static final int WIND_SPEED = 21;
  private static final int RAIN = 33;
  private static final int COMMON_YEAR = 2001;
  private static final double WATT_HOURS = 0.0036;

  private HourlyYearReader() {}

  /** Says whether a text is such a file. */
  static boolean reads(String text) {
    return text.regionMatches(true, 0, FIRST_WORD, 0, FIRST_WORD.length());
  }

  /** Returns what the first line says of the place. */
  static StationSite site(String text) {
    LineReader reader = new LineReader(text, ',');
    reader.next();
    String region =
        reader.cell(2).isEmpty() || reader.cell(2).equals("-") ? "" : ", " + reader.cell(2);
    return new StationSite(
        reader.cell(1) + region,
        within(reader.number(6, false), 90),
        within(reader.number(7, false), 180),
        within(reader.number(9, false), 9000),
        WIND_HEIGHT,
        within(reader.number(8, false), 14));
  }

  private static double within(double value, double most) {
    return Math.abs(value) <= most ? value : Double.NaN;
  }

  /**
   * Reads the hours.
   *
   * @throws WeatherProblem where there are none
   */
  static Observations read(String text, StationSite said, HowFar howFar) throws WeatherProblem {
    Quality quality = new Quality();
    Set<Integer> years = new HashSet<>();
    LineReader first = new LineReader(text, ',');
    skip(first);
    int previous = -1;
    boolean mixed = false;
    while (first.next()) {
      int year = (int) first.number(0, false);
      mixed |= previous > 0 && year != previous && year != previous + 1;
      previous = year;
      years.add(year);
    }
    mixed &= years.size() > 1;
    if (mixed) {
      quality.remark(
          "The months come from different years, chosen to be usual ones: the file says what is usual, not how often more is needed.");
    }
    Observations.Collector collector = new Observations.Collector(WeatherStep.HOUR, quality);
    LineReader reader = new LineReader(text, ',');
    skip(reader);
    int told = 0;
    while (reader.next()) {
      if (reader.position() - told > 1 << 18) {
        told = reader.position();
        howFar.at(told, text.length());
      }
      if (reader.cells() < FEWEST_VALUES) {
        quality.line(Quality.Fault.TOO_SHORT, reader.line());
        continue;
      }
      int year = mixed ? COMMON_YEAR : whole(reader, 0);
      long day = DateReading.day(year, whole(reader, 1), whole(reader, 2));
      int hour = whole(reader, 3);
      if (day == DateReading.NONE || hour < 1 || hour > 24) {
        quality.line(Quality.Fault.NO_DATE, reader.line());
        continue;
      }
      collector.begin((int) (day / 60) + hour - 1, reader.line());
      put(reader, collector, quality, WeatherElement.TEMPERATURE, DRY_BULB, 99.9, 1);
      put(reader, collector, quality, WeatherElement.DEW_POINT, DEW_POINT, 99.9, 1);
      put(reader, collector, quality, WeatherElement.HUMIDITY, HUMIDITY, 999, 1);
      put(
          reader,
          collector,
          quality,
          WeatherElement.RADIATION,
          GLOBAL_RADIATION,
          9999,
          24 * WATT_HOURS);
      put(reader, collector, quality, WeatherElement.WIND, WIND_SPEED, 999, 1);
      put(reader, collector, quality, WeatherElement.RAIN, RAIN, 999, 1);
    }
    if (collector.size() == 0) {
      throw new WeatherProblem(
          "The file begins as an hourly weather file does, but holds no hour that can be read.");
    }
    return collector.collected(site(text).with(said), mixed);
  }

  private static int whole(LineReader reader, int index) {
    double value = reader.number(index, false);
    return value >= 0 && value < 10_000 ? (int) value : -1;
  }

  private static void skip(LineReader reader) {
    for (int i = 0; i < HEAD; i++) {
      reader.next();
    }
  }

  private static void put(
      LineReader reader,
      Observations.Collector collector,
      Quality quality,
      WeatherElement element,
      int index,
      double missing,
      double factor) {
    double value = reader.number(index, false);
    if (reader.blank(index) || value >= missing) {
      quality.value(element, Quality.Fault.MISSING, reader.line());
    } else if (Double.isNaN(value)) {
      quality.value(element, Quality.Fault.UNREADABLE, reader.line());
    } else {
      collector.put(element, value * factor);
    }
  }
}
