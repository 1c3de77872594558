package zonewright.season;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.TypicalYear;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.units.Units;
import zonewright.weather.DailyRecord;

/**
 * The days of a season, and where they come from.
 *
 * @param days the days
 * @param typical whether they are a year made from months, which repeats
 * @param origin where they come from, a sentence or two to stand on everything that rests on them
 */
public record SeasonWeather(DaysOfWeather days, boolean typical, String origin) {
  private static final int MONTHS = 12;

  /** A year made from the months of a design, or the reason why there is none. */
  public record FromMonths(Optional<SeasonWeather> weather, String problem) {}

  /** Returns a typical year made from the months of a design. */
  public static FromMonths of(Book book) {
    double[] daily = new double[MONTHS];
    double[] rain = new double[MONTHS];
    boolean anyRain = false;
    for (int month = 0; month < MONTHS; month++) {
      Outcome outcome = book.outcome(Climate.DAILY_REFERENCE_ET.reference(), month);
      if (!(outcome instanceof Outcome.Amount amount)) {
        return new FromMonths(
            Optional.empty(),
            "There is no year to follow: reference ET of %s is not known. Choose a climate place, type the months, or name a weather file."
                .formatted(Climate.MONTH_NAMES.get(month)));
      }
      daily[month] =
          Climate.DAILY_REFERENCE_ET
              .kind()
              .unit(book.system())
              .convert(amount.value(), Units.MILLIMETRE_PER_DAY);
      double fell = book.number(Rain.MONTH_RAIN.reference(), month);
      if (!Double.isNaN(fell)) {
        anyRain = true;
        rain[month] = Rain.MONTH_RAIN.kind().unit(book.system()).convert(fell, Units.MILLIMETRE);
      }
    }
    String origin =
        "Weather: a typical year made from the months of the design, with reference ET along a smooth line and "
            + (anyRain
                ? "rain in alike showers at even distances"
                : "no rain, for the months have none")
            + ". No hot, dry or wet year is in it: name a weather file for those.";
    return new FromMonths(
        Optional.of(new SeasonWeather(TypicalYear.of(daily, rain), true, origin)), "");
  }

  /**
   * Returns the days of a weather file. What is missing is filled with the mean of all days of that
   * month, rain with none, and that is said.
   */
  public static SeasonWeather of(DailyRecord record) {
    LocalDate first = record.date(0);
    int size = (int) (record.date(record.size() - 1).toEpochDay() - first.toEpochDay()) + 1;
    double[] et = filled(size);
    double[] rain = filled(size);
    double[] lowest = filled(size);
    double[] sums = new double[MONTHS];
    int[] counts = new int[MONTHS];
    for (int at = 0; at < record.size(); at++) {
      int day = (int) (record.date(at).toEpochDay() - first.toEpochDay());
      et[day] = record.evapotranspiration(at);
      rain[day] = record.rain(at);
      lowest[day] = record.lowest(at);
      if (!Double.isNaN(et[day])) {
        sums[record.date(at).getMonthValue() - 1] += et[day];
        counts[record.date(at).getMonthValue() - 1]++;
      }
    }
    int withoutEt = 0;
    int withoutRain = 0;
    double all = Arrays.stream(sums).sum() / Math.max(1, Arrays.stream(counts).sum());
    for (int day = 0; day < size; day++) {
      if (Double.isNaN(et[day])) {
        int month = first.plusDays(day).getMonthValue() - 1;
        et[day] = counts[month] > 0 ? sums[month] / counts[month] : all;
        withoutEt++;
      }
      et[day] = Math.max(0, et[day]);
      if (Double.isNaN(rain[day])) {
        rain[day] = 0;
        withoutRain++;
      }
    }
    String origin =
        "Weather: %s, %s to %s%s.%s%s"
            .formatted(
                record.file(),
                first,
                first.plusDays(size - 1L),
                record.typical() ? ", a year of usual months" : "",
                withoutEt == 0
                    ? ""
                    : withoutEt == 1
                        ? " 1 day without evapotranspiration was given the mean of its month."
                        : " %s days without evapotranspiration were given the mean of their month."
                            .formatted(withoutEt),
                withoutRain == 0
                    ? ""
                    : withoutRain == 1
                        ? " 1 day without a figure for rain counts as dry."
                        : " %s days without a figure for rain count as dry."
                            .formatted(withoutRain));
    return new SeasonWeather(new DaysOfWeather(first, et, rain, lowest), record.typical(), origin);
  }

  private static double[] filled(int size) {
    double[] unknown = new double[size];
    Arrays.fill(unknown, Double.NaN);
    return unknown;
  }
}
