package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.formula.Outcome;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * The weather sheet where weather is missing, wrong or taken over by the months; its values stand
 * among the reference checks.
 */
class WeatherTest {
  private final Sketch sketch = Sketch.in(UnitSystem.SI);

  @Test
  void theMonthsTakeOverWhatTheSiteChooses() {
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.HARGREAVES).type(WeatherSite.LATITUDE, "38");
    sketch.type(Weather.HIGHEST, "15").type(Weather.LOWEST, "5");
    double daily = sketch.read(CalculatedEt.HARGREAVES, Units.MILLIMETRE_PER_DAY);
    assertThat(daily).isBetween(0.5, 3.0);
    assertThat(sketch.read(Climate.REFERENCE_ET, Units.MILLIMETRE))
        .isCloseTo(31 * daily, within(1e-9));
  }

  /** FAO-56 equation 52 falls below 0 where the mean temperature is below -17.8 °C. */
  @Test
  void hargreavesIsNeverBelowNothing() {
    sketch
        .type(WeatherSite.LATITUDE, "64")
        .type(Weather.HIGHEST, "-20")
        .type(Weather.LOWEST, "-30");
    assertThat(sketch.read(CalculatedEt.HARGREAVES, Units.MILLIMETRE_PER_DAY)).isZero();
    sketch.type(Weather.HIGHEST, "-10").type(Weather.LOWEST, "-20");
    assertThat(sketch.read(CalculatedEt.HARGREAVES, Units.MILLIMETRE_PER_DAY)).isPositive();
  }

  @Test
  void aDewPointGoesBeforeHumidity() {
    sketch.type(Weather.HIGHEST, "25").type(Weather.LOWEST, "18").type(Weather.MEAN_HUMIDITY, "68");
    sketch.type(Weather.DEW_POINT, "18");
    // Saturation at the dew point, FAO-56 equations 11 and 14: e°(18 °C) = 2.064 kPa (example 5,
    // verified).
    assertThat(sketch.read(Weather.VAPOUR_PRESSURE, Units.KILOPASCAL))
        .isCloseTo(2.064, within(0.0005));
  }

  @Test
  void refusesALowestTemperatureAboveTheHighest() {
    sketch.type(Weather.HIGHEST, "10").type(Weather.LOWEST, "20");
    assertThat(sketch.outcome(CalculatedEt.HARGREAVES).sentence())
        .contains("lowest temperature is above the highest");
  }

  @Test
  void refusesALatitudeBeyondThePole() {
    sketch.type(WeatherSite.LATITUDE, "91");
    assertThat(sketch.outcome(WeatherSite.LATITUDE))
        .isInstanceOf(Outcome.Refused.class)
        .extracting(Outcome::sentence)
        .asString()
        .contains("from -66 ° to 66 °");
  }

  @Test
  void saysWhichWeatherIsMissing() {
    assertThat(sketch.outcome(CalculatedEt.PENMAN_MONTEITH).sentence())
        .contains("Highest temperature")
        .contains("Latitude");
  }
}
