package zonewright.benchmark;

import static zonewright.benchmark.PlainLoop.atMost;
import static zonewright.benchmark.PlainLoop.or;
import static zonewright.benchmark.PlainLoop.over;
import static zonewright.benchmark.PlainLoop.up;

import java.util.Arrays;
import java.util.Map;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.MonthlySchedule;

/** The months of the zones by hand: one loop a month over arrays of doubles. */
final class PlainMonths {
  private static final int MONTHS = 12;

  /** Minutes that the usual controller runs a station at most. */
  static final double LONGEST_RUN = 240;

  private final int count;
  private final double[] et = new double[MONTHS];
  private final double[] rain = new double[MONTHS];
  private final double[] days = new double[MONTHS];
  private final double[][] typed;
  private final int shown;
  private final Map<Column, double[]> results;

  PlainMonths(Book book, Map<Column, double[]> results) {
    this.results = results;
    shown = (int) book.number(MonthlySchedule.MONTH_NUMBER.reference(), 0) - 1;
    count = book.rows(Sheets.ZONES);
    typed = new double[MONTHS][count];
    for (int month = 0; month < MONTHS; month++) {
      et[month] = book.number(Climate.DAILY_REFERENCE_ET.reference(), month);
      rain[month] = book.number(Rain.DAILY_EFFECTIVE.reference(), month);
      days[month] = book.number(Climate.DAYS.reference(), month);
      Column coefficient = MonthlySchedule.COEFFICIENTS.get(month);
      for (int row = 0; row < count; row++) {
        boolean blank = book.entry(coefficient.reference(), row) instanceof Entry.Blank;
        typed[month][row] = blank ? Double.NaN : book.number(coefficient.reference(), row);
      }
    }
  }

  private double[] out(Column column) {
    return results.computeIfAbsent(column, any -> new double[count]);
  }

  /** What the months ask for, and the month that asks most. */
  void needs() {
    double[] year = out(Plants.LANDSCAPE_COEFFICIENT);
    double[] greatest = out(MonthlySchedule.GREATEST_NEED);
    double[] number = out(MonthlySchedule.OWN_PEAK_NUMBER);
    double[] own = out(MonthlySchedule.OWN_PEAK);
    Arrays.fill(greatest, 0);
    for (int month = 0; month < MONTHS; month++) {
      double[] coefficient = out(MonthlySchedule.COEFFICIENTS.get(month));
      double[] need = out(MonthlySchedule.NET_DEMANDS.get(month));
      for (int i = 0; i < count; i++) {
        coefficient[i] = or(typed[month][i], year[i]);
        need[i] = Math.max(0, et[month] * coefficient[i] - rain[month]);
        greatest[i] = Math.max(greatest[i], need[i]);
      }
    }
    Arrays.fill(number, Double.NaN);
    for (int month = 0; month < MONTHS; month++) {
      double[] need = out(MonthlySchedule.NET_DEMANDS.get(month));
      for (int i = 0; i < count; i++) {
        if (greatest[i] > 0 && need[i] / greatest[i] + 1e-9 >= 1) {
          number[i] = month + 1;
        }
      }
    }
    for (int i = 0; i < count; i++) {
      own[i] = number[i] - 1;
    }
  }

  void run() {
    double[] perYear = out(MonthlyVolume.YEAR);
    Arrays.fill(perYear, 0);
    for (int month = 0; month < MONTHS; month++) {
      schedule(month);
      double[] volume = out(MonthlyVolume.VOLUMES.get(month));
      for (int i = 0; i < count; i++) {
        perYear[i] += volume[i];
      }
    }
    System.arraycopy(perYear, 0, out(ZoneBudget.VOLUME_PER_YEAR), 0, count);
    shown();
  }

  private void schedule(int month) {
    double[] need = out(MonthlySchedule.NET_DEMANDS.get(month));
    double[] net = out(Demand.NET_DEMAND);
    double[] perWeek = out(ZoneBudget.VOLUME_PER_WEEK);
    double[] percent = out(MonthlySchedule.PERCENTS.get(month));
    double[] volume = out(MonthlyVolume.VOLUMES.get(month));
    for (int i = 0; i < count; i++) {
      percent[i] = atMost(net[i], 0) ? Double.NaN : over(need[i], net[i]);
      volume[i] = perWeek[i] / 7 * days[month] * percent[i];
    }
  }

  /** The schedule of the month shown. */
  private void shown() {
    double[] week = out(Demand.RUN_TIME_PER_WEEK);
    double[] wateringDays = out(Demand.WATERING_DAYS);
    double[] rate = out(Emitters.WETTED_RATE);
    double[] intake = out(Soils.INTAKE_RATE);
    double[] longest = out(CycleAndSoak.LONGEST_CYCLE);
    double[] percents = out(MonthlySchedule.PERCENTS.get(shown));
    double[] percent = out(MonthlySchedule.PERCENT);
    double[] run = out(MonthlySchedule.RUN_TIME);
    double[] cycles = out(MonthlySchedule.CYCLES);
    double[] minutes = out(MonthlySchedule.CYCLE_MINUTES);
    double[] soak = out(MonthlySchedule.SOAK);
    System.arraycopy(percents, 0, percent, 0, count);
    System.arraycopy(wateringDays, 0, out(MonthlySchedule.DAYS), 0, count);
    System.arraycopy(
        out(MonthlyVolume.VOLUMES.get(shown)), 0, out(MonthlyVolume.OF_THE_MONTH), 0, count);
    for (int i = 0; i < count; i++) {
      run[i] = up(over(week[i] * percent[i], wateringDays[i]));
      boolean atOnce = atMost(rate[i], intake[i]);
      double parts =
          atOnce
              ? Math.max(1, up(run[i] / LONGEST_RUN))
              : longest[i] < 1 ? Double.NaN : up(run[i] / Math.min(longest[i], LONGEST_RUN));
      cycles[i] = Double.isNaN(run[i]) ? Double.NaN : run[i] > 0 ? parts : 0;
      minutes[i] = run[i] > 0 ? up(over(run[i], cycles[i])) : Double.NaN;
      soak[i] =
          cycles[i] > 1
              ? Math.max(0, up((rate[i] - intake[i]) * minutes[i] / intake[i]))
              : Double.NaN;
    }
  }
}
