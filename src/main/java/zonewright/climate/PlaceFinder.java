package zonewright.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.formula.ReferenceTable;

/** Finds a place of published reference evapotranspiration by its name, its region or nearby. */
public final class PlaceFinder {
  /** The mean radius of the earth as the geodetic union IUGG gives it (from memory). */
  private static final double EARTH_KILOMETRES = 6371.0088;

  /** An international mile, by definition. */
  private static final double KILOMETRES_A_MILE = 1.609344;

  private static final ReferenceTable PLACES = Climate.PLACES;

  private PlaceFinder() {}

  /**
   * A place of the table Places.
   *
   * @param region the state or country it lies in
   * @param kilometres how far it is; not a number where nobody asked, or where it is a whole zone
   * @param origin where its figures come from and what they are worth
   */
  public record Found(String place, String region, double kilometres, String origin) {
    /** Returns how far it is, in kilometres and miles; nothing where that is not known. */
    public String distance() {
      return Double.isNaN(kilometres)
          ? ""
          : String.format(
              Locale.ROOT, "%,.0f km (%,.0f mi)", kilometres, kilometres / KILOMETRES_A_MILE);
    }
  }

  /** Returns the places that hold each of the words in their name or region, in table order. */
  public static List<Found> named(String words) {
    List<String> wanted = Stream.of(folded(words).split("\\s+")).toList();
    return IntStream.range(0, PLACES.size())
        .filter(
            row ->
                wanted.stream()
                    .allMatch(folded(name(row) + " " + PLACES.text(row, "Region"))::contains))
        .mapToObj(row -> found(row, Double.NaN))
        .toList();
  }

  /**
   * Returns the places by their distance, the nearest first. Zones of a map are not among them: a
   * zone has no one point, and which zone a site lies in only its map says.
   *
   * @param latitude degrees, north positive
   * @param longitude degrees, east positive
   */
  public static List<Found> nearest(double latitude, double longitude) {
    return IntStream.range(0, PLACES.size())
        .filter(row -> !PLACES.text(row, "Latitude").isBlank())
        .mapToObj(
            row ->
                found(
                    row,
                    kilometres(
                        latitude,
                        longitude,
                        Double.parseDouble(PLACES.text(row, "Latitude")),
                        Double.parseDouble(PLACES.text(row, "Longitude")))))
        .sorted(Comparator.comparingDouble(Found::kilometres))
        .toList();
  }

  private static Found found(int row, double kilometres) {
    return new Found(name(row), PLACES.text(row, "Region"), kilometres, PLACES.origin(row));
  }

  private static String name(int row) {
    return PLACES.keys().get(row);
  }

  private static String folded(String words) {
    return words.strip().toLowerCase(Locale.ROOT);
  }

  /**
   * Returns the distance along a great circle of a round earth, by the haversine formula; within
   * 0.6 % of that on the flattened earth.
   */
  static double kilometres(double latitude, double longitude, double otherLatitude, double other) {
    double first = Math.toRadians(latitude);
    double second = Math.toRadians(otherLatitude);
    double north = Math.sin((second - first) / 2);
    double east = Math.sin(Math.toRadians(other - longitude) / 2);
    double part = north * north + Math.cos(first) * Math.cos(second) * east * east;
    return 2 * EARTH_KILOMETRES * Math.asin(Math.min(1, Math.sqrt(part)));
  }
}
