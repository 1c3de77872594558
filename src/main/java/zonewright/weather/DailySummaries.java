package zonewright.weather;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * Reads the daily summaries that national weather services exchange (GHCN-Daily) as comma-separated
 * values, in both forms: a line a day with a column an element, and a line for each element of a
 * day.
 *
 * @see "GHCN-Daily, readme-by_station.txt (verified) for the order of a line; units of the elements
 *     from memory: tenths of °C, of mm and of m/s, minutes of sunshine, percent"
 */
final class DailySummaries {
  private static final double WIND_HEIGHT = 10;
  private static final int DOUBTS = 5;

  private static final Map<String, WeatherElement> ELEMENTS =
      Map.ofEntries(
          Map.entry("STATION", WeatherElement.STATION),
          Map.entry("DATE", WeatherElement.DATE),
          Map.entry("LATITUDE", WeatherElement.LATITUDE),
          Map.entry("LONGITUDE", WeatherElement.LONGITUDE),
          Map.entry("ELEVATION", WeatherElement.ELEVATION),
          Map.entry("TMAX", WeatherElement.HIGHEST),
          Map.entry("TMIN", WeatherElement.LOWEST),
          Map.entry("ADPT", WeatherElement.DEW_POINT),
          Map.entry("RHMX", WeatherElement.HIGHEST_HUMIDITY),
          Map.entry("RHMN", WeatherElement.LOWEST_HUMIDITY),
          Map.entry("RHAV", WeatherElement.HUMIDITY),
          Map.entry("AWND", WeatherElement.WIND),
          Map.entry("TSUN", WeatherElement.SUNSHINE),
          Map.entry("PRCP", WeatherElement.RAIN));

  private DailySummaries() {}

  /** Says whether headings are those of such a file. */
  static boolean reads(List<String> headings) {
    return headings.contains("STATION")
        && headings.contains("DATE")
        && (headings.contains("TMAX") || headings.contains("PRCP"));
  }

  /** Says whether a line is one of those that hold a single element. */
  static boolean readsLine(LineReader line) {
    return line.cells() >= 4
        && line.cell(0).length() == 11
        && line.cell(1).matches("\\d{8}")
        && line.cell(2).matches("[A-Z][A-Z0-9]{3}");
  }

  /** How the values of a file are written; the same headings stand over three ways. */
  private enum Writing {
    TENTHS("tenths of °C, mm and m/s, as the archive has them"),
    METRIC("°C, mm and m/s"),
    IMPERIAL("°F, inches and miles per hour");

    private final String words;

    Writing(String words) {
      this.words = words;
    }
  }

  private static Map<WeatherElement, WeatherElement.Measure> measures(Writing writing) {
    Map<WeatherElement, WeatherElement.Measure> measures = new EnumMap<>(WeatherElement.class);
    double part = writing == Writing.TENTHS ? 0.1 : 1;
    boolean imperial = writing == Writing.IMPERIAL;
    Unit temperature = imperial ? Units.FAHRENHEIT : Units.CELSIUS;
    for (WeatherElement each :
        List.of(WeatherElement.HIGHEST, WeatherElement.LOWEST, WeatherElement.DEW_POINT)) {
      measures.put(each, new WeatherElement.Measure(temperature, part));
    }
    measures.put(
        WeatherElement.RAIN,
        new WeatherElement.Measure(imperial ? Units.INCH : Units.MILLIMETRE, part));
    measures.put(
        WeatherElement.WIND,
        new WeatherElement.Measure(imperial ? Units.MILE_PER_HOUR : Units.METRE_PER_SECOND, part));
    measures.put(WeatherElement.SUNSHINE, new WeatherElement.Measure(Units.MINUTE, 1));
    for (WeatherElement each :
        List.of(
            WeatherElement.HUMIDITY,
            WeatherElement.HIGHEST_HUMIDITY,
            WeatherElement.LOWEST_HUMIDITY)) {
      measures.put(each, new WeatherElement.Measure(Units.PERCENT, 1));
    }
    measures.put(WeatherElement.LATITUDE, new WeatherElement.Measure(Units.DEGREE, 1));
    measures.put(WeatherElement.LONGITUDE, new WeatherElement.Measure(Units.DEGREE, 1));
    measures.put(WeatherElement.ELEVATION, new WeatherElement.Measure(Units.METRE, 1));
    return measures;
  }

