package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.budget.Ordinance;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * What no equation of the trade is made for is refused where it is typed, with what would be right,
 * and nothing that rests on it comes to a number.
 */
class DomainErrorsTest {
  static Stream<Arguments> impossible() {
    return Stream.of(
        Arguments.of(Ordinance.ADJUSTMENT_FACTOR, "1.2", "1", Ordinance.MAXIMUM),
        Arguments.of(Ordinance.ADJUSTMENT_FACTOR, "0", "above 0", Ordinance.MAXIMUM),
        Arguments.of(Emitters.DISTRIBUTION_UNIFORMITY, "0 %", "above 0", Demand.RUN_TIME_PER_WEEK),
        Arguments.of(Emitters.DISTRIBUTION_UNIFORMITY, "120 %", "100 %", Demand.RUN_TIME_PER_WEEK),
        Arguments.of(Plants.ALLOWED_DEPLETION, "110 %", "100 %", Demand.DAYS_NEEDED),
        Arguments.of(Plants.ALLOWED_DEPLETION, "0 %", "above 0", Demand.DAYS_NEEDED),
        Arguments.of(Plants.ROOT_DEPTH, "-2 in", "above 0", Demand.DAYS_NEEDED),
        Arguments.of(Soils.INTAKE_RATE, "-1 in/h", "0", CycleAndSoak.CYCLES),
        Arguments.of(Emitters.AREA, "-20 ft2", "0", Emitters.PRECIPITATION_RATE),
        Arguments.of(Climate.REFERENCE_ET, "-3 in", "0", Peak.REFERENCE_ET),
        Arguments.of(WeatherSite.LATITUDE, "91", "66", null),
        Arguments.of(WeatherSite.LATITUDE, "-91", "66", null));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("impossible")
  void isRefusedWithWhatWouldBeRight(Column column, String text, String right, Column rests) {
    for (UnitSystem system : UnitSystem.values()) {
      Design design = Demo.libraryGarden(system);
      Book book = design.book();
      book.perform(design.edits().typed(column.reference(), 0, text));
      Outcome outcome = book.outcome(column.reference(), 0);
      assertThat(outcome).isInstanceOf(Outcome.Refused.class);
      assertThat(outcome.sentence()).contains(column.name()).contains(right);
      assertThat(design.findings())
          .as("it is told among the findings")
          .anyMatch(finding -> finding.column().equals(column.reference()) && finding.row() == 0);
      if (rests != null) {
        assertThat(book.outcome(rests.reference(), 0)).isNotInstanceOf(Outcome.Amount.class);
        assertThat(book.number(rests.reference(), 0)).isNaN();
      }
    }
  }

  @Test
  void aLowestTemperatureAboveTheHighestIsRefused() {
    OneZone zone =
        OneZone.in(UnitSystem.SI)
            .type(WeatherSite.ET_METHOD, WeatherSite.HARGREAVES)
            .type(WeatherSite.LATITUDE, "40");
    for (int month = 0; month < 12; month++) {
      zone.type(Weather.HIGHEST, month, "25 °C").type(Weather.LOWEST, month, "12 °C");
    }
    assertThat(zone.number(Climate.REFERENCE_ET, 6)).isPositive();
    zone.type(Weather.LOWEST, 6, "26 °C");
    Outcome july = zone.book().outcome(Climate.REFERENCE_ET.reference(), 6);
    assertThat(july).isInstanceOf(Outcome.Refused.class);
    assertThat(july.sentence()).contains("lowest temperature is above the highest");
    assertThat(zone.outcome(Peak.REFERENCE_ET)).isNotInstanceOf(Outcome.Amount.class);
    assertThat(zone.number(Climate.REFERENCE_ET, 5)).isPositive();
  }

  @Test
  void aYearWithAMonthMissingHasNoPeakAndNoYear() {
    OneZone zone = OneZone.in(UnitSystem.US);
    for (int month = 0; month < 12; month++) {
      if (month != 8) {
        zone.type(Climate.REFERENCE_ET, month, (2 + month % 6) + " in");
      }
    }
    for (Column column : new Column[] {Peak.REFERENCE_ET, Climate.YEAR_REFERENCE_ET}) {
      Outcome outcome = zone.outcome(column);
      assertThat(outcome).isInstanceOf(Outcome.Missing.class);
      assertThat(outcome.sentence()).as("a place would fill it").contains("Climate place");
    }
    zone.type(Climate.REFERENCE_ET, 8, "4 in");
    assertThat(zone.number(Climate.YEAR_REFERENCE_ET)).isPositive();
  }
}
