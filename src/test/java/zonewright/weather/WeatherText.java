package zonewright.weather;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/** Weather files as text. All weather in them is invented. */
final class WeatherText {
  private WeatherText() {}

  /** Opens a text as if it stood in a file. */
  static WeatherFile file(String text) throws WeatherProblem {
    return WeatherFile.of(text.getBytes(StandardCharsets.UTF_8), "weather.csv");
  }

  /** Reads a text with what is said of its place: 38.5 north, 18 m above the sea. */
  static DailyRecord read(String text) throws WeatherProblem {
    return file(text)
        .read(
            WeatherChoices.USUAL.at(new StationSite("", 38.5, -121.7, 18, Double.NaN, -8)),
            HowFar.UNWATCHED);
  }

  /** Days with all that is measured, in a table with units in its headings. */
  static String days(LocalDate from, int count) {
    Random random = new Random(5);
    StringBuilder text =
        new StringBuilder(
            "Date,Max temp (°C),Min temp (°C),Dew point (°C),Wind speed (m/s),Solar radiation (MJ/m²),Rain (mm)\n");
    for (int i = 0; i < count; i++) {
      LocalDate date = from.plusDays(i);
      double season = Math.cos(2 * Math.PI * (date.getDayOfYear() - 200) / 365.0);
      double high = 22 + 11 * season + random.nextGaussian();
      double low = high - 12;
      text.append(
          String.format(
              Locale.ROOT,
              "%s,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f%n",
              date,
              high,
              low,
              low - 2,
              1 + random.nextInt(30) / 10.0,
              16 + 9 * season,
              random.nextInt(8) == 0 ? 12.0 : 0));
    }
    return text.toString();
  }

  /** An hourly year of the kind made for the energy of buildings, its months of given years. */
  static String hourlyYear(int... years) {
    StringBuilder text = new StringBuilder();
    Hours.HEAD.lines().forEach(line -> text.append(line).append('\n'));
    for (String line : Hours.LINES) {
      int month = Integer.parseInt(line.substring(0, line.indexOf(',')));
      text.append(years[(month - 1) % years.length]).append(',').append(line).append('\n');
    }
    return text.toString();
  }

  /** The hours of a year without its number, made once. */
  private static final class Hours {
    private static final String HEAD =
        """
        LOCATION,Inventown,CA,USA,invented,000000,38.5,-121.7,-8.0,18.0
        DESIGN CONDITIONS,0
        TYPICAL/EXTREME PERIODS,0
        GROUND TEMPERATURES,0
        HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
        COMMENTS 1,invented
        COMMENTS 2,
        DATA PERIODS,1,1,Data,Sunday,1/1,12/31
        """;
    private static final List<String> LINES =
        IntStream.range(0, 8760)
            .mapToObj(hour -> line(LocalDateTime.of(2001, 1, 1, 0, 0).plusHours(hour)))
            .toList();

    private static String line(LocalDateTime time) {
      Sun sun = new Sun(38.5, time.getDayOfYear());
      double sky = Math.max(0, sun.radiationOfHour(sun.angle(time.getHour() + 0.5, -8, -121.7)));
      double season = Math.cos(2 * Math.PI * (time.getDayOfYear() - 200) / 365.0);
      double day = 6 * Math.cos(2 * Math.PI * (time.getHour() - 15) / 24.0);
      String celsius = Math.round(10 * (16 + 10 * season + day)) / 10.0 + ",";
      String dew = Math.round(10 * (8 + 10 * season + day)) / 10.0 + ",";
      return time.getMonthValue()
          + ","
          + time.getDayOfMonth()
          + ","
          + (time.getHour() + 1)
          + ",0,?9,"
          + celsius
          + dew
          + "60,101300,0,0,300,"
          + Math.round(0.7 * sky / 0.0036)
          + ",0,0,0,0,0,0,180,2.0,0,0,9999,99999,9,999999999,999,0.99,0,88,0.2,0.0,1.0";
    }
  }
}
