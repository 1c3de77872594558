package zonewright.balance;

/**
 * What days of a zone come to. Depths in mm; those of the scheduled ground are of the part of the
 * area that the schedule is made for, those of the mean of the whole.
 */
public final class RunTotals {
  private int days;
  private int daysBelow;
  private double minutes;
  private double need;
  private double taken;
  private double takenMean;
  private double takenDrier;
  private double reaching;
  private double runOff;
  private double drained;
  private double scheduledGiven;
  private double scheduledLost;
  private double rain;
  private double rainDrained;

  /** Adds a day. */
  void add(ZoneRun run, int day) {
    double part = run.application().scheduled();
    WaterGiven given = run.given();
    days++;
    daysBelow += run.scheduled().belowAllowed(day) ? 1 : 0;
    minutes += given.minutes(day);
    need += run.scheduled().need(day);
    taken += run.scheduled().taken(day);
    takenMean += run.mean().taken(day);
    takenDrier += run.drier().taken(day);
    reaching += given.reaching(day);
    runOff += given.runOff(day);
    drained += run.mean().drainedIrrigation(day);
    scheduledGiven += given.reaching(day) * part;
    scheduledLost += given.runOff(day) * part + run.scheduled().drainedIrrigation(day);
    rain += run.mean().rain(day);
    rainDrained += run.mean().drainedRain(day);
  }

  /** Adds what other days come to. */
  void add(RunTotals other) {
    days += other.days;
    daysBelow += other.daysBelow;
    minutes += other.minutes;
    need += other.need;
    taken += other.taken;
    takenMean += other.takenMean;
    takenDrier += other.takenDrier;
    reaching += other.reaching;
    runOff += other.runOff;
    drained += other.drained;
    scheduledGiven += other.scheduledGiven;
    scheduledLost += other.scheduledLost;
    rain += other.rain;
    rainDrained += other.rainDrained;
  }

  private static double part(double of, double whole, double none) {
    return whole > 0 ? of / whole : none;
  }

  /** Returns how many days there are. */
  public int days() {
    return days;
  }

  /** Returns on how many days the scheduled ground was below the allowed depletion. */
  public int daysBelow() {
    return daysBelow;
  }

  /** Returns the minutes the valve ran. */
  public double minutes() {
    return minutes;
  }

  /** Returns what plants needed, mm. */
  public double need() {
    return need;
  }

  /** Returns what they lacked on the scheduled ground, mm. */
  public double deficit() {
    return need - taken;
  }

  /** Returns the part of the need that was met on the scheduled ground, 0 to 1; 1 for no need. */
  public double adequacy() {
    return part(taken, need, 1);
  }

  /** Returns the part of the need that was met on the mean of the area. */
  public double adequacyOfMean() {
    return part(takenMean, need, 1);
  }

  /** Returns the part of the need that was met on the drier quarter. */
  public double adequacyOfDrier() {
    return part(takenDrier, need, 1);
  }

  /** Returns the mean depth of irrigation that came to the ground, mm. */
  public double reaching() {
    return reaching;
  }

  /**
   * Returns the part of the irrigation that ran off or went below the roots of the scheduled
   * ground, 0 to 1: what the schedule wastes, unevenness apart.
   */
  public double excess() {
    return part(scheduledLost, scheduledGiven, 0);
  }

  /** Returns the part of the irrigation that ran off. */
  public double runningOff() {
    return part(runOff, reaching, 0);
  }

  /**
   * Returns the part that went below the roots, over the mean of the area, with unevenness in it.
   */
  public double belowRoots() {
    return part(drained, reaching, 0);
  }

  /** Returns the rain that soaked in, mm. */
  public double rain() {
    return rain;
  }

  /** Returns the part of the rain that soaked in and went below the roots. */
  public double rainBelowRoots() {
    return part(rainDrained, rain, 0);
  }
}
