package zonewright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.CalculatedEt;
import zonewright.climate.Radiation;
import zonewright.climate.Weather;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;

/** The equations against printed examples, another program's output, and the columns' formulas. */
class EquationsTest {
  private static final double BANGKOK = 13 + 44 / 60.0;
  private static final double UCCLE = 50 + 48 / 60.0;
  private static final double LYON = 45 + 43 / 60.0;

  private static double fao(
      double latitude,
      double elevation,
      int day,
      double high,
      double low,
      double vapour,
      double wind,
      double solar) {
    double clear = GrassEvapotranspiration.clearSky(elevation) * new Sun(latitude, day).radiation();
    return GrassEvapotranspiration.ofDay(
        Equation.FAO,
        high,
        low,
        vapour,
        wind,
        solar,
        clear,
        GrassEvapotranspiration.psychrometric(elevation));
  }

  // FAO Irrigation and Drainage Paper 56 (1998), examples 16 and 17 (verified): Bangkok in April.
  @Test
  void examplesSixteenAndSeventeen() {
    Sun april = new Sun(BANGKOK, 105);
    assertThat(april.radiation()).isCloseTo(38.06, within(0.05));
    assertThat(april.daylight()).isCloseTo(12.31, within(0.01));
    double byRange = 0.19 * Math.sqrt(34.8 - 25.6) * april.radiation();
    assertThat(byRange).isCloseTo(21.9, within(0.05));
    double bySunshine = (0.25 + 0.5 * 8.5 / april.daylight()) * april.radiation();
    assertThat(bySunshine).isCloseTo(22.65, within(0.01));
    // the month's soil heat flux of 0.14 MJ/m² counts for 0.04 mm here, where it is left out
    assertThat(fao(BANGKOK, 2, 105, 34.8, 25.6, 2.85, 2, bySunshine))
        .isCloseTo(5.72 + 0.04, within(0.015));
  }

  // FAO-56, example 18 (verified): Uccle on 6 July.
  @Test
  void exampleEighteen() {
    double vapour =
        (GrassEvapotranspiration.saturation(12.3) * 0.84
                + GrassEvapotranspiration.saturation(21.5) * 0.63)
            / 2;
    assertThat(vapour).isCloseTo(1.409, within(0.0005));
    double wind = GrassEvapotranspiration.windAtTwoMetres(10 / 3.6, 10);
    assertThat(wind).isCloseTo(2.078, within(0.001));
    Sun july = new Sun(UCCLE, 187);
    double solar = (0.25 + 0.5 * 9.25 / july.daylight()) * july.radiation();
    assertThat(solar).isCloseTo(22.07, within(0.01));
    assertThat(fao(UCCLE, 100, 187, 21.5, 12.3, vapour, wind, solar)).isCloseTo(3.88, within(0.01));
  }

  // FAO-56, example 19 (verified): N'Diaye, 16°13' N 16°15' W, 8 m, 1 October.
  @Test
  void exampleNineteen() {
    Sun october = new Sun(16 + 13 / 60.0, 274);
    double afternoon = october.angle(14.5, -1, -16.25);
    assertThat(afternoon).isCloseTo(0.682, within(0.0005));
    assertThat(october.angle(2.5, -1, -16.25)).isCloseTo(-2.46, within(0.005));
    double above = october.radiationOfHour(afternoon);
    assertThat(above).isCloseTo(3.543, within(0.001));
    double clear = GrassEvapotranspiration.clearSky(8) * above;
    assertThat(clear).isCloseTo(2.658, within(0.001));
    double gamma = GrassEvapotranspiration.psychrometric(8);
    assertThat(gamma).isCloseTo(0.0673, within(0.00005));
    double vapour = 0.52 * GrassEvapotranspiration.saturation(38);
    assertThat(vapour).isCloseTo(3.445, within(0.0005));
    assertThat(
            GrassEvapotranspiration.ofHour(
                Equation.FAO, 38, vapour, 3.3, 2.450, 2.450 / clear, gamma))
        .isCloseTo(0.63, within(0.005));
    double night = 0.90 * GrassEvapotranspiration.saturation(28);
    assertThat(GrassEvapotranspiration.ofHour(Equation.FAO, 28, night, 1.9, 0, 0.8, gamma))
        .isCloseTo(0.00, within(0.005));
  }

