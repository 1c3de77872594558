package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.EVAPOTRANSPIRATION;
import static zonewright.trade.Sheets.WEATHER;

import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the weather sheet that calculate reference evapotranspiration. */
public final class CalculatedEt {
  private static final String PAPER = "FAO Irrigation and Drainage Paper 56 (1998), ";
  private static final Formula MILLIMETRE_A_DAY = Formula.amount(1, Units.MILLIMETRE_PER_DAY);

  public static final Column SOIL_HEAT_FLUX =
      Column.defaulted(
              WEATHER,
              "soil-heat-flux",
              "Soil heat flux",
              QuantityKind.RADIATION,
              number(0.07)
                  .times(neighbour(1).minus(neighbour(-1)))
                  .times(Formula.amount(1, Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY)))
          .band(EVAPOTRANSPIRATION)
          .within(Bounds.from(-5, 5, Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY))
          .means(
              "Heat that goes into the ground, from the mean temperatures of the next and the last month. Type 0 where only one"
                  + " month is known.")
          .source(PAPER + "equation 43 (verified).")
          .build();

  public static final Column PENMAN_MONTEITH =
      Column.calculated(
              WEATHER,
              "penman-monteith",
              "Penman-Monteith ET",
              QuantityKind.DAILY_DEPTH,
              penmanMonteith().times(MILLIMETRE_A_DAY))
          .band(EVAPOTRANSPIRATION)
          .means(
              "Reference evapotranspiration of a mean day from temperature, humidity, wind and sun.")
          .source(PAPER + "equation 6 (verified).")
          .build();

  public static final Column HARGREAVES =
      Column.calculated(
              WEATHER,
              "hargreaves",
              "Hargreaves ET",
              QuantityKind.DAILY_DEPTH,
              number(0.0023)
                  .times(Formula.larger(number(0), Weather.MEAN_TEMPERATURE.plus(17.8)))
                  .times(
                      Vapour.celsius(Weather.HIGHEST)
                          .minus(Vapour.celsius(Weather.LOWEST))
                          .apply(FunctionKind.SQUARE_ROOT))
                  .times(0.408)
                  .times(
                      Radiation.EXTRATERRESTRIAL_RADIATION.measuredIn(
                          Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY))
                  .times(MILLIMETRE_A_DAY))
          .band(EVAPOTRANSPIRATION)
          .means(
              "Reference evapotranspiration of a mean day from temperatures and latitude alone; none where the mean temperature is"
                  + " -17.8 °C or less. Runs low in wind above 3 m/s and high in humid air.")
          .source(PAPER + "equation 52, radiation as depth of water by equation 20 (verified).")
          .build();

  private static Formula penmanMonteith() {
    Column slope = Weather.SLOPE_OF_SATURATION;
    Column gamma = WeatherSite.PSYCHROMETRIC_CONSTANT;
    Formula wind = Weather.WIND_AT_TWO_METRES.measuredIn(Units.METRE_PER_SECOND);
    Formula energy =
        Radiation.NET_RADIATION
            .minus(SOIL_HEAT_FLUX)
            .measuredIn(Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY);
    Formula deficit =
        Vapour.inKilopascals(Weather.SATURATION_PRESSURE.minus(Weather.VAPOUR_PRESSURE));
    Formula radiationTerm = number(0.408).times(slope).times(energy);
    Formula windTerm =
        gamma.times(900).over(Weather.MEAN_TEMPERATURE.plus(273)).times(wind).times(deficit);
    Formula below = slope.plus(gamma.times(number(1).plus(number(0.34).times(wind))));
    return Formula.larger(number(0), radiationTerm.plus(windTerm).over(below));
  }

  /** The mean temperature of the month after or before; the year goes round. */
  private static Formula neighbour(int step) {
    Column position = Weather.NUMBER;
    Formula moved =
        step > 0
            ? Formula.when(position.atLeast(12)).then(1).otherwise(position.plus(1))
            : Formula.when(position.atMost(1)).then(12).otherwise(position.minus(1));
    return Weather.MEAN_TEMPERATURE.inRow(moved);
  }

  private CalculatedEt() {}
}
