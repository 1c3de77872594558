package zonewright.uncertainty;

/**
 * What a measurement would narrow.
 *
 * @param zones how many zones have a range that it narrows
 * @param least the least water of a year by what it makes known alone
 * @param greatest the greatest
 * @param waterShare what lies between them, as a part of the water of the design
 * @param cycles by how many cycles it moves the zone it moves most
 * @param cycleShare by how much it moves the cycles of all zones, as a part of them
 */
public record Narrowing(
    Measurement measurement,
    int zones,
    double least,
    double greatest,
    double waterShare,
    int cycles,
    double cycleShare) {
  /** Returns what measurements are ranked by: the greater of the two shares. */
  public double rank() {
    return Math.max(waterShare, cycleShare);
  }

  /** Returns how long it takes for all zones it narrows, in minutes. */
  public int minutes() {
    return measurement.minutes() * (measurement.ofSite() ? 1 : zones);
  }
}
