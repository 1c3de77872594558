package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.AIR;
import static zonewright.trade.Sheets.MEASURED;
import static zonewright.trade.Sheets.WEATHER;

import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the weather sheet: what was measured, month by month, and what follows about the air.
 */
public final class Weather {
  private static final String PAPER = "FAO Irrigation and Drainage Paper 56 (1998), ";

  public static final Column MONTH =
      Column.words(WEATHER, "month", "Month").band(MEASURED).means("The month.").build();

  public static final Column NUMBER =
      Column.input(WEATHER, "number", "Number", QuantityKind.COUNT)
          .band(MEASURED)
          .within(Bounds.from(1, 12, Units.ONE).wholeNumbers())
          .means("The month's place in the year.")
          .build();

  public static final Column HIGHEST =
      temperature(
          "highest-temperature", "Highest temperature", "Mean of the daily highest temperatures.");

  public static final Column LOWEST =
      temperature(
          "lowest-temperature", "Lowest temperature", "Mean of the daily lowest temperatures.");

  public static final Column DEW_POINT =
      temperature(
          "dew-point",
          "Dew point",
          "Mean dew point. The best measure of humidity; leave it blank where only relative humidity is known.");

  public static final Column HIGHEST_HUMIDITY =
      humidity(
          "highest-humidity", "Highest humidity", "Mean of the daily highest relative humidity.");

  public static final Column LOWEST_HUMIDITY =
      humidity("lowest-humidity", "Lowest humidity", "Mean of the daily lowest relative humidity.");

  public static final Column MEAN_HUMIDITY =
      humidity(
          "mean-humidity",
          "Mean humidity",
          "Mean relative humidity; used only where nothing better is given, for it serves least.");

  public static final Column WIND =
      Column.input(WEATHER, "wind", "Wind", QuantityKind.WIND)
          .band(MEASURED)
          .within(Bounds.from(0, 40, Units.METRE_PER_SECOND))
          .optional()
          .means(
              "Mean wind speed at the height named on the site sheet. Where it is blank, 2 m/s is taken.")
          .build();

  public static final Column SUNSHINE =
      Column.input(WEATHER, "sunshine", "Sunshine a day", QuantityKind.HOURS)
          .band(MEASURED)
          .within(Bounds.from(0, 24, Units.HOUR))
          .optional()
          .means("Mean hours of bright sunshine a day.")
          .build();

  public static final Column SOLAR_RADIATION_MEASURED =
      Column.input(WEATHER, "measured-radiation", "Measured radiation", QuantityKind.RADIATION)
          .band(MEASURED)
          .within(Bounds.from(0, 50, Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY))
          .optional()
          .means(
              "Mean solar radiation measured on flat ground. Goes before sunshine where both are given.")
          .build();

  public static final Column MEAN_TEMPERATURE =
      Column.calculated(
              WEATHER,
              "mean-temperature",
              "Mean temperature",
              QuantityKind.FACTOR,
              Formula.when(Vapour.celsius(LOWEST).above(Vapour.celsius(HIGHEST)))
                  .then(
                      Formula.refused(
                          "low above high",
                          "the lowest temperature is above the highest; one of the two is wrong"))
                  .otherwise(Vapour.celsius(HIGHEST).plus(Vapour.celsius(LOWEST)).over(2)))
          .band(AIR)
          .means("Mean of highest and lowest temperature, in degrees Celsius.")
          .source(PAPER + "equation 9 (from memory).")
          .build();

  public static final Column SATURATION_PRESSURE =
      Column.calculated(
              WEATHER,
              "saturation-pressure",
              "Saturation vapour pressure",
              QuantityKind.VAPOUR_PRESSURE,
              Vapour.kilopascals(saturation(HIGHEST).plus(saturation(LOWEST)).over(2)))
          .band(AIR)
          .means(
              "Mean of the saturation vapour pressures at the highest and the lowest temperature.")
          .source(PAPER + "equations 11 and 12 (verified).")
          .build();

