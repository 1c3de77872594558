package zonewright.uncertainty;

/**
 * What is open as long as a measurement is not made, all else as the design has it.
 *
 * @param leastWater the least water of the site in a year
 * @param mostWater the most
 * @param fewestCycles the fewest cycles of each zone
 * @param mostCycles the most
 */
record Narrowed(
    double leastWater, double mostWater, double[] fewestCycles, double[] mostCycles) {
  /** Returns by how many cycles it moves a zone; none where it has none. */
  double cycles(int zone) {
    double width = mostCycles[zone] - fewestCycles[zone];
    return Double.isNaN(width) ? 0 : width;
  }
}
