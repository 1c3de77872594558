package zonewright.weather;

/**
 * Where weather was measured. What is not known is not-a-number.
 *
 * @param name what the place is called; may be empty
 * @param latitude degrees, north positive, from -90 to 90
 * @param longitude degrees, east positive, from -180 to 180
 * @param elevation metres above the sea
 * @param windHeight metres above ground at which the wind was measured
 * @param timeZone hours its clock is ahead of Greenwich
 */
public record StationSite(
    String name,
    double latitude,
    double longitude,
    double elevation,
    double windHeight,
    double timeZone) {
  /** A place of which nothing is known. */
  public static final StationSite UNKNOWN =
      new StationSite("", Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  /** Returns this place with what another says of it; what the other does not say stays. */
  public StationSite with(StationSite said) {
    return new StationSite(
        said.name.isEmpty() ? name : said.name,
        known(said.latitude, latitude),
        known(said.longitude, longitude),
        known(said.elevation, elevation),
        known(said.windHeight, windHeight),
        known(said.timeZone, timeZone));
  }

  private static double known(double first, double otherwise) {
    return Double.isNaN(first) ? otherwise : first;
  }
}
