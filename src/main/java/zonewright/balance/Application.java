package zonewright.balance;

/**
 * How a zone's water comes to the ground. Rates in mm an hour, depths in mm.
 *
 * @param rate mean precipitation rate over the area
 * @param wettedRate rate where the water falls, by which it runs off
 * @param intakeRate steady rate at which the soil takes water in
 * @param surfaceStorage depth that may stand before it runs off
 * @param reaching part of the water that reaches the roots' ground at all, 0 to 1; what an
 *     efficiency leaves, 1 where unevenness is reckoned by itself
 * @param drierQuarter what the drier quarter of the area gets as a part of the mean, 0 to 1
 * @param scheduled what the part of the area gets that the schedule is made for, as a part of the
 *     mean: one divided by the run-time multiplier
 * @param flow litres a minute while it runs
 */
public record Application(
    double rate,
    double wettedRate,
    double intakeRate,
    double surfaceStorage,
    double reaching,
    double drierQuarter,
    double scheduled,
    double flow) {

  /** Returns the mean depth that comes to the ground in a run of so many minutes, mm. */
  public double depth(double minutes) {
    return rate * reaching * minutes / 60;
  }

  /**
   * Returns the part of a run's water that runs off: what stands higher than the surface holds.
   *
   * @param minutes length of the run, on ground that had soaked
   */
  public double runningOff(double minutes) {
    double over = (wettedRate - intakeRate) * minutes / 60 - surfaceStorage;
    return over < 1e-9 ? 0 : over / (wettedRate * minutes / 60);
  }
}