  public static final Column VAPOUR_PRESSURE =
      Column.defaulted(
              WEATHER,
              "vapour-pressure",
              "Vapour pressure",
              QuantityKind.VAPOUR_PRESSURE,
              Formula.when(DEW_POINT.given())
                  .then(Vapour.kilopascals(saturation(DEW_POINT)))
                  .otherwise(fromHumidity()))
          .band(AIR)
          .within(Bounds.above(0, 10, Units.KILOPASCAL))
          .means(
              "Actual vapour pressure: from the dew point, else from highest and lowest humidity, else from the highest alone, else"
                  + " from the mean, else as if the dew point were the lowest temperature; or typed.")
          .source(PAPER + "equations 14, 17, 18, 19 and 48 (verified).")
          .build();

  public static final Column SLOPE_OF_SATURATION =
      Column.calculated(
              WEATHER,
              "slope-of-saturation",
              "Slope of saturation",
              QuantityKind.FACTOR,
              number(4098)
                  .times(Vapour.saturation(MEAN_TEMPERATURE))
                  .over(MEAN_TEMPERATURE.plus(237.3).power(2)))
          .band(AIR)
          .decimals(3, 3)
          .means(
              "Slope of the saturation vapour pressure at the mean temperature, in kPa per degree Celsius.")
          .source(PAPER + "equation 13 (verified).")
          .build();

  public static final Column WIND_AT_TWO_METRES =
      Column.calculated(
              WEATHER,
              "wind-at-two-metres",
              "Wind at 2 m",
              QuantityKind.WIND,
              Formula.when(WIND.given())
                  .then(
                      Formula.larger(
                          Formula.amount(0.5, Units.METRE_PER_SECOND),
                          WIND.times(4.87)
                              .over(
                                  number(67.8)
                                      .times(WeatherSite.WIND_HEIGHT.measuredIn(Units.METRE))
                                      .minus(5.42)
                                      .apply(FunctionKind.NATURAL_LOGARITHM))))
                  .otherwise(Formula.amount(2, Units.METRE_PER_SECOND)))
          .band(AIR)
          .means(
              "Wind speed brought to 2 m above ground; never below 0.5 m/s, and 2 m/s where none was measured.")
          .source(
              PAPER
                  + "equation 47; 2 m/s for missing wind and the floor of 0.5 m/s as there (verified).")
          .build();

  private static Formula fromHumidity() {
    Formula both =
        saturation(LOWEST)
            .times(HIGHEST_HUMIDITY)
            .plus(saturation(HIGHEST).times(LOWEST_HUMIDITY))
            .over(2);
    return Formula.when(HIGHEST_HUMIDITY.given().and(LOWEST_HUMIDITY.given()))
        .then(Vapour.kilopascals(both))
        .otherwise(
            Formula.when(HIGHEST_HUMIDITY.given())
                .then(Vapour.kilopascals(saturation(LOWEST).times(HIGHEST_HUMIDITY)))
                .otherwise(
                    Formula.when(MEAN_HUMIDITY.given())
                        .then(SATURATION_PRESSURE.times(MEAN_HUMIDITY))
                        .otherwise(Vapour.kilopascals(saturation(LOWEST)))));
  }

  private static Formula saturation(Column temperature) {
    return Vapour.saturation(Vapour.celsius(temperature));
  }

  private static Column temperature(String id, String name, String meaning) {
    return Column.input(WEATHER, id, name, QuantityKind.TEMPERATURE)
        .band(MEASURED)
        .within(Bounds.from(-60, 60, Units.CELSIUS))
        .optional()
        .means(meaning)
        .build();
  }

  private static Column humidity(String id, String name, String meaning) {
    return Column.input(WEATHER, id, name, QuantityKind.SHARE)
        .band(MEASURED)
        .within(Bounds.from(0, 1, Units.ONE))
        .optional()
        .means(meaning)
        .build();
  }

  private Weather() {}
}
