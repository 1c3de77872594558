package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PlaceFinderTest {
  // A nautical mile was made to be a minute of latitude: 1.852 km (international definition).
  @Test
  void aDegreeOfLatitudeIsSixtyNauticalMiles() {
    assertThat(PlaceFinder.kilometres(40, 10, 41, 10)).isCloseTo(60 * 1.852, within(0.1));
    assertThat(PlaceFinder.kilometres(0, 179.5, 0, -179.5)).isCloseTo(60 * 1.852, within(0.1));
  }

  // The metre was made so that a quarter of a meridian has ten million of them.
  @Test
  void fromTheEquatorToThePoleAreTenThousandKilometres() {
    assertThat(PlaceFinder.kilometres(0, 0, 90, 77)).isCloseTo(10_000, within(12.0));
  }

  @Property(tries = 100)
  void thereAndBackIsAsFarAndNoWayRoundIsShorter(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @DoubleRange(min = -90, max = 90) double other,
      @ForAll @DoubleRange(min = -180, max = 180) double otherLongitude) {
    double there = PlaceFinder.kilometres(latitude, longitude, other, otherLongitude);
    assertThat(PlaceFinder.kilometres(other, otherLongitude, latitude, longitude))
        .isCloseTo(there, within(1e-6));
    assertThat(there)
        .isLessThanOrEqualTo(
            PlaceFinder.kilometres(latitude, longitude, 0, 0)
                + PlaceFinder.kilometres(0, 0, other, otherLongitude)
                + 1e-6);
  }

  @Test
  void theNearestIsFirstAndItsDistanceIsSaid() {
    assertThat(PlaceFinder.nearest(38.6, -109.5).get(0))
        .satisfies(
            found -> {
              assertThat(found.place()).isEqualTo("Moab");
              assertThat(found.distance()).isEqualTo("0 km (0 mi)");
            });
    assertThat(PlaceFinder.nearest(-6, 13).get(0).place()).isEqualTo("Cabinda");
    for (String kind : List.of("published", "worked out")) {
      assertThat(PlaceFinder.nearest(0, 0))
          .filteredOn(found -> found.kind().equals(kind))
          .isNotEmpty()
          .isSortedAccordingTo(
              (one, other) -> Double.compare(one.kilometres(), other.kilometres()));
    }
  }

  @Test
  void ofTwoRowsForOneTownThePublishedOneStandsFirst() {
    assertThat(PlaceFinder.nearest(38.58, -109.55))
        .extracting(PlaceFinder.Found::place)
        .startsWith("Moab", "Moab station");
    assertThat(PlaceFinder.nearest(35.4, -97.6).get(0).place())
        .as("far from all that is published")
        .isEqualTo("Oklahoma City");
  }

  @Test
  void namesAndRegionsAreFoundByWordsInAnyOrder() {
    assertThat(PlaceFinder.named("utah moab").get(0))
        .as("published months go before those worked out")
        .satisfies(
            found -> {
              assertThat(found.place()).isEqualTo("Moab");
              assertThat(found.kind()).isEqualTo("published");
            });
    assertThat(PlaceFinder.named("tooele"))
        .singleElement()
        .satisfies(found -> assertThat(found.kind()).isEqualTo("worked out"));
    assertThat(PlaceFinder.named("8 zone cimis").get(0).place()).isEqualTo("CIMIS zone 8");
    assertThat(PlaceFinder.named(""))
        .hasSize(Climate.PLACES.size() + MonthlyWeather.places().size());
    assertThat(PlaceFinder.named("atlantis")).isEmpty();
  }
}
