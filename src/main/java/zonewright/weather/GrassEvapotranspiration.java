package zonewright.weather;

/**
 * Reference evapotranspiration of a short, well-watered grass, from one day or one hour of weather.
 *
 * <p>The columns of the sheet Weather hold the FAO-56 equations for mean days. They stand here a
 * second time because years of days need a plain loop, two published forms, hours, and a note for
 * each day of what was filled in; {@code EquationsTest} holds both to the last digits.
 */
final class GrassEvapotranspiration {
  private static final double ALBEDO_KEPT = 0.77;
  private static final double KELVIN = 273.16;
  private static final double LEAST_VAPOUR = 0.001;

  private GrassEvapotranspiration() {}

  /** Returns saturation vapour pressure in kPa at °C; FAO-56 equation 11. */
  static double saturation(double celsius) {
    return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
  }

  /** Returns the slope of saturation in kPa/°C at °C; FAO-56 equation 13. */
  static double slope(double celsius) {
    return 4098 * saturation(celsius) / ((celsius + 237.3) * (celsius + 237.3));
  }

  /** Returns the psychrometric constant in kPa/°C at metres; FAO-56 equations 7 and 8. */
  static double psychrometric(double elevation) {
    return 0.000665 * (101.3 * Math.pow((293 - 0.0065 * elevation) / 293, 5.26));
  }

  /** Returns wind brought from a height in metres to 2 m, in m/s; FAO-56 equation 47. */
  static double windAtTwoMetres(double wind, double height) {
    return height == 2 ? wind : wind * 4.87 / Math.log(67.8 * height - 5.42);
  }

  /** Returns the part of radiation above the air that a clear sky lets through; equation 37. */
  static double clearSky(double elevation) {
    return 0.75 + 0.00002 * elevation;
  }

  /**
   * Returns the evapotranspiration of a day, in mm; never negative.
   *
   * @param highest highest temperature, °C
   * @param lowest lowest temperature, °C
   * @param vapour actual vapour pressure, kPa
   * @param wind at 2 m, m/s
   * @param solar radiation that reached the ground, MJ/m²
   * @param clear radiation under a clear sky, MJ/m²
   * @param psychrometric kPa/°C
   * @see "FAO-56 equations 6, 9, 12, 38, 39 and 40 (verified), soil heat flux 0"
   */
  static double ofDay(
      Equation equation,
      double highest,
      double lowest,
      double vapour,
      double wind,
      double solar,
      double clear,
      double psychrometric) {
    double mean = (highest + lowest) / 2;
    double saturated = (saturation(highest) + saturation(lowest)) / 2;
    double blackBody =
        equation.stefanBoltzmann
            * ((Math.pow(highest + KELVIN, 4) + Math.pow(lowest + KELVIN, 4)) / 2);
    double net =
        ALBEDO_KEPT * solar
            - blackBody * emissivity(vapour) * cloudiness(clearness(equation, solar, clear));
    double air = Math.max(equation.leastWind, wind);
    double delta = slope(mean);
    double above =
        0.408 * delta * net + psychrometric * 900 / (mean + 273) * air * (saturated - vapour);
    return Math.max(0, above / (delta + psychrometric * (1 + 0.34 * air)));
  }

  /**
   * Returns the evapotranspiration of an hour, in mm; dew makes it a little negative.
   *
   * @param celsius mean temperature, °C
   * @param vapour actual vapour pressure, kPa
   * @param wind at 2 m, m/s
   * @param solar radiation that reached the ground in the hour, MJ/m²
   * @param clearness radiation against that of a clear sky, from 0 to 1; of the evening before at
   *     night
   * @param psychrometric kPa/°C
   * @see "FAO-56 equations 45, 46 and 53 (verified); the ASCE form from memory"
   */
  static double ofHour(
      Equation equation,
      double celsius,
      double vapour,
      double wind,
      double solar,
      double clearness,
      double psychrometric) {
    double blackBody = equation.stefanBoltzmann / 24 * Math.pow(celsius + KELVIN, 4);
    double net = ALBEDO_KEPT * solar - blackBody * emissivity(vapour) * cloudiness(clearness);
    boolean day = net > 0;
    double ground = (day ? 0.1 : 0.5) * net;
    double resistance = day ? equation.resistanceByDay : equation.resistanceByNight;
    double delta = slope(celsius);
    double above =
        0.408 * delta * (net - ground)
            + psychrometric * 37 / (celsius + 273) * wind * (saturation(celsius) - vapour);
    return above / (delta + psychrometric * (1 + resistance * wind));
  }

  /** Returns radiation against that of a clear sky, as far as the equation believes it. */
  static double clearness(Equation equation, double solar, double clear) {
    return clear > 0 ? Math.max(equation.leastClearness, Math.min(solar / clear, 1)) : 1;
  }

  /**
   * Returns the evapotranspiration of a day from temperatures alone, in mm; 0 where the mean is
   * -17.8 °C or less.
   *
   * @param above radiation above the air, MJ/m²
   * @see "FAO-56 equation 52, radiation as depth of water by equation 20 (verified)"
   */
  static double hargreaves(double highest, double lowest, double above) {
    double mean = (highest + lowest) / 2;
    return 0.0023 * Math.max(0, mean + 17.8) * Math.sqrt(highest - lowest) * 0.408 * above;
  }

  private static double emissivity(double vapour) {
    return 0.34 - 0.14 * Math.sqrt(Math.max(LEAST_VAPOUR, vapour));
  }

  private static double cloudiness(double clearness) {
    return 1.35 * clearness - 0.35;
  }
}
