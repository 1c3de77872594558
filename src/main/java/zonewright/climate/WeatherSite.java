package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the site that say where its reference evapotranspiration comes from. */
public final class WeatherSite {
  public static final String PUBLISHED = "published or typed";
  public static final String PENMAN_MONTEITH = "Penman-Monteith";
  public static final String HARGREAVES = "Hargreaves";
  public static final String RECORD = "weather record";
  public static final String DESCRIPTION = "general description";

  /** Ranges of reference evapotranspiration by a description of the climate. */
  public static final ReferenceTable DESCRIPTIONS =
      ReferenceTable.read(WeatherSite.class, "climate-descriptions.csv", "Climates");

  public static final Column ET_METHOD =
      Column.choice(
              SITE,
              "et-method",
              "Reference ET from",
              new WordList.Fixed(
                  List.of(PUBLISHED, RECORD, PENMAN_MONTEITH, HARGREAVES, DESCRIPTION)),
              PUBLISHED)
          .band(CLIMATE)
          .means(
              "Where the monthly reference evapotranspiration comes from, in order of trust: published monthly values (or your own,"
                  + " typed into Months); years of measured weather, read from a file into the sheet Record; calculated from the weather sheet by Penman-Monteith; from temperatures alone by Hargreaves; or"
                  + " only a general description of the climate, good for a first guess.")
          .build();

  public static final Column DESCRIBED_CLIMATE =
      Column.choice(
              SITE,
              "described-climate",
              "Climate description",
              new WordList.Published(DESCRIPTIONS))
          .band(CLIMATE)
          .optional()
          .means(
              "What the climate of the peak season is like. Counts only where reference ET comes from a general description; the"
                  + " top of the range is taken.")
          .source(
              "FAO Irrigation and Drainage Paper 56 (1998), Table 2 (verified). FAO calls the values an orientation, not for"
                  + " direct use.")
          .build();

  public static final Column WEATHER_FROM =
      Column.words(SITE, "weather-from", "Weather from")
          .band(CLIMATE)
          .optional()
          .means(
              "Where the months on the sheet Weather come from. Written when a place is taken whose weather was read; write it yourself"
                  + " where you type weather of your own.")
          .build();

  public static final Column LATITUDE =
      Column.input(SITE, "latitude", "Latitude", QuantityKind.ANGLE)
          .band(CLIMATE)
          .within(Bounds.from(-66, 66, Units.DEGREE))
          .optional()
          .means(
              "How far north of the equator; south is negative. Needed to calculate reference ET from weather. Between the polar"
                  + " circles only: beyond, the sun does not rise and set every day.")
          .build();

  public static final Column ELEVATION =
      Column.input(SITE, "elevation", "Elevation", QuantityKind.LENGTH)
          .band(CLIMATE)
          .within(Bounds.from(-430, 6000, Units.METRE))
          .decimals(0, 0)
          .optional()
          .means("Height above the sea. Needed to calculate reference ET from weather.")
          .build();

  public static final Column WIND_HEIGHT =
      Column.defaulted(
              SITE,
              "wind-height",
              "Wind measured at",
              QuantityKind.LENGTH,
              Formula.amount(2, Units.METRE))
          .band(CLIMATE)
          .within(Bounds.from(0.5, 50, Units.METRE))
          .means(
              "Height above the ground at which the wind was measured; weather stations use 2 or 10 m.")
          .source("FAO Irrigation and Drainage Paper 56 (1998): the equation wants wind at 2 m.")
          .build();

  public static final Column RADIATION_COEFFICIENT =
      Column.defaulted(
              SITE,
              "radiation-coefficient",
              "Radiation coefficient",
              QuantityKind.FACTOR,
              number(0.16))
          .band(CLIMATE)
          .within(Bounds.from(0.1, 0.25, Units.ONE))
          .means(
              "How radiation follows from the spread of temperature where neither sunshine nor radiation is known: 0.16 inland,"
                  + " 0.19 on a coast.")
          .source("FAO Irrigation and Drainage Paper 56 (1998), equation 50 (verified).")
          .build();

  public static final Column AIR_PRESSURE =
      Column.calculated(
              SITE,
              "air-pressure",
              "Air pressure",
              QuantityKind.VAPOUR_PRESSURE,
              Vapour.kilopascals(
                  number(101.3)
                      .times(
                          number(293)
                              .minus(number(0.0065).times(ELEVATION.measuredIn(Units.METRE)))
                              .over(293)
                              .power(5.26))))
          .band(CLIMATE)
          .decimals(1, 1)
          .means("Mean pressure of the air at the site's elevation.")
          .source("FAO Irrigation and Drainage Paper 56 (1998), equation 7 (verified).")
          .build();

  public static final Column PSYCHROMETRIC_CONSTANT =
      Column.calculated(
              SITE,
              "psychrometric-constant",
              "Psychrometric constant",
              QuantityKind.FACTOR,
              number(0.000665).times(Vapour.inKilopascals(AIR_PRESSURE)))
          .band(CLIMATE)
          .decimals(4, 4)
          .means("Psychrometric constant, in kPa per degree Celsius.")
          .source("FAO Irrigation and Drainage Paper 56 (1998), equation 8 (verified).")
          .build();

  private WeatherSite() {}

  /** Says: reference evapotranspiration comes by {@code method}. */
  static Condition comesBy(String method) {
    return ET_METHOD.is(method);
  }
}
