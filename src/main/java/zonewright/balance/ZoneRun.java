package zonewright.balance;

/**
 * A zone followed day by day under a schedule: its mean, its scheduled ground, its drier quarter.
 */
public final class ZoneRun {
  private static final int WEEK = 7;

  private final Application application;
  private final DaysOfWeather days;
  private final WaterGiven given;
  private final SoilDays mean;
  private final SoilDays scheduled;
  private final SoilDays drier;

  /**
   * Follows the days.
   *
   * @param percents the percent of each day, as a rule gives it
   * @param more what they are multiplied with, 1 for nothing
   * @param again whether the days are a year that repeats: it then begins as it ends; else with the
   *     soil at field capacity
   */
  public ZoneRun(
      RootZone soil,
      Application application,
      Baseline baseline,
      DaysOfWeather days,
      double[] percents,
      double more,
      boolean again) {
    this.application = application;
    this.days = days;
    given = new WaterGiven(application, baseline, days, percents, more);
    double[] needs = soil.needs(days);
    mean = followed(soil, needs, 1, again);
    scheduled = followed(soil, needs, application.scheduled(), again);
    drier = followed(soil, needs, application.drierQuarter(), again);
  }

  private SoilDays followed(RootZone soil, double[] needs, double part, boolean again) {
    double[] irrigation = given.soakingIn(part);
    double before = again ? new SoilDays(soil, days, needs, irrigation, 0).after() : 0;
    return new SoilDays(soil, days, needs, irrigation, before);
  }

  /** Returns how its water comes to the ground. */
  public Application application() {
    return application;
  }

  /** Returns the days. */
  public DaysOfWeather days() {
    return days;
  }

  /** Returns what the valve gave. */
  public WaterGiven given() {
    return given;
  }

  /** Returns the balance of ground that gets the mean. */
  public SoilDays mean() {
    return mean;
  }

  /** Returns the balance of the ground that the schedule is made for. */
  public SoilDays scheduled() {
    return scheduled;
  }

  /** Returns the balance of the drier quarter. */
  public SoilDays drier() {
    return drier;
  }

  /**
   * Returns what each month of each year comes to, the first year's January first; those of months
   * outside the season are empty.
   */
  public RunTotals[] months(WateringRule rule) {
    RunTotals[] months = new RunTotals[12 * days.yearCount()];
    for (int month = 0; month < months.length; month++) {
      months[month] = new RunTotals();
    }
    for (int day = 0; day < days.size(); day++) {
      if (rule.watersIn(days.month(day))) {
        months[12 * (days.year(day) - days.year(0)) + days.month(day)].add(this, day);
      }
    }
    return months;
  }

  /** Returns what several come to together. */
  public static RunTotals sum(RunTotals... all) {
    RunTotals sum = new RunTotals();
    for (RunTotals each : all) {
      sum.add(each);
    }
    return sum;
  }

  /** Returns the first of the seven days in a row in which plants lacked most; -1 for none. */
  public int worstWeek(WateringRule rule) {
    double most = 1e-6;
    double lacking = 0;
    int worst = -1;
    for (int day = 0; day < days.size(); day++) {
      lacking += lack(rule, day) - (day >= WEEK ? lack(rule, day - WEEK) : 0);
      if (day >= WEEK - 1 && lacking > most) {
        most = lacking;
        worst = day - WEEK + 1;
      }
    }
    return worst;
  }

  private double lack(WateringRule rule, int day) {
    return rule.watersIn(days.month(day)) ? scheduled.need(day) - scheduled.taken(day) : 0;
  }

  /** Returns what a week comes to. */
  public RunTotals week(int from) {
    RunTotals totals = new RunTotals();
    for (int day = from; day < from + WEEK; day++) {
      totals.add(this, day);
    }
    return totals;
  }
}