  // FAO-56, example 20 (verified): Lyon in July, from temperatures alone.
  @Test
  void exampleTwenty() {
    double above = new Sun(LYON, 196).radiation();
    assertThat(above).isCloseTo(40.55, within(0.01));
    double solar = 0.16 * Math.sqrt(26.6 - 14.8) * above;
    assertThat(solar).isCloseTo(22.29, within(0.01));
    double dew = GrassEvapotranspiration.saturation(14.8);
    assertThat(fao(LYON, 200, 196, 26.6, 14.8, dew, 2, solar)).isCloseTo(4.56, within(0.01));
    // 1 m/s gives 4.2 and 3 m/s 4.8, as printed
    assertThat(fao(LYON, 200, 196, 26.6, 14.8, dew, 1, solar)).isCloseTo(4.2, within(0.05));
    assertThat(fao(LYON, 200, 196, 26.6, 14.8, dew, 3, solar)).isCloseTo(4.8, within(0.05));
    assertThat(GrassEvapotranspiration.hargreaves(26.6, 14.8, above)).isCloseTo(5.0, within(0.05));
  }

  /**
   * Output of REF-ET 4.1 (University of Idaho) for the AgriMet station Fallon, Nevada, 2015, by the
   * standardized equation, read in the public test data of an open library (verified). It prints
   * its inputs rounded, hence a hundredth and 0.5 %.
   */
  @ParameterizedTest
  @CsvSource({
    "2015-01-01, -0.2, -17.7, 9.41, 0.63, -17.1, 0.41",
    "2015-01-15, 9.52, -9.81, 9.41, 0.72, -5.92, 0.66",
    "2015-02-06, 22.56, 6.19, 9.43, 5.60, -4.81, 5.40",
    "2015-02-15, 16.08, -1.67, 14.94, 1.33, -2.69, 1.84",
    "2015-03-01, 10.09, -0.09, 15.87, 1.97, -1.40, 1.82",
    "2015-03-15, 24.77, 10.62, 9.74, 3.05, -3.69, 4.74",
    "2015-04-01, 13.18, -4.68, 22.64, 2.50, -10.2, 3.40",
    "2015-04-13, 28.33, -0.81, 26.91, 3.45, -10.1, 7.22",
    "2015-04-22, 24.59, 6.50, 27.21, 0.00, 0.56, 3.59",
    "2015-05-01, 27.67, 6.38, 29.58, 1.29, -3.11, 5.44",
    "2015-05-15, 9.73, 6.49, 5.60, 2.79, 5.10, 1.20",
    "2015-06-01, 29.28, 10.38, 32.28, 3.17, -1.00, 7.91",
    "2015-06-21, 34.33, 11.23, 30.21, 3.03, -5.27, 8.83",
    "2015-07-01, 39.33, 19.25, 28.22, 2.15, 9.91, 7.94",
    "2015-07-15, 33.72, 13.82, 31.23, 1.49, 5.95, 6.75",
    "2015-08-01, 36.61, 17.83, 20.55, 2.23, 6.29, 6.70",
    "2015-08-15, 33.89, 9.88, 26.43, 1.10, -1.48, 5.43",
    "2015-09-01, 33.56, 8.98, 24.80, 1.31, -1.53, 5.22",
    "2015-09-15, 27.56, 12.09, 17.45, 4.02, 4.02, 5.90",
    "2015-10-01, 17.93, 10.86, 4.11, 1.61, 10.60, 1.19",
    "2015-10-15, 28.61, 8.61, 12.50, 1.38, 5.30, 2.88",
    "2015-11-02, 10.01, 1.67, 1.71, 2.29, 4.78, 0.40",
    "2015-11-15, 14.39, -4.27, 6.93, 3.12, -3.12, 2.04",
    "2015-12-13, 15.82, 0.78, 6.75, 5.04, -3.51, 3.03",
    "2015-12-31, -2.1, -13.3, 5.58, 1.29, -9.21, 0.33"
  })
  void daysAreThoseOfAnotherProgram(
      LocalDate date,
      double high,
      double low,
      double solar,
      double wind,
      double dew,
      double printed) {
    double elevation = 1208.5;
    double above = new Sun(39.4575, date.getDayOfYear()).radiation();
    double depth =
        GrassEvapotranspiration.ofDay(
            Equation.ASCE,
            high,
            low,
            GrassEvapotranspiration.saturation(dew),
            GrassEvapotranspiration.windAtTwoMetres(wind, 3),
            solar,
            turbid(above, meanSine(39.4575, date.getDayOfYear()), elevation, dew),
            GrassEvapotranspiration.psychrometric(elevation));
    assertThat(depth).isCloseTo(printed, within(0.01 + 0.005 * printed));
  }

