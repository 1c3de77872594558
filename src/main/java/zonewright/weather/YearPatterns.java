package zonewright.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What pictures of a record show: years that differ, hottest weeks, the days of a usual year. */
public final class YearPatterns {
  private static final int WEEK = 7;
  private static final int MONTHS = 12;
  private static final int LONGEST_MONTH = 31;

  private YearPatterns() {}

  /**
   * The years that asked least, most and just between, each month by month in mm.
   *
   * @param lowest for each month the least any year asked, and {@code highest} the most
   */
  public record Band(
      YearsOfWeather.Year wettest,
      YearsOfWeather.Year middle,
      YearsOfWeather.Year driest,
      List<Double> lowest,
      List<Double> highest) {}

  /**
   * Returns the band of the years that have every month; nothing where there are none. Driest is
   * the year of the most reference evapotranspiration, wettest that of the least.
   */
  public static Optional<Band> band(YearsOfWeather years) {
    List<YearsOfWeather.Year> whole =
        years.years().stream()
            .filter(year -> year.months().stream().noneMatch(depth -> Double.isNaN(depth)))
            .sorted(Comparator.comparingDouble(YearPatterns::depth))
            .toList();
    if (whole.isEmpty()) {
      return Optional.empty();
    }
    List<Double> lowest = new ArrayList<>();
    List<Double> highest = new ArrayList<>();
    for (int month = 0; month < MONTHS; month++) {
      int at = month;
      lowest.add(whole.stream().mapToDouble(year -> year.months().get(at)).min().orElseThrow());
      highest.add(whole.stream().mapToDouble(year -> year.months().get(at)).max().orElseThrow());
    }
    int last = whole.size() - 1;
    return Optional.of(
        new Band(whole.get(0), whole.get(last / 2), whole.get(last), lowest, highest));
  }

  private static double depth(YearsOfWeather.Year year) {
    return year.months().stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * The seven days in a row on which a year asked most.
   *
   * @param first the first of them
   * @param depth reference evapotranspiration of the seven days, mm
   */
  public record Week(LocalDate first, double depth) {}

  /** Returns the hottest week of each year in which seven days in a row are known. */
  public static List<Week> hottestWeeks(DailyRecord record) {
    TreeMap<Integer, Week> hottest = new TreeMap<>();
    for (int from = 0; from + WEEK <= record.size(); from++) {
      boolean whole = record.dayNumber(from + WEEK - 1) - record.dayNumber(from) == WEEK - 1;
      double sum = whole ? 0 : Double.NaN;
      for (int day = from; day < from + WEEK && !Double.isNaN(sum); day++) {
        sum += record.evapotranspiration(day);
      }
      if (!Double.isNaN(sum)) {
        Week week = new Week(record.date(from), sum);
        hottest.merge(
            record.date(from).getYear(),
            week,
            (one, other) -> other.depth() > one.depth() ? other : one);
      }
    }
    return List.copyOf(hottest.values());
  }

  /**
   * Returns the mean reference evapotranspiration of each day of the year, mm: by month and day of
   * the month, counted from 0; not-a-number where no year has that day.
   */
  public static double[][] usualDays(DailyRecord record) {
    double[][] sums = new double[MONTHS][LONGEST_MONTH];
    int[][] counts = new int[MONTHS][LONGEST_MONTH];
    for (int day = 0; day < record.size(); day++) {
      double value = record.evapotranspiration(day);
      if (!Double.isNaN(value)) {
        LocalDate date = record.date(day);
        sums[date.getMonthValue() - 1][date.getDayOfMonth() - 1] += value;
        counts[date.getMonthValue() - 1][date.getDayOfMonth() - 1]++;
      }
    }
    for (int month = 0; month < MONTHS; month++) {
      for (int day = 0; day < LONGEST_MONTH; day++) {
        sums[month][day] /= counts[month][day]; // 0 ÷ 0 is not-a-number
      }
    }
    return sums;
  }
}
