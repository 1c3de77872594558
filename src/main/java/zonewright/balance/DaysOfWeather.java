package zonewright.balance;

import java.time.LocalDate;

/** Days in a row, with what falls and what the air asks for on each. */
public final class DaysOfWeather {
  private final int first;
  private final double[] evapotranspiration;
  private final double[] rain;
  private final double[] lowest;
  private final int[] months;
  private final int[] daysOfMonth;
  private final int[] years;

  /**
   * Takes days in a row.
   *
   * @param first the first day
   * @param evapotranspiration reference evapotranspiration of each day in mm, not negative
   * @param rain rain of each day in mm, not negative
   * @param lowest lowest temperature of each day in °C; not-a-number where it is not known
   */
  public DaysOfWeather(
      LocalDate first, double[] evapotranspiration, double[] rain, double[] lowest) {
    this.first = (int) first.toEpochDay();
    this.evapotranspiration = evapotranspiration.clone();
    this.rain = rain.clone();
    this.lowest = lowest.clone();
    int size = evapotranspiration.length;
    months = new int[size];
    daysOfMonth = new int[size];
    years = new int[size];
    for (int day = 0; day < size; day++) {
      LocalDate date = first.plusDays(day);
      months[day] = date.getMonthValue() - 1;
      daysOfMonth[day] = date.getDayOfMonth();
      years[day] = date.getYear();
    }
  }

  /** Returns how many days there are. */
  public int size() {
    return evapotranspiration.length;
  }

  /** Returns the date of a day, counted from 0. */
  public LocalDate date(int day) {
    return LocalDate.ofEpochDay(first + day);
  }

  /** Returns a day's number since the beginning of 1970. */
  public int dayNumber(int day) {
    return first + day;
  }

  /** Returns the month of a day, January 0. */
  public int month(int day) {
    return months[day];
  }

  /** Returns the day of the month, from 1; of the day before the first too. */
  public int dayOfMonth(int day) {
    return day < 0 ? date(day).getDayOfMonth() : daysOfMonth[day];
  }

  /** Returns the year of a day. */
  public int year(int day) {
    return years[day];
  }

  /** Returns the weekday of a day, Monday 0. */
  public int weekday(int day) {
    return Math.floorMod(first + day + 3, 7);
  }

  /** Returns reference evapotranspiration of a day in mm. */
  public double evapotranspiration(int day) {
    return evapotranspiration[day];
  }

  /** Returns rain of a day in mm. */
  public double rain(int day) {
    return rain[day];
  }

  /** Returns the lowest temperature of a day in °C; not-a-number where it is not known. */
  public double lowest(int day) {
    return lowest[day];
  }

  /** Returns how many years, whole or in part, the days lie in. */
  public int yearCount() {
    return size() == 0 ? 0 : year(size() - 1) - year(0) + 1;
  }
}