  /**
   * Returns how such a file is matched.
   *
   * @param below a reader that stands below the headings
   */
  static ColumnMatch match(List<String> headings, LineReader below) {
    return ColumnMatch.published(headings, ELEMENTS, measures(writing(headings, below)));
  }

  /** Returns a sentence on how the values of a file are taken to be written. */
  static String writingInWords(List<String> headings, LineReader below) {
    return "Values were taken to be in " + writing(headings, below).words + ".";
  }

  /** Whole numbers throughout are tenths; whole degrees beside parts of an inch are °F. */
  private static Writing writing(List<String> headings, LineReader below) {
    int temperature = headings.indexOf("TMAX");
    int rain = headings.indexOf("PRCP");
    boolean parts = false;
    boolean degrees = false;
    while (below.next()) {
      degrees |= temperature >= 0 && below.cell(temperature).indexOf('.') >= 0;
      parts |= rain >= 0 && below.cell(rain).indexOf('.') >= 0;
    }
    return degrees ? Writing.METRIC : parts ? Writing.IMPERIAL : Writing.TENTHS;
  }

  /** What one day of a file with a line for each element comes to. */
  private static final class Day {
    private final int line;
    private final Map<WeatherElement, Double> values = new EnumMap<>(WeatherElement.class);

    Day(int line) {
      this.line = line;
    }
  }

  /** Reads a file with a line for each element of a day. */
  static Observations readLines(String text, StationSite said, HowFar howFar) {
    Quality quality = new Quality();
    Map<WeatherElement, WeatherElement.Measure> measures = measures(Writing.TENTHS);
    Map<Integer, Day> days = new TreeMap<>();
    LineReader reader = new LineReader(text, ',');
    DateReading dates = new DateReading();
    String station = null;
    int told = 0;
    while (reader.next()) {
      if (reader.position() - told > 1 << 18) {
        told = reader.position();
        howFar.at(told, text.length());
      }
      if (!readsLine(reader)) {
        quality.line(Quality.Fault.TOO_SHORT, reader.line());
        continue;
      }
      station = station == null ? reader.cell(0) : station;
      WeatherElement element = ELEMENTS.get(reader.cell(2));
      long minutes = dates.minutes(reader.cell(1));
      if (!station.equals(reader.cell(0))) {
        quality.line(Quality.Fault.OTHER_STATION, reader.line());
      } else if (minutes == DateReading.NONE) {
        quality.line(Quality.Fault.NO_DATE, reader.line());
      } else if (element != null && element.measured()) {
        double number = reader.number(3, false);
        int at = (int) Math.floorDiv(minutes, (long) DateReading.MINUTES_A_DAY);
        int line = reader.line();
        Day day = days.computeIfAbsent(at, any -> new Day(line));
        if (Double.isNaN(number)) {
          quality.value(element, Quality.Fault.UNREADABLE, line);
        } else if (!reader.blank(DOUBTS)) {
          quality.value(element, Quality.Fault.DOUBTED, line);
        } else if (number != -9999
            && day.values.putIfAbsent(element, element.kept(number, measures.get(element)))
                != null) {
          quality.line(Quality.Fault.TWICE, line);
        }
      }
    }
    Observations.Collector collector = new Observations.Collector(WeatherStep.DAY, quality);
    days.forEach(
        (day, held) -> {
          collector.begin(day, held.line);
          held.values.forEach(collector::put);
        });
    StationSite named =
        new StationSite(
            station == null ? "" : station,
            Double.NaN,
            Double.NaN,
            Double.NaN,
            WIND_HEIGHT,
            Double.NaN);
    return collector.collected(named.with(said), false);
  }

  /** Returns the height at which the network's wind is measured, in metres. */
  static double windHeight() {
    return WIND_HEIGHT;
  }
}