  /**
   * Radiation under a clear sky by how much air and water it passes, which that program uses in
   * place of height alone.
   *
   * @see "FAO-56, annex 3; ASCE-EWRI (2005), appendix D (both from memory)"
   */
  private static double turbid(double above, double sine, double elevation, double dew) {
    double pressure = 101.3 * Math.pow((293 - 0.0065 * elevation) / 293, 5.26);
    double water = 0.14 * GrassEvapotranspiration.saturation(dew) * pressure + 2.1;
    double beam = 0.98 * Math.exp(-0.00146 * pressure / sine - 0.075 * Math.pow(water / sine, 0.4));
    return (beam + 0.35 - 0.36 * beam) * above;
  }

  private static double meanSine(double latitude, int day) {
    double phi = Math.toRadians(latitude);
    return Math.sin(0.85 + 0.3 * phi * Math.sin(2 * Math.PI * day / 365 - 1.39) - 0.42 * phi * phi);
  }

  /**
   * The same program's output for hours of that station; clock of 120° west, hours by their end.
   */
  @ParameterizedTest
  @CsvSource({
    "2015-01-01, 11, -3.21, 411, 0.71, -14.9, 0.12",
    "2015-01-01, 12, -2.40, 444, 0.94, -15.7, 0.14",
    "2015-01-03, 13, 5.59, 416, 1.16, -12.9, 0.19",
    "2015-01-03, 14, 6.91, 349, 1.03, -12.4, 0.17",
    "2015-01-04, 11, 2.51, 164, 1.35, -9.47, 0.09",
    "2015-01-05, 12, 7.87, 365, 0.88, -5.79, 0.18",
    "2015-01-06, 11, 8.14, 440, 0.80, -3.87, 0.20",
    "2015-01-06, 12, 9.69, 430, 1.31, -3.10, 0.22",
    "2015-01-07, 11, 8.32, 407, 0.68, -2.24, 0.18"
  })
  void hoursAreThoseOfAnotherProgram(
      LocalDate date,
      int end,
      double celsius,
      double watts,
      double wind,
      double dew,
      double printed) {
    Sun sun = new Sun(39.4575, date.getDayOfYear());
    double angle = sun.angle(end - 0.5, -8, -118.77388);
    double clear = turbid(sun.radiationOfHour(angle), Math.sin(sun.height(angle)), 1208.5, dew);
    double solar = watts * 0.0036;
    double depth =
        GrassEvapotranspiration.ofHour(
            Equation.ASCE,
            celsius,
            GrassEvapotranspiration.saturation(dew),
            GrassEvapotranspiration.windAtTwoMetres(wind, 3),
            solar,
            GrassEvapotranspiration.clearness(Equation.ASCE, solar, clear),
            GrassEvapotranspiration.psychrometric(1208.5));
    assertThat(depth).isCloseTo(printed, within(0.01));
  }

  // An open library's check of the standardized equation by the hour, Fallon, 1 July 2015, 11 to 12
  // by the clock of 105° west (verified): 0.606 mm.
  @Test
  void aSummerHourIsThatOfAnOpenLibrary() {
    Sun sun = new Sun(39.4575, 182);
    double clear =
        GrassEvapotranspiration.clearSky(1208.5)
            * sun.radiationOfHour(sun.angle(18.5, 0, -118.77388));
    double solar = 61.16 * 0.041868;
    double depth =
        GrassEvapotranspiration.ofHour(
            Equation.ASCE,
            (91.80 - 32) / 1.8,
            1.1990099614301906,
            GrassEvapotranspiration.windAtTwoMetres(3.33 * 0.44704, 3),
            solar,
            GrassEvapotranspiration.clearness(Equation.ASCE, solar, clear),
            GrassEvapotranspiration.psychrometric(1208.5));
    assertThat(depth).isCloseTo(0.606, within(0.006));
  }

