package zonewright.balance;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * A year of days made from what months come to, for want of measured days. Reference
 * evapotranspiration goes along a smooth line whose mean over each month is that month's; rain
 * falls in alike showers at even distances. No dry and no wet year is in it.
 */
public final class TypicalYear {
  /** A year that is no leap year. */
  private static final int YEAR = 2001;

  private static final int MONTHS = 12;

  /** About so much falls in a shower, mm; common practice, no source. */
  private static final double SHOWER = 6;

  /** A month has no more showers than this. */
  private static final int MOST_SHOWERS = 15;

  private TypicalYear() {}

  /**
   * Returns the days.
   *
   * @param evapotranspiration reference evapotranspiration of each month, mm a day, not negative
   * @param rain rain of each month, mm, not negative
   */
  public static DaysOfWeather of(double[] evapotranspiration, double[] rain) {
    LocalDate first = LocalDate.of(YEAR, 1, 1);
    double[] unknown = new double[first.lengthOfYear()];
    Arrays.fill(unknown, Double.NaN);
    return new DaysOfWeather(first, smooth(evapotranspiration), showers(rain), unknown);
  }

  private static int length(int month) {
    return LocalDate.of(YEAR, month + 1, 1).lengthOfMonth();
  }

  /**
   * Straight lines from the middle of each month to the next; the values in the middles are those
   * that give the means. Where such a line would go below 0, the month's days are scaled instead.
   *
   * @see "Sheng and Zwiers, Climate Dynamics 14 (1998), for middles that keep monthly means (from
   *     memory)"
   */
  private static double[] smooth(double[] means) {
    double[][] matrix = new double[MONTHS][MONTHS + 1];
    for (int month = 0; month < MONTHS; month++) {
      for (int day = 0; day < length(month); day++) {
        double[] weights = weights(month, day);
        for (int node = 0; node < MONTHS; node++) {
          matrix[month][node] += weights[node] / length(month);
        }
      }
      matrix[month][MONTHS] = means[month];
    }
    double[] middles = solved(matrix);
    double[] days = new double[LocalDate.of(YEAR, 1, 1).lengthOfYear()];
    int at = 0;
    for (int month = 0; month < MONTHS; month++) {
      int from = at;
      double sum = 0;
      for (int day = 0; day < length(month); day++, at++) {
        double[] weights = weights(month, day);
        double value = 0;
        for (int node = 0; node < MONTHS; node++) {
          value += weights[node] * middles[node];
        }
        days[at] = Math.max(0, value);
        sum += days[at];
      }
      for (int day = from; day < at; day++) {
        days[day] = sum > 0 ? days[day] * means[month] * length(month) / sum : means[month];
      }
    }
    return days;
  }

  /** How much the middle of each month counts on a day. */
  private static double[] weights(int month, int day) {
    double[] weights = new double[MONTHS];
    double middle = length(month) / 2.0;
    double place = day + 0.5;
    int other = Math.floorMod(month + (place < middle ? -1 : 1), MONTHS);
    double apart = middle + length(other) / 2.0;
    double share = Math.abs(place - middle) / apart;
    weights[month] = 1 - share;
    weights[other] += share;
    return weights;
  }

  /** Solves by elimination; the greatest weight of each month is its own. */
  private static double[] solved(double[][] matrix) {
    for (int row = 0; row < MONTHS; row++) {
      for (int below = 0; below < MONTHS; below++) {
        if (below != row) {
          double times = matrix[below][row] / matrix[row][row];
          for (int column = row; column <= MONTHS; column++) {
            matrix[below][column] -= times * matrix[row][column];
          }
        }
      }
    }
    double[] values = new double[MONTHS];
    for (int row = 0; row < MONTHS; row++) {
      values[row] = matrix[row][MONTHS] / matrix[row][row];
    }
    return values;
  }

  private static double[] showers(double[] rain) {
    double[] days = new double[LocalDate.of(YEAR, 1, 1).lengthOfYear()];
    int from = 0;
    for (int month = 0; month < MONTHS; month++) {
      int count = (int) Math.max(1, Math.min(MOST_SHOWERS, Math.round(rain[month] / SHOWER)));
      for (int shower = 0; shower < count; shower++) {
        int day = (int) ((shower + 0.5) * length(month) / count);
        days[from + day] = rain[month] / count;
      }
      from += length(month);
    }
    return days;
  }
}
