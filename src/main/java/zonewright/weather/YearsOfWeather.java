package zonewright.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What years of days come to for a design: each month, and the hottest spans, as mean and as what
 * was not exceeded in 5, 8 and 9 years of 10; the rain that counts; frost and growth.
 *
 * <p>A month of a year counts where at most 5 days are missing and at most 3 in a row (the rule of
 * the US Climate Reference Network for its monthly means: NOAA, README of monthly01, verified); its
 * evapotranspiration is the mean of its days times their number. Rain counts only where no day is
 * missing, for it is a sum.
 */
public final class YearsOfWeather {
  /** The shares of years, in tenths, for which what was not exceeded is told. */
  public static final List<Integer> TENTHS = List.of(5, 8, 9);

  /** The lengths of the hottest spans, in days. */
  public static final List<Integer> SPANS = List.of(7, 10, 30);

  /** From so many years on, what was not exceeded in 8 and in 9 of 10 is told; common practice. */
  public static final int ENOUGH_YEARS = 10;

  /** From so many years on, what was not exceeded in 5 of 10 is told; common practice. */
  public static final int ENOUGH_FOR_HALF = 5;

  private static final int MOST_MISSING = 5;
  private static final int MOST_IN_A_ROW = 3;
  private static final int MONTHS = 12;

  /** Rain of a day below this share of evapotranspiration counts as nothing: FAO-56, chapter 8. */
  private static final double LIGHT_RAIN = 0.2;

  private static final double GROWTH = 5;
  private static final int MIDDLE = 183;

  /**
   * What a month, or a span of days, comes to over the years. All depths in mm; what is not known
   * is not-a-number.
   *
   * @param days how many days it has; February 28
   * @param years how many years count
   * @param mean mean depth of reference evapotranspiration
   * @param notExceeded the depth not exceeded in as many years of ten as {@link #TENTHS} says
   * @param rain mean rain
   * @param effectiveRain mean of the rain that counts
   * @param frost mean number of days with frost
   * @param growing mean number of days of 5 °C and more
   */
  public record Stretch(
      int days,
      int years,
      double mean,
      List<Double> notExceeded,
      double rain,
      double effectiveRain,
      double frost,
      double growing) {
    public Stretch {
      notExceeded = List.copyOf(notExceeded);
    }
  }

  /** One year's months, in mm; not-a-number where a month does not count. */
  public record Year(int year, List<Double> months) {
    public Year {
      months = List.copyOf(months);
    }
  }

  private final DailyRecord record;
  private final int firstYear;
  private final int years;
  private final double[][] depth;
  private final double[][] rain;
  private final double[][] counted;
  private final double[][] frost;
  private final double[][] growing;
  private final double[][] spans;

  /** Sums a record up. */
  public YearsOfWeather(DailyRecord record) {
    this.record = record;
    firstYear = record.date(0).getYear();
    years = record.date(record.size() - 1).getYear() - firstYear + 1;
    depth = unknown(MONTHS);
    rain = unknown(MONTHS);
    counted = unknown(MONTHS);
    frost = unknown(MONTHS);
    growing = unknown(MONTHS);
    spans = unknown(SPANS.size());
    double[] effective = effectiveRain();
    for (int from = 0; from < record.size(); ) {
      LocalDate date = record.date(from);
      int ends = (int) date.withDayOfMonth(date.lengthOfMonth()).toEpochDay();
      int to = from;
      while (to < record.size() && record.dayNumber(to) <= ends) {
        to++;
      }
      month(date, from, to, effective);
      from = to;
    }
    hottest();
  }

  private double[][] unknown(int columns) {
    double[][] table = new double[years][columns];
    for (double[] row : table) {
      Arrays.fill(row, Double.NaN);
    }
    return table;
  }

  private void month(LocalDate date, int from, int to, double[] effective) {
    int row = date.getYear() - firstYear;
    int column = date.getMonthValue() - 1;
    int length = date.lengthOfMonth();
    int begins = (int) date.withDayOfMonth(1).toEpochDay();
    Tally et = new Tally(begins, length);
    Tally wet = new Tally(begins, length);
    Tally good = new Tally(begins, length);
    Tally cold = new Tally(begins, length);
    Tally grown = new Tally(begins, length);
    for (int day = from; day < to; day++) {
      int number = record.dayNumber(day);
      et.add(number, record.evapotranspiration(day));
      wet.add(number, record.rain(day));
      good.add(number, effective[day]);
      double lowest = record.lowest(day);
      cold.add(number, Double.isNaN(lowest) ? lowest : lowest < 0 ? 1 : 0);
      double mean = record.value(DailyRecord.Of.MEAN, day);
      grown.add(number, Double.isNaN(mean) ? mean : mean >= GROWTH ? 1 : 0);
    }
    depth[row][column] = et.total(MOST_MISSING, MOST_IN_A_ROW);
    rain[row][column] = wet.total(0, 0);
    counted[row][column] = good.total(0, 0);
    frost[row][column] = cold.total(MOST_MISSING, MOST_IN_A_ROW);
    growing[row][column] = grown.total(MOST_MISSING, MOST_IN_A_ROW);
  }

