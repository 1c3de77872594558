package zonewright.balance;

/** What a zone's valve gives on each day under a schedule: minutes, and depths of the mean. */
public final class WaterGiven {
  private final double[] minutes;
  private final double[] reaching;
  private final double[] runOff;

  /**
   * Lets a schedule run.
   *
   * @param percents the percent of each day, 1 for what is keyed in
   * @param more what the percents are multiplied with for this zone, 1 for nothing
   */
  public WaterGiven(
      Application application,
      Baseline baseline,
      DaysOfWeather days,
      double[] percents,
      double more) {
    minutes = new double[days.size()];
    reaching = new double[days.size()];
    runOff = new double[days.size()];
    for (int day = 0; day < minutes.length; day++) {
      if (percents[day] > 0) {
        for (double cycle : baseline.cycles(days, day, percents[day] * more)) {
          double depth = application.depth(cycle);
          minutes[day] += cycle;
          reaching[day] += depth;
          runOff[day] += depth * application.runningOff(cycle);
        }
      }
    }
  }

  /** Returns the minutes of a day. */
  public double minutes(int day) {
    return minutes[day];
  }

  /** Returns the mean depth that comes to the ground on a day, mm. */
  public double reaching(int day) {
    return reaching[day];
  }

  /** Returns the part of it that runs off, mm. */
  public double runOff(int day) {
    return runOff[day];
  }

  /**
   * Returns what soaks in on each day where the ground gets a part of the mean, mm.
   *
   * @param part such as the uniformity of the drier quarter
   */
  public double[] soakingIn(double part) {
    double[] depths = new double[minutes.length];
    for (int day = 0; day < depths.length; day++) {
      depths[day] = (reaching[day] - runOff[day]) * part;
    }
    return depths;
  }
}
