package zonewright.balance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What drives a schedule through the days: the percent, and what keeps all water off. It knows only
 * days that are over, as a controller does at night.
 *
 * @param setting where the percent comes from
 * @param pause no watering for days after rain, if the controller has such a pause
 * @param sensor a rain sensor, if there is one
 * @param coldest lowest temperature in °C at which it waters, if that is watched
 * @param firstMonth the month in which watering begins, January 0
 * @param lastMonth the month with which it ends; before the first, it goes over the new year
 */
public record WateringRule(
    Setting setting,
    Optional<RainPause> pause,
    Optional<RainSensor> sensor,
    OptionalDouble coldest,
    int firstMonth,
    int lastMonth) {

  /** A half goes up, also one that lacks the last bits. */
  private static final double HALF = 0.500000001;

  /** Where the percent of the baseline comes from; 1 is 100 percent. */
  public sealed interface Setting {}

  /** The same percent always. */
  public record Fixed(double percent) implements Setting {}

  /** A percent for each month, January first. */
  public record Monthly(List<Double> percents) implements Setting {
    /** Keeps a copy. */
    public Monthly {
      percents = List.copyOf(percents);
    }
  }

  /**
   * A percent for each day: mean reference evapotranspiration of the days before, as a part of the
   * one that the baseline is made for.
   *
   * @param reference the daily evapotranspiration of 100 percent, mm, above 0
   * @param step the percent goes in steps of this, above 0
   * @param least never less than this
   * @param most never more than this
   * @param days of how many days before the mean is taken, at least 1
   */
  public record Daily(double reference, double step, double least, double most, int days)
      implements Setting {}

  /**
   * No watering in the nights after a day with so much rain.
   *
   * @param depth mm of rain in a day from which it counts
   * @param days how many nights
   */
  public record RainPause(double depth, int days) {}

  /**
   * A sensor that swells with rain and dries: full, it stops all water until it is dry again.
   *
   * @param depth mm of rain that fill it
   * @param dryingDays days a full one takes to dry
   */
  public record RainSensor(double depth, double dryingDays) {}

  /** Returns a rule without anything that stops it, all year. */
  public static WateringRule of(Setting setting) {
    return new WateringRule(
        setting, Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0, 11);
  }

  /** Returns the same with another setting. */
  public WateringRule with(Setting other) {
    return new WateringRule(other, pause, sensor, coldest, firstMonth, lastMonth);
  }

  /** Says whether it waters in a month, January 0. */
  public boolean watersIn(int month) {
    return firstMonth <= lastMonth
        ? firstMonth <= month && month <= lastMonth
        : month >= firstMonth || month <= lastMonth;
  }

  /** Returns the percent of the night at the beginning of each day; 0 where no water may run. */
  public double[] percents(DaysOfWeather days) {
    double[] percents = new double[days.size()];
    int paused = 0;
    double wet = 0;
    boolean stopped = false;
    for (int day = 0; day < percents.length; day++) {
      boolean cold = coldest.isPresent() && days.lowest(day) < coldest.getAsDouble();
      if (watersIn(days.month(day)) && paused == 0 && !stopped && !cold) {
        percents[day] = percent(days, day);
      }
      paused = Math.max(0, paused - 1);
      double fell = days.rain(day);
      if (pause.isPresent() && fell >= pause.get().depth()) {
        paused = pause.get().days();
      }
      if (sensor.isPresent()) {
        RainSensor swelling = sensor.get();
        wet = Math.min(swelling.depth(), wet + fell);
        stopped |= wet >= swelling.depth();
        if (fell == 0) {
          wet = Math.max(0, wet - swelling.depth() / swelling.dryingDays());
        }
        stopped &= wet > 1e-9;
      }
    }
    return percents;
  }

  private double percent(DaysOfWeather days, int day) {
    if (setting instanceof Fixed fixed) {
      return fixed.percent();
    }
    if (setting instanceof Monthly monthly) {
      return monthly.percents().get(days.month(day));
    }
    Daily daily = (Daily) setting;
    int from = Math.max(0, day - daily.days());
    double sum = 0;
    for (int before = from; before < day; before++) {
      sum += days.evapotranspiration(before);
    }
    double mean = day == 0 ? days.evapotranspiration(0) : sum / (day - from);
    double stepped = daily.step() * Math.floor(mean / daily.reference() / daily.step() + HALF);
    return Math.max(daily.least(), Math.min(daily.most(), stepped));
  }
}
