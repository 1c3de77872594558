package zonewright.uncertainty;

import java.util.Arrays;

/**
 * What is open as long as a measurement is not made, all else as the design has it: the water of
 * the site in a year, and the cycles of each zone.
 */
final class Narrowed {
  private final Spans water;
  private final Spans cycles;

  /** Begins with what the design has. */
  Narrowed(double water, double[] cycles) {
    this.water = new Spans(new double[][] {{water}});
    this.cycles = new Spans(new double[][] {cycles});
  }

  /** Takes in what they come to in another design. */
  void take(double itsWater, double[] itsCycles) {
    water.take(0, 0, itsWater);
    for (int zone = 0; zone < itsCycles.length; zone++) {
      cycles.take(0, zone, itsCycles[zone]);
    }
  }

  /** Takes in what one input alone does to them. */
  void take(Profile ofSite, Profile ofZones) {
    take(ofSite.least[0], ofZones.least);
    take(ofSite.greatest[0], ofZones.greatest);
  }

  double leastWater() {
    return water.least[0][0];
  }

  double mostWater() {
    return water.greatest[0][0];
  }

  /** Returns by how many cycles a zone moves; none where it has none. */
  double moved(int zone) {
    double width = cycles.greatest[0][zone] - cycles.least[0][zone];
    return Double.isNaN(width) ? 0 : width;
  }

  /** Returns how many cycles all zones have in the design. */
  double allCycles() {
    return Arrays.stream(cycles.held[0]).filter(each -> !Double.isNaN(each)).sum();
  }
}
