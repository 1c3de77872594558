package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.PlaceTaken;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Remedy;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * The weather that was read for places, looked at as a person would look at it who copies long
 * lists: what cannot be is a slip of the copy, or of the file. Bounds are common practice, no
 * source, except where one is named.
 */
class MonthlyWeatherTest {
  private static final int MONTHS = 12;
  private static final Map<String, Design> TAKEN = new HashMap<>();

  static List<MonthlyWeather> places() {
    return MonthlyWeather.places();
  }

  @Test
  void thereArePlacesInManyStatesAndCountries() {
    List<PlaceFinder.Found> all = PlaceFinder.named("");
    assertThat(all).hasSizeGreaterThanOrEqualTo(150);
    Set<String> states =
        places().stream()
            .map(MonthlyWeather::region)
            .filter(region -> region.endsWith(", United States"))
            .collect(Collectors.toSet());
    assertThat(states).hasSizeGreaterThanOrEqualTo(30);
    Set<String> countries =
        places().stream()
            .map(each -> each.region().substring(each.region().lastIndexOf(',') + 1).strip())
            .collect(Collectors.toCollection(HashSet::new));
    assertThat(countries).hasSizeGreaterThanOrEqualTo(20);
    assertThat(all.stream().map(PlaceFinder.Found::place)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("places")
  void everyRowSaysWhereItWasRead(MonthlyWeather place) {
    assertThat(place.source()).contains("worked out from monthly weather read in the named file");
    assertThat(place.origin()).contains("Penman-Monteith (FAO-56)").contains(place.source());
    assertThat(place.latitude()).isBetween(-66.0, 66.0);
    assertThat(place.longitude()).isBetween(-180.0, 180.0);
    for (List<Double> numbers :
        List.of(place.dewPoint(), place.wind(), place.radiation(), place.rain())) {
      assertThat(numbers.size()).isIn(0, MONTHS);
    }
    assertThat(place.wind().isEmpty()).isEqualTo(Double.isNaN(place.windHeight()));
  }

  @ParameterizedTest
  @MethodSource("places")
  void temperaturesAndDewPointsFitTogetherAndTheMonthsFollowEachOther(MonthlyWeather place) {
    assertThat(place.highest()).hasSize(MONTHS);
    assertThat(place.lowest()).hasSize(MONTHS);
    for (int month = 0; month < MONTHS; month++) {
      double high = place.highest().get(month);
      double low = place.lowest().get(month);
      assertThat(high - low).as("range of month %s", month + 1).isBetween(3.0, 25.0);
      int next = (month + 1) % MONTHS;
      assertThat(Math.abs(place.highest().get(next) - high)).isLessThan(12);
      assertThat(Math.abs(place.lowest().get(next) - low)).isLessThan(12);
      if (!place.dewPoint().isEmpty()) {
        double dew = place.dewPoint().get(month);
        assertThat(dew).as("dew point of month %s", month + 1).isLessThan((high + low) / 2);
        // deserts: the lowest temperature stands far above the dew point, but not without bounds
        assertThat(low - dew).isLessThan(16.5);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("places")
  void windRainAndSunAreOfThisWorld(MonthlyWeather place) {
    place.wind().forEach(wind -> assertThat(wind).isBetween(1.0, 8.0));
    place.rain().forEach(rain -> assertThat(rain).isBetween(0.0, 600.0));
    if (place.radiation().isEmpty()) {
      return;
    }
    Design design = taken(place);
    double[] share = new double[MONTHS];
    for (int month = 0; month < MONTHS; month++) {
      double above =
          read(
              design,
              Radiation.EXTRATERRESTRIAL_RADIATION,
              month,
              Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY);
      share[month] = place.radiation().get(month) / above;
      assertThat(share[month]).as("month %s", month + 1).isBetween(0.15, 0.8);
    }
    for (int month = 0; month < MONTHS; month++) {
      assertThat(Math.abs(share[(month + 1) % MONTHS] - share[month]))
          .as("clearness from month %s to the next", month + 1)
          .isLessThan(0.19);
    }
  }

  @ParameterizedTest
  @MethodSource("places")
  void aTakenPlaceGivesEveryMonthAndAYearThatCanBe(MonthlyWeather place) {
    Design design = taken(place);
    double year = read(design, Climate.YEAR_REFERENCE_ET, 0, Units.MILLIMETRE);
    assertThat(year).isBetween(400.0, 2600.0);
    assertThat(design.book().outcome(Climate.ORIGIN.reference(), 0).text())
        .isEqualTo("calculated by Penman-Monteith from the weather sheet");
    assertThat(design.book().outcome(WeatherSite.WEATHER_FROM.reference(), 0).text())
        .startsWith(place.place())
        .contains(place.source());
    if (place.rain().isEmpty()) {
      return;
    }
    double rain =
        IntStream.range(0, MONTHS)
            .mapToDouble(month -> read(design, Rain.MONTH_RAIN, month, Units.MILLIMETRE))
            .sum();
    assertThat(rain).isCloseTo(sum(place.rain()), within(0.01));
  }

  @Test
  void theUnitsOfADesignMakeNoDifference() {
    MonthlyWeather place = places().get(0);
    assertThat(read(taken(place, UnitSystem.US), Climate.YEAR_REFERENCE_ET, 0, Units.MILLIMETRE))
        .isCloseTo(
            read(taken(place, UnitSystem.SI), Climate.YEAR_REFERENCE_ET, 0, Units.MILLIMETRE),
            within(0.1));
  }

  /** A pair: a place worked out, and a published one near it. */
  private record Pair(String worked, String published, double least, double most) {}

  /**
   * How far places worked out are from published ones near them, in parts of the published year.
   * Stations of weather services stand dry and open; the published months are of watered grass.
   */
  static Stream<Pair> pairs() {
    return Stream.of(
        new Pair("Sacramento", "CIMIS zone 14", 0.98, 1.00),
        new Pair("Paso Robles", "CIMIS zone 16", 0.93, 0.95),
        new Pair("Oroville", "CIMIS zone 12", 1.23, 1.25),
        new Pair("San Francisco", "CIMIS zone 2", 1.15, 1.17),
        new Pair("Moab station", "Moab", 1.18, 1.20));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void workedOutPlacesComeNearPublishedOnes(Pair pair) {
    MonthlyWeather place =
        places().stream()
            .filter(each -> each.place().equals(pair.worked()))
            .findFirst()
            .orElseThrow();
    int row = Climate.PLACES.position(pair.published()).orElseThrow();
    double printed = Double.parseDouble(Climate.PLACES.text(row, "Annual (in)"));
    double worked = read(taken(place, UnitSystem.US), Climate.YEAR_REFERENCE_ET, 0, Units.INCH);
    assertThat(worked / printed)
        .as("%s %s in, %s %s in", pair.worked(), worked, pair.published(), printed)
        .isBetween(pair.least(), pair.most());
  }

  /** Neighbours of one state differ in weather, not by half. */
  @Test
  void aMonthOfAnyStationIsLikeThatOfItsNearestNeighbour() {
    for (MonthlyWeather place : places()) {
      MonthlyWeather near =
          places().stream()
              .filter(each -> !each.place().equals(place.place()))
              .min(
                  Comparator.comparingDouble(
                      each ->
                          PlaceFinder.kilometres(
                              place.latitude(),
                              place.longitude(),
                              each.latitude(),
                              each.longitude())))
              .orElseThrow();
      double far =
          PlaceFinder.kilometres(
              place.latitude(), place.longitude(), near.latitude(), near.longitude());
      boolean level = Math.abs(place.elevation() - near.elevation()) < 300;
      for (int month = 0; month < MONTHS && far < 120 && level; month++) {
        assertThat(place.highest().get(month))
            .as("%s and %s, month %s", place.place(), near.place(), month + 1)
            .isCloseTo(near.highest().get(month), within(9.0));
      }
    }
  }

  private static double sum(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).sum();
  }

  private static Design taken(MonthlyWeather place) {
    return TAKEN.computeIfAbsent(place.place(), name -> taken(place, UnitSystem.SI));
  }

  private static Design taken(MonthlyWeather place, UnitSystem system) {
    Design design = Design.blank(system);
    PlaceFinder.Found found =
        PlaceFinder.named(place.place()).stream()
            .filter(each -> each.place().equals(place.place()))
            .findFirst()
            .orElseThrow();
    design.book().start(PlaceTaken.edit(design.book(), found));
    return design;
  }

  private static double read(Design design, Column column, int row, Unit unit) {
    Book book = design.book();
    double value = book.outcome(column.reference(), row).number();
    return column.kind().unit(book.system()).convert(value, unit);
  }

  /** A town typed as the climate place is a finding with a cure, not a dead end. */
  @Test
  void aTownTypedAsTheClimatePlaceIsTakenFromItsFinding() {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().typed(Climate.PLACE.reference(), 0, "oklahoma city"));
    Finding refused =
        design.findings().stream()
            .filter(finding -> finding.column().equals(Climate.PLACE.reference()))
            .findFirst()
            .orElseThrow();
    Remedy remedy = refused.remedy().orElseThrow();
    assertThat(remedy.name())
        .isEqualTo("Take the weather of Oklahoma City, Oklahoma, United States");
    Edit edit = remedy.maker().edit(design.book(), Climate.PLACE.reference(), 0).orElseThrow();
    design.book().perform(edit);
    assertThat(design.book().outcome(Peak.MONTH.reference(), 0).sentence()).isEmpty();
    assertThat(PlaceTaken.named(design.book())).isEmpty();
  }
}
