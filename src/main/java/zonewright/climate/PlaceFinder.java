package zonewright.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.formula.ReferenceTable;

/**
 * Finds a place by its name, its region or nearby: places of published reference evapotranspiration
 * first, then those of which only the weather was read.
 */
public final class PlaceFinder {
  /** The mean radius of the earth as the geodetic union IUGG gives it (from memory). */
  private static final double EARTH_KILOMETRES = 6371.0088;

  /** An international mile, by definition. */
  private static final double KILOMETRES_A_MILE = 1.609344;

  /** Coordinates to a tenth of a degree miss the town by up to some 7 km. */
  private static final double PUBLISHED_LEAD_KM = 10;

  private static final ReferenceTable PUBLISHED = Climate.PLACES;

  private PlaceFinder() {}

  /**
   * A place whose reference evapotranspiration is known.
   *
   * @param region the state or country it lies in
   * @param kilometres how far it is; not a number where nobody asked, or where it is a whole zone
   * @param origin where its figures come from and what they are worth
   * @param weather the weather they are worked out from; none where they are published
   */
  public record Found(
      String place,
      String region,
      double kilometres,
      String origin,
      Optional<MonthlyWeather> weather) {
    /** Returns how its months come about, in a word or two. */
    public String kind() {
      return weather.isPresent() ? "worked out" : "published";
    }

    /** Returns how far it is, in kilometres and miles; nothing where that is not known. */
    public String distance() {
      return Double.isNaN(kilometres)
          ? ""
          : String.format(
              Locale.ROOT, "%,.0f km (%,.0f mi)", kilometres, kilometres / KILOMETRES_A_MILE);
    }

    private Found at(double distance) {
      return new Found(place, region, distance, origin, weather);
    }
  }

  /** Returns the places that hold each of the words in their name or region, published first. */
  public static List<Found> named(String words) {
    List<String> wanted = Stream.of(folded(words).split("\\s+")).toList();
    return Stream.concat(
            IntStream.range(0, PUBLISHED.size()).mapToObj(PlaceFinder::published),
            MonthlyWeather.places().stream().map(PlaceFinder::workedOut))
        .filter(
            found ->
                wanted.stream().allMatch(folded(found.place() + " " + found.region())::contains))
        .toList();
  }

  /**
   * Returns the places by their distance, the nearest first. Zones of a map are not among them: a
   * zone has no one point, and which zone a site lies in only its map says. What is published
   * counts as {@value #PUBLISHED_LEAD_KM} km nearer than what is worked out: of two rows for one
   * town the published one stands first, though its coordinates are rounded.
   *
   * @param latitude degrees, north positive
   * @param longitude degrees, east positive
   */
  public static List<Found> nearest(double latitude, double longitude) {
    Stream<Found> published =
        IntStream.range(0, PUBLISHED.size())
            .filter(row -> !PUBLISHED.text(row, "Latitude").isBlank())
            .mapToObj(
                row ->
                    published(row)
                        .at(
                            kilometres(
                                latitude,
                                longitude,
                                Double.parseDouble(PUBLISHED.text(row, "Latitude")),
                                Double.parseDouble(PUBLISHED.text(row, "Longitude")))));
    Stream<Found> workedOut =
        MonthlyWeather.places().stream()
            .map(
                each ->
                    workedOut(each)
                        .at(kilometres(latitude, longitude, each.latitude(), each.longitude())));
    return Stream.concat(published, workedOut)
        .sorted(Comparator.comparingDouble(PlaceFinder::rank))
        .toList();
  }

  private static double rank(Found found) {
    return found.kilometres() + (found.weather().isPresent() ? PUBLISHED_LEAD_KM : 0);
  }

  private static Found published(int row) {
    return new Found(
        PUBLISHED.keys().get(row),
        PUBLISHED.text(row, "Region"),
        Double.NaN,
        PUBLISHED.origin(row),
        Optional.empty());
  }

  private static Found workedOut(MonthlyWeather weather) {
    return new Found(
        weather.place(), weather.region(), Double.NaN, weather.origin(), Optional.of(weather));
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