  /** Adds up the days of a month and says how many were missing. */
  private static final class Tally {
    private final int length;
    private int expected;
    private final int end;
    private int count;
    private int longest;
    private double sum;

    Tally(int begins, int length) {
      this.length = length;
      expected = begins;
      end = begins + length;
    }

    void add(int day, double value) {
      if (!Double.isNaN(value)) {
        longest = Math.max(longest, day - expected);
        expected = day + 1;
        count++;
        sum += value;
      }
    }

    double total(int mostMissing, int mostInRow) {
      int gap = Math.max(longest, end - expected);
      return length - count > mostMissing || gap > mostInRow ? Double.NaN : sum / count * length;
    }
  }

  /**
   * The rain of each day that grass can use: what fills the root zone up, which is watered again
   * whenever it is empty. Rain below a fifth of the day's evapotranspiration counts as nothing.
   *
   * @see "FAO-56, chapter 8, equation 85 (verified) with neither runoff nor capillary rise; that
   *     watering comes when storage is used up is a choice of this program"
   */
  private double[] effectiveRain() {
    double[] effective = new double[record.size()];
    double depleted = 0;
    for (int day = 0; day < effective.length; day++) {
      double et = record.evapotranspiration(day);
      double fell = record.rain(day);
      if (Double.isNaN(et) || Double.isNaN(fell)) {
        effective[day] = Double.NaN;
        continue;
      }
      depleted += et;
      double useful = fell < LIGHT_RAIN * et ? 0 : Math.min(fell, depleted);
      effective[day] = useful;
      depleted -= useful;
      if (depleted >= record.storage()) {
        depleted = 0;
      }
    }
    return effective;
  }

  private void hottest() {
    int size = record.size();
    double[] sums = new double[size + 1];
    int[] known = new int[size + 1];
    for (int day = 0; day < size; day++) {
      double value = record.evapotranspiration(day);
      boolean there = !Double.isNaN(value);
      sums[day + 1] = sums[day] + (there ? value : 0);
      known[day + 1] = known[day] + (there ? 1 : 0);
    }
    for (int span = 0; span < SPANS.size(); span++) {
      int length = SPANS.get(span);
      double[] most = new double[years];
      for (int to = length; to <= size; to++) {
        boolean whole =
            record.dayNumber(to - 1) - record.dayNumber(to - length) == length - 1
                && known[to] - known[to - length] == length;
        if (whole) {
          int row = record.date(to - 1).getYear() - firstYear;
          most[row] = Math.max(most[row], sums[to] - sums[to - length]);
        }
      }
      for (int row = 0; row < years; row++) {
        spans[row][span] = complete(row) ? most[row] : Double.NaN;
      }
    }
  }

  /** Says whether every month of a year counts. */
  private boolean complete(int row) {
    return Arrays.stream(depth[row]).noneMatch(Double::isNaN);
  }

  /** Returns the record that was summed up. */
  public DailyRecord record() {
    return record;
  }

  /** Returns what the months come to, January first. */
  public List<Stretch> months() {
    List<Stretch> months = new ArrayList<>();
    for (int month = 0; month < MONTHS; month++) {
      double[] depths = column(depth, month);
      months.add(
          new Stretch(
              LocalDate.of(2001, month + 1, 1).lengthOfMonth(),
              depths.length,
              mean(depths),
              shares(depths),
              mean(column(rain, month)),
              mean(column(counted, month)),
              mean(column(frost, month)),
              mean(column(growing, month))));
    }
    return months;
  }

  /** Returns what the hottest spans of the years come to, as many as {@link #SPANS} names. */
  public List<Stretch> spans() {
    List<Stretch> stretches = new ArrayList<>();
    for (int span = 0; span < SPANS.size(); span++) {
      double[] depths = column(spans, span);
      double none = Double.NaN;
      stretches.add(
          new Stretch(
              SPANS.get(span),
              depths.length,
              mean(depths),
              shares(depths),
              none,
              none,
              none,
              none));
    }
    return stretches;
  }

  /** Returns the years, the first first. */
  public List<Year> years() {
    List<Year> all = new ArrayList<>();
    for (int row = 0; row < years; row++) {
      all.add(new Year(firstYear + row, Arrays.stream(depth[row]).boxed().toList()));
    }
    return all;
  }

  /** Returns how many years have every month. */
  public int completeYears() {
    int count = 0;
    for (int row = 0; row < years; row++) {
      count += complete(row) ? 1 : 0;
    }
    return count;
  }

