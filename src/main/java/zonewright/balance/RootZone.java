package zonewright.balance;

import java.util.List;

/**
 * The rooted soil of a zone and what grows in it.
 *
 * @param totalAvailable water held between field capacity and wilting point, mm, above 0
 * @param allowedShare the part of it that may be used before plants take less, above 0 and below 1
 * @param coefficients what plants take of reference evapotranspiration in each month, January first
 * @see "FAO Irrigation and Drainage Paper 56 (1998), equations 82 and 83"
 */
public record RootZone(double totalAvailable, double allowedShare, List<Double> coefficients) {
  /** Keeps a copy and checks that there is soil. */
  public RootZone {
    coefficients = List.copyOf(coefficients);
    if (!(totalAvailable > 0 && allowedShare > 0 && allowedShare < 1)) {
      throw new IllegalArgumentException(
          "a root zone holds water, of which a part may be used: %s mm, %s"
              .formatted(totalAvailable, allowedShare));
    }
    if (coefficients.size() != 12) {
      throw new IllegalArgumentException("a coefficient for each month");
    }
  }

  /** Returns the depletion in mm from which plants take less than they need. */
  public double readilyAvailable() {
    return allowedShare * totalAvailable;
  }

  /** Returns what the plants need on each day, mm. */
  public double[] needs(DaysOfWeather days) {
    double[] byMonth = coefficients.stream().mapToDouble(Double::doubleValue).toArray();
    double[] needs = new double[days.size()];
    for (int day = 0; day < needs.length; day++) {
      needs[day] = byMonth[days.month(day)] * days.evapotranspiration(day);
    }
    return needs;
  }
}