  /**
   * Hours, each by its middle, have between them the sun of the day; FAO-56 equations 21 and 28.
   */
  @Property(tries = 60)
  void theHoursAddUpToTheDay(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -170, max = 170) double longitude,
      @ForAll @IntRange(min = 1, max = 365) int day) {
    Sun sun = new Sun(latitude, day);
    double clock = Math.round(longitude / 15);
    double sum = 0;
    for (int hour = 1; hour <= 24; hour++) {
      sum += sun.radiationOfHour(sun.angle(hour - 0.5, clock, longitude));
    }
    assertThat(sum).isCloseTo(sun.radiation(), within(0.02));
    double hourLate = sun.radiationOfHour(sun.angle(16, clock, longitude));
    assertThat(sun.radiationOfHour(sun.angle(15.5, clock, longitude)))
        .isGreaterThanOrEqualTo(hourLate);
  }

  /** The loop and the formulas of the sheet Weather give the same to the last digits. */
  @Property(tries = 60)
  void theLoopIsTheColumns(
      @ForAll @DoubleRange(min = -65, max = 65) double latitude,
      @ForAll @DoubleRange(min = -100, max = 4000) double elevation,
      @ForAll @IntRange(min = 1, max = 366) int day,
      @ForAll @DoubleRange(min = -30, max = 45) double low,
      @ForAll @DoubleRange(min = 0, max = 25) double range,
      @ForAll @DoubleRange(min = 0.05, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 15) double wind,
      @ForAll @DoubleRange(min = 0.1, max = 30) double solar) {
    double high = Math.min(60, low + range);
    double vapour = humidity * GrassEvapotranspiration.saturation(low);
    Sketch sketch = Sketch.in(UnitSystem.SI);
    set(sketch, WeatherSite.LATITUDE, latitude);
    set(sketch, WeatherSite.ELEVATION, elevation);
    set(sketch, WeatherSite.WIND_HEIGHT, 10);
    set(sketch, Radiation.DAY_OF_YEAR, day);
    set(sketch, Weather.HIGHEST, high);
    set(sketch, Weather.LOWEST, low);
    set(sketch, Weather.VAPOUR_PRESSURE, vapour);
    set(sketch, Weather.WIND, wind);
    set(sketch, Weather.SOLAR_RADIATION_MEASURED, solar);
    set(sketch, CalculatedEt.SOIL_HEAT_FLUX, 0);
    double above = new Sun(latitude, day).radiation();
    double air = GrassEvapotranspiration.windAtTwoMetres(wind, 10);
    assertThat(number(sketch, Radiation.EXTRATERRESTRIAL_RADIATION)).isCloseTo(above, within(1e-9));
    assertThat(number(sketch, CalculatedEt.PENMAN_MONTEITH))
        .isCloseTo(fao(latitude, elevation, day, high, low, vapour, air, solar), within(1e-9));
    assertThat(number(sketch, CalculatedEt.HARGREAVES))
        .isCloseTo(GrassEvapotranspiration.hargreaves(high, low, above), within(1e-9));
  }

  private static void set(Sketch sketch, Column column, double value) {
    Design design = sketch.design();
    design.book().perform(design.edits().set(column.reference(), 0, new Entry.Figure(value)));
  }

  private static double number(Sketch sketch, Column column) {
    return sketch.outcome(column).number();
  }

  /**
   * Both published forms written out once more, step by step, with nothing of the program's: days
   * of which neither sky nor wind is at a limit.
   */
  @ParameterizedTest
  @CsvSource({"28, 12, 1.1, 2.4, 22, 30, 0.06", "8, -3, 0.4, 4, 9, 14, 0.067"})
  void daysAreThoseOfAnIndependentCalculation(
      double high, double low, double ea, double u, double rs, double rso, double g) {
    for (Equation equation : Equation.values()) {
      double sigma = equation == Equation.ASCE ? 4.901e-9 : 4.903e-9;
      double t = 0.5 * high + 0.5 * low;
      double es =
          0.5
              * 0.6108
              * (Math.exp(17.27 * high / (237.3 + high)) + Math.exp(17.27 * low / (237.3 + low)));
      double d = 2503.16 * Math.exp(17.27 * t / (237.3 + t)) / Math.pow(237.3 + t, 2);
      double k = 0.5 * (Math.pow(273.16 + high, 4) + Math.pow(273.16 + low, 4));
      double rn =
          (1 - 0.23) * rs - sigma * k * (0.34 - 0.14 * Math.sqrt(ea)) * (1.35 * rs / rso - 0.35);
      double et = (0.408 * d * rn + g * 900 * u * (es - ea) / (273 + t)) / (d + g + 0.34 * g * u);
      assertThat(GrassEvapotranspiration.ofDay(equation, high, low, ea, u, rs, rso, g))
          .isCloseTo(et, within(2e-4));
    }
  }
}
