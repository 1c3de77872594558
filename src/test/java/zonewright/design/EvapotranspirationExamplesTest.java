package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Worked examples of FAO Irrigation and Drainage Paper 56 (1998), chapter 3 (verified), whose
 * result stands in no cell but between two, and so in no line of the reference checks.
 */
class EvapotranspirationExamplesTest {
  /** Example 6, with the data of example 5: es - ea = 0.91 kPa. */
  @ParameterizedTest
  @EnumSource
  void theVapourPressureDeficitIsThatOfExampleSix(UnitSystem system) {
    OneZone zone =
        OneZone.in(system)
            .type(Weather.LOWEST, "18 °C")
            .type(Weather.HIGHEST, "25 °C")
            .type(Weather.HIGHEST_HUMIDITY, "82 %")
            .type(Weather.LOWEST_HUMIDITY, "54 %");
    double saturation =
        Weather.SATURATION_PRESSURE
            .kind()
            .unit(system)
            .convert(zone.number(Weather.SATURATION_PRESSURE), Units.KILOPASCAL);
    double actual =
        Weather.VAPOUR_PRESSURE
            .kind()
            .unit(system)
            .convert(zone.number(Weather.VAPOUR_PRESSURE), Units.KILOPASCAL);
    assertThat(saturation - actual).isCloseTo(0.91, within(0.005));
  }

  /** Example 7: Bangkok, 13°44' north, is 0.240 rad; Rio de Janeiro, 22°54' south, -0.400 rad. */
  @ParameterizedTest
  @CsvSource({"13.7333333, 0.240", "-22.9, -0.400"})
  void latitudesAreTheRadiansOfExampleSeven(String degrees, double radians) {
    OneZone zone = OneZone.inUsUnits().type(WeatherSite.LATITUDE, degrees + "°");
    double held =
        WeatherSite.LATITUDE
            .kind()
            .unit(UnitSystem.US)
            .convert(zone.number(WeatherSite.LATITUDE), Units.ONE);
    assertThat(held).isCloseTo(radians, within(0.0005));
  }
}