  private static double[] column(double[][] table, int column) {
    return Arrays.stream(table)
        .mapToDouble(row -> row[column])
        .filter(value -> !Double.isNaN(value))
        .toArray();
  }

  private static double mean(double[] values) {
    return values.length == 0 ? Double.NaN : Arrays.stream(values).sum() / values.length;
  }

  private List<Double> shares(double[] values) {
    return TENTHS.stream()
        .map(
            tenths ->
                values.length >= (tenths > 5 ? ENOUGH_YEARS : ENOUGH_FOR_HALF)
                    ? notExceeded(values, tenths / 10.0)
                    : Double.NaN)
        .toList();
  }

  /**
   * Returns the value not exceeded in a share of the years: the m-th smallest of n stands for m ÷
   * (n + 1), values between by a straight line; the largest where the share lies beyond it.
   *
   * @see "Weibull's plotting position, as usual in hydrology (from memory)"
   */
  static double notExceeded(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double position = share * (sorted.length + 1) - 1;
    if (position <= 0) {
      return sorted[0];
    }
    int below = (int) Math.floor(position);
    if (below >= sorted.length - 1) {
      return sorted[sorted.length - 1];
    }
    return sorted[below] + (position - below) * (sorted[below + 1] - sorted[below]);
  }

  /**
   * Returns the season without frost in words; nothing where temperatures are missing.
   *
   * <p>In the south the year is taken from July to June.
   */
  public Optional<String> season() {
    boolean south = record.site().latitude() < 0;
    List<Integer> lasts = new ArrayList<>();
    List<Integer> firsts = new ArrayList<>();
    int counted = 0;
    int withFrost = 0;
    int day = 0;
    for (int row = 0; row < years; row++) {
      LocalDate from = LocalDate.of(firstYear + row, south ? 7 : 1, 1);
      int begins = (int) from.toEpochDay();
      int ends = (int) from.plusYears(1).toEpochDay();
      int known = 0;
      int last = -1;
      int first = -1;
      while (day < record.size() && record.dayNumber(day) < begins) {
        day++;
      }
      for (; day < record.size() && record.dayNumber(day) < ends; day++) {
        double lowest = record.lowest(day);
        int into = record.dayNumber(day) - begins;
        known += Double.isNaN(lowest) ? 0 : 1;
        if (lowest < 0 && into < MIDDLE) {
          last = into;
        } else if (lowest < 0 && first < 0) {
          first = into;
        }
      }
      if (known < 350) {
        continue;
      }
      counted++;
      withFrost += last >= 0 || first >= 0 ? 1 : 0;
      if (last >= 0) {
        lasts.add(last);
      }
      if (first >= 0) {
        firsts.add(first);
      }
    }
    if (counted == 0) {
      return Optional.empty();
    }
    if (2 * withFrost < counted) {
      return Optional.of(
          withFrost == 0
              ? "No frost in any of " + Sentence.count(counted, "year")
              : "Frost in %s of %s years".formatted(withFrost, counted));
    }
    boolean enough = counted >= ENOUGH_YEARS;
    String how = enough ? "in 8 years of 10" : "on the mean of " + Sentence.count(counted, "year");
    return Optional.of(
        "Last frost of spring %s%s, first of autumn %s%s, %s"
            .formatted(
                enough ? "not after " : "",
                date(lasts, enough ? 0.8 : Double.NaN, south, 0),
                enough ? "not before " : "",
                date(firsts, enough ? 0.2 : Double.NaN, south, 364),
                how));
  }

  private static String date(List<Integer> days, double share, boolean south, int otherwise) {
    double[] all = days.stream().mapToDouble(each -> each).toArray();
    double day =
        all.length == 0 ? otherwise : Double.isNaN(share) ? mean(all) : notExceeded(all, share);
    LocalDate date = LocalDate.of(2001, south ? 7 : 1, 1).plusDays(Math.round(day));
    String month = date.getMonth().toString();
    return date.getDayOfMonth()
        + " "
        + month.charAt(0)
        + month.substring(1).toLowerCase(Locale.ROOT);
  }

  /** Returns where the figures come from, in a sentence that a design keeps. */
  public String origin() {
    StationSite site = record.site();
    int given = record.count(DayNote.GIVEN);
    int hargreaves = record.count(DayNote.HARGREAVES);
    int calculated = record.count(DayNote.BY_DAY) + record.count(DayNote.BY_HOURS);
    String way =
        given >= Math.max(hargreaves, calculated)
            ? "evapotranspiration as the file gives it"
            : hargreaves > calculated
                ? "Hargreaves from temperatures alone"
                : record.equation().words();
    String span =
        record.typical()
            ? "a year of usual months"
            : record.date(0) + " to " + record.date(record.size() - 1);
    return "%s%s, %s, %s"
        .formatted(record.file(), site.name().isEmpty() ? "" : " (" + site.name() + ")", span, way);
  }
}
