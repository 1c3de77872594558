package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.SUN;
import static zonewright.trade.Sheets.WEATHER;

import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the weather sheet about sun and radiation. */
public final class Radiation {
  private static final String PAPER = "FAO Irrigation and Drainage Paper 56 (1998), ";
  private static final Formula LATITUDE = WeatherSite.LATITUDE.measuredIn(Units.ONE);

  public static final Column DAY_OF_YEAR =
      Column.defaulted(
              WEATHER,
              "day-of-year",
              "Day of the year",
              QuantityKind.COUNT,
              number(30.4).times(Weather.NUMBER).minus(15).roundedDownTo(Units.ONE))
          .band(SUN)
          .within(Bounds.from(1, 366, Units.ONE).wholeNumbers())
          .means("A day in the middle of the month, by which the sun's height is reckoned.")
          .source(PAPER + "page 217: J = INTEGER(30.4 M - 15) (verified).")
          .build();

  private static final Formula ANGLE_OF_DAY = number(2).times(Math.PI).times(DAY_OF_YEAR).over(365);

  public static final Column DECLINATION =
      Column.calculated(
              WEATHER,
              "declination",
              "Solar declination",
              QuantityKind.FACTOR,
              number(0.409).times(ANGLE_OF_DAY.minus(1.39).apply(FunctionKind.SINE)))
          .band(SUN)
          .decimals(3, 3)
          .means("How far the noon sun stands north of the equator, in radians.")
          .source(PAPER + "equation 24 (verified).")
          .build();

  public static final Column SUNSET_ANGLE =
      Column.calculated(
              WEATHER,
              "sunset-angle",
              "Sunset hour angle",
              QuantityKind.FACTOR,
              number(-1)
                  .times(LATITUDE.apply(FunctionKind.TANGENT))
                  .times(DECLINATION.apply(FunctionKind.TANGENT))
                  .apply(FunctionKind.ARC_COSINE))
          .band(SUN)
          .decimals(3, 3)
          .means("Angle the earth turns between noon and sunset, in radians.")
          .source(PAPER + "equation 25 (verified).")
          .build();

  public static final Column EXTRATERRESTRIAL_RADIATION =
      Column.calculated(
              WEATHER,
              "extraterrestrial-radiation",
              "Extraterrestrial radiation",
              QuantityKind.RADIATION,
              megajoules(
                  number(24 * 60)
                      .over(Math.PI)
                      .times(0.0820)
                      .times(
                          number(1)
                              .plus(number(0.033).times(ANGLE_OF_DAY.apply(FunctionKind.COSINE))))
                      .times(
                          SUNSET_ANGLE
                              .times(LATITUDE.apply(FunctionKind.SINE))
                              .times(DECLINATION.apply(FunctionKind.SINE))
                              .plus(
                                  LATITUDE
                                      .apply(FunctionKind.COSINE)
                                      .times(DECLINATION.apply(FunctionKind.COSINE))
                                      .times(SUNSET_ANGLE.apply(FunctionKind.SINE))))))
          .band(SUN)
          .means("Radiation that would reach the ground without an atmosphere.")
          .source(PAPER + "equations 21 and 23 (verified).")
          .build();

  public static final Column DAYLIGHT =
      Column.calculated(
              WEATHER,
              "daylight",
              "Daylight hours",
              QuantityKind.HOURS,
              Formula.amount(24, Units.HOUR).times(SUNSET_ANGLE).over(Math.PI))
          .band(SUN)
          .means("Hours from sunrise to sunset.")
          .source(PAPER + "equation 34 (verified).")
          .build();

  public static final Column CLEAR_SKY_RADIATION =
      Column.calculated(
              WEATHER,
              "clear-sky-radiation",
              "Clear-sky radiation",
              QuantityKind.RADIATION,
              number(0.75)
                  .plus(number(0.00002).times(WeatherSite.ELEVATION.measuredIn(Units.METRE)))
                  .times(EXTRATERRESTRIAL_RADIATION))
          .band(SUN)
          .means("Solar radiation under a cloudless sky.")
          .source(PAPER + "equation 37 (verified).")
          .build();

  public static final Column SOLAR_RADIATION =
      Column.calculated(
              WEATHER,
              "solar-radiation",
              "Solar radiation",
              QuantityKind.RADIATION,
              Formula.when(Weather.SOLAR_RADIATION_MEASURED.given())
                  .then(Weather.SOLAR_RADIATION_MEASURED)
                  .otherwise(
                      Formula.when(Weather.SUNSHINE.given())
                          .then(fromSunshine())
                          .otherwise(fromTemperature())))
          .band(SUN)
          .means(
              "Solar radiation on flat ground: measured, else from sunshine hours, else from the spread of temperature.")
          .source(PAPER + "equations 35 and 50 (verified).")
          .build();

  public static final Column NET_LONG_WAVE =
      Column.calculated(
              WEATHER,
              "net-long-wave",
              "Net long-wave radiation",
              QuantityKind.RADIATION,
              megajoules(
                  number(4.903e-9)
                      .times(
                          kelvinToTheFourth(Weather.HIGHEST)
                              .plus(kelvinToTheFourth(Weather.LOWEST))
                              .over(2))
                      .times(
                          number(0.34)
                              .minus(
                                  number(0.14)
                                      .times(
                                          Vapour.inKilopascals(Weather.VAPOUR_PRESSURE)
                                              .apply(FunctionKind.SQUARE_ROOT))))
                      .times(
                          number(1.35)
                              .times(
                                  Formula.smaller(
                                      SOLAR_RADIATION.over(CLEAR_SKY_RADIATION), number(1)))
                              .minus(0.35))))
          .band(SUN)
          .means("Heat the ground loses to the sky.")
          .source(PAPER + "equation 39 (verified).")
          .build();

  public static final Column NET_RADIATION =
      Column.calculated(
              WEATHER,
              "net-radiation",
              "Net radiation",
              QuantityKind.RADIATION,
              number(0.77).times(SOLAR_RADIATION).minus(NET_LONG_WAVE))
          .band(SUN)
          .means("Radiation the grass keeps: what comes less what is reflected and given back.")
          .source(PAPER + "equations 38 and 40 (verified).")
          .build();

  private static Formula fromSunshine() {
    return number(0.25)
        .plus(number(0.5).times(Weather.SUNSHINE.over(DAYLIGHT)))
        .times(EXTRATERRESTRIAL_RADIATION);
  }

  private static Formula fromTemperature() {
    Formula spread = Vapour.celsius(Weather.HIGHEST).minus(Vapour.celsius(Weather.LOWEST));
    return Formula.smaller(
        WeatherSite.RADIATION_COEFFICIENT
            .times(spread.apply(FunctionKind.SQUARE_ROOT))
            .times(EXTRATERRESTRIAL_RADIATION),
        CLEAR_SKY_RADIATION);
  }

  private static Formula kelvinToTheFourth(Column temperature) {
    return Vapour.celsius(temperature).plus(273.16).power(4);
  }

  private static Formula megajoules(Term number) {
    return number.times(Formula.amount(1, Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY));
  }

  private Radiation() {}
}
