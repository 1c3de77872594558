package zonewright.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import zonewright.weather.DailyRecord;
import zonewright.weather.HowFar;
import zonewright.weather.StationSite;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;
import zonewright.weather.YearsOfWeather;

/** How long thirty years of days and a year of hours take to read, check and sum. */
public final class WeatherBench {
  private static final int ROUNDS = 8;
  private static final double MILLION = 1e6;

  private WeatherBench() {}

  /** Prints the time of each round, the first included, by the clock and at work. */
  public static void main(String... arguments) throws IOException, WeatherProblem {
    measure("30 years of days", days());
    measure("1 year of hours", hours());
  }

  private static void measure(String what, String text) throws IOException, WeatherProblem {
    Path file = Files.createTempFile("weather", ".csv");
    Files.writeString(file, text);
    WeatherChoices choices = WeatherChoices.USUAL.at(new StationSite("", 38.5, -121.7, 18, 2, -8));
    for (int round = 0; round < ROUNDS; round++) {
      long begun = System.nanoTime();
      long worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      DailyRecord record = WeatherFile.open(file).read(choices, HowFar.UNWATCHED);
      YearsOfWeather years = new YearsOfWeather(record);
      int months = years.months().size() + years.spans().size();
      double millis = (System.nanoTime() - begun) / MILLION;
      System.out.printf(
          Locale.ROOT,
          "%s: %.0f ms, of which %.0f ms at work; %d days, %d rows, file %.1f MB%n",
          what,
          millis,
          (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - worked) / MILLION,
          record.size(),
          months,
          Files.size(file) / MILLION);
    }
    Files.delete(file);
  }

  private static String days() {
    StringBuilder text =
        new StringBuilder(
            "Date,Tmax (°C),Tmin (°C),RHmax (%),RHmin (%),Wind (m/s),Rs (MJ/m²),Rain (mm)\n");
    for (LocalDate day = LocalDate.of(1991, 1, 1); day.getYear() < 2021; day = day.plusDays(1)) {
      int wave = day.getDayOfYear() % 17;
      text.append(
          String.format(
              Locale.ROOT,
              "%s,%.1f,%.1f,%d,%d,%.1f,%.1f,%.1f%n",
              day,
              20.0 + wave,
              8.0 + wave / 2.0,
              90,
              40,
              2.5,
              14.0 + wave / 4.0,
              wave == 3 ? 5.0 : 0));
    }
    return text.toString();
  }

  private static String hours() {
    StringBuilder text =
        new StringBuilder("Date,Hour,Temp (°C),RH (%),Wind (m/s),Rs (W/m²),Rain (mm)\n");
    for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2002; day = day.plusDays(1)) {
      for (int hour = 1; hour <= 24; hour++) {
        int sun = Math.max(0, 9 - Math.abs(12 - hour)) * 60;
        text.append(
            String.format(
                Locale.ROOT,
                "%s,%d,%.1f,%d,%.1f,%d,0%n",
                day,
                hour,
                15.0 + hour / 3.0,
                55,
                2.1,
                sun));
      }
    }
    return text.toString();
  }
}
