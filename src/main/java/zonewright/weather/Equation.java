package zonewright.weather;

/**
 * Which published form of the Penman-Monteith equation for a short, well-watered grass. For days
 * they differ in the last digits of two constants and in how far a cloudy sky is believed; for
 * hours in the resistance of the grass by day and by night.
 */
public enum Equation {
  /**
   * ASCE-EWRI (2005), The ASCE Standardized Reference Evapotranspiration Equation, short reference
   * (constants from memory, results held to the output of another program).
   */
  ASCE("ASCE standardized, short reference", 4.901e-9, 0.3, 0, 0.24, 0.96),
  /** FAO Irrigation and Drainage Paper 56 (1998), equations 6 and 53 (verified). */
  FAO("FAO-56 Penman-Monteith", 4.903e-9, 0, 0.5, 0.34, 0.34);

  private final String words;
  final double stefanBoltzmann;
  final double leastClearness;
  final double leastWind;
  final double resistanceByDay;
  final double resistanceByNight;

  /**
   * Makes a form.
   *
   * @param stefanBoltzmann in MJ/(m² K⁴ day)
   * @param leastClearness the least part of clear-sky radiation that is believed
   * @param leastWind the least wind in the equation for days, in m/s
   * @param resistanceByDay what wind is multiplied by below the line in an hour by day, in s/m
   * @param resistanceByNight the same by night
   */
  Equation(
      String words,
      double stefanBoltzmann,
      double leastClearness,
      double leastWind,
      double resistanceByDay,
      double resistanceByNight) {
    this.words = words;
    this.stefanBoltzmann = stefanBoltzmann;
    this.leastClearness = leastClearness;
    this.leastWind = leastWind;
    this.resistanceByDay = resistanceByDay;
    this.resistanceByNight = resistanceByNight;
  }

  /** Returns what the trade calls it. */
  public String words() {
    return words;
  }
}
