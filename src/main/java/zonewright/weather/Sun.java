package zonewright.weather;

/**
 * The sun over a place: radiation above the air, length of the day, height in the sky.
 *
 * @see "FAO Irrigation and Drainage Paper 56 (1998), equations 21 to 34 (verified)"
 */
final class Sun {
  private static final double SOLAR_CONSTANT = 0.0820;

  private final double latitude;
  private final double declination;
  private final double distance;
  private final double sunset;
  private final double correction;

  /**
   * Looks at one day.
   *
   * @param latitude degrees, north positive
   * @param dayOfYear from 1 to 366
   */
  Sun(double latitude, int dayOfYear) {
    this.latitude = Math.toRadians(latitude);
    double angle = 2 * Math.PI * dayOfYear / 365;
    declination = 0.409 * Math.sin(angle - 1.39);
    distance = 1 + 0.033 * Math.cos(angle);
    // within a polar circle the sun may not set, or not rise
    double cosine = -1 * Math.tan(this.latitude) * Math.tan(declination);
    sunset = Math.acos(Math.max(-1, Math.min(1, cosine)));
    double season = 2 * Math.PI * (dayOfYear - 81) / 364;
    correction =
        0.1645 * Math.sin(2 * season) - 0.1255 * Math.cos(season) - 0.025 * Math.sin(season);
  }

  /** Returns the radiation of the day above the air, in MJ/m². */
  double radiation() {
    return 24
        * 60
        / Math.PI
        * SOLAR_CONSTANT
        * distance
        * (sunset * Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  }

  /** Returns the hours from sunrise to sunset. */
  double daylight() {
    return 24 * sunset / Math.PI;
  }

  /**
   * Returns the radiation of an hour above the air, in MJ/m².
   *
   * @param middle the angle of the sun in the middle of the hour
   */
  double radiationOfHour(double middle) {
    double from = within(middle - Math.PI / 24);
    double to = within(middle + Math.PI / 24);
    return Math.max(
        0,
        12
            * 60
            / Math.PI
            * SOLAR_CONSTANT
            * distance
            * ((to - from) * Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * (Math.sin(to) - Math.sin(from))));
  }

  private double within(double angle) {
    return Math.max(-sunset, Math.min(sunset, angle));
  }

  /**
   * Returns the angle of the sun from noon, in radians, before noon negative.
   *
   * @param clock hours of the clock, from 0 to 24
   * @param ahead how far the clock is ahead of Greenwich, in hours
   * @param longitude degrees, east positive
   */
  double angle(double clock, double ahead, double longitude) {
    double solar = clock + (longitude / 15 - ahead) + correction - 12;
    double round = solar - 24 * Math.floor((solar + 12) / 24);
    return Math.PI / 12 * round;
  }

  /** Returns how high the sun stands, in radians; negative below the horizon. */
  double height(double angle) {
    return Math.asin(
        Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.cos(angle));
  }
}
