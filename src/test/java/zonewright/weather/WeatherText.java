package zonewright.weather;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Random;

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
    StringBuilder text =
        new StringBuilder("LOCATION,Inventown,CA,USA,invented,000000,38.5,-121.7,-8.0,18.0\n");
    text.append("DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n")
        .append("HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,invented\nCOMMENTS 2,\n")
        .append("DATA PERIODS,1,1,Data,Sunday,1/1,12/31\n");
    LocalDateTime time = LocalDateTime.of(2001, 1, 1, 0, 0);
    for (int i = 0; i < 8760; i++) {
      Sun sun = new Sun(38.5, time.getDayOfYear());
      double sky = Math.max(0, sun.radiationOfHour(sun.angle(time.getHour() + 0.5, -8, -121.7)));
      double season = Math.cos(2 * Math.PI * (time.getDayOfYear() - 200) / 365.0);
      double celsius = 16 + 10 * season + 6 * Math.cos(2 * Math.PI * (time.getHour() - 15) / 24.0);
      text.append(
          String.format(
              Locale.ROOT,
              "%d,%d,%d,%d,0,?9,%.1f,%.1f,%d,101300,0,0,300,%d,0,0,0,0,0,0,180,%.1f,0,0,9999,99999,9,999999999,999,0.99,0,88,0.2,0.0,1.0%n",
              years[(time.getMonthValue() - 1) % years.length],
              time.getMonthValue(),
              time.getDayOfMonth(),
              time.getHour() + 1,
              celsius,
              celsius - 8,
              60,
              Math.round(0.7 * sky / 0.0036),
              2.0));
      time = time.plusHours(1);
    }
    return text.toString();
  }
}
