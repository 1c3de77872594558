package zonewright.climate;

import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.MONTHS;
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

/** Columns of the climate, on the site and month by month. */
public final class Climate {
  /** Published monthly reference evapotranspiration, by place. */
  public static final ReferenceTable PLACES =
      ReferenceTable.read(Climate.class, "reference-et.csv", "Places");

  /** The months, in their order. */
  public static final List<String> MONTH_NAMES =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");

  private static final List<ReferenceTable.Numbers> PLACE_MONTHS =
      MONTH_NAMES.stream()
          .map(month -> PLACES.numbers(month.substring(0, 3) + " (in)", QuantityKind.DEPTH))
          .toList();

  public static final Column PLACE =
      Column.choice(SITE, "place", "Climate place", new WordList.Published(PLACES))
          .band(CLIMATE)
          .optional()
          .means(
              "The place whose published reference evapotranspiration fills the months. Leave it blank and type the months where"
                  + " you have values of your own.")
          .build();

  public static final Column MONTH =
      Column.words(MONTHS, "month", "Month").band(CLIMATE).means("The month.").build();

  public static final Column NUMBER =
      Column.input(MONTHS, "number", "Number", QuantityKind.COUNT)
          .band(CLIMATE)
          .within(Bounds.from(1, 12, Units.ONE).wholeNumbers())
          .means("The month's place in the year.")
          .build();

  public static final Column DAYS =
      Column.input(MONTHS, "days", "Days", QuantityKind.DAYS)
          .band(CLIMATE)
          .within(Bounds.from(28, 31, Units.DAY).wholeNumbers())
          .means("Days in the month; February has 28.")
          .build();

  /** Says that a climate place gives the published values. */
  public static final Condition PRINTED =
      WeatherSite.comesBy(WeatherSite.PUBLISHED).and(PLACE.given());

  private static final List<String> ORIGINS =
      List.of(
          "typed by month",
          "published for the place; the table Places names the source",
          "calculated by Penman-Monteith from the weather sheet",
          "calculated by Hargreaves from the weather sheet",
          "a general description of the climate only",
          "years of measured weather; the site names the record");

  public static final Column ORIGIN =
      Column.calculatedWord(
              SITE,
              "et-origin",
              "Origin of reference ET",
              new WordList.Fixed(ORIGINS),
              Formula.when(WeatherSite.comesBy(WeatherSite.PENMAN_MONTEITH))
                  .then(2)
                  .otherwise(
                      Formula.when(WeatherSite.comesBy(WeatherSite.HARGREAVES))
                          .then(3)
                          .otherwise(
                              Formula.when(WeatherSite.comesBy(WeatherSite.DESCRIPTION))
                                  .then(4)
                                  .otherwise(
                                      Formula.when(WeatherSite.comesBy(WeatherSite.RECORD))
                                          .then(5)
                                          .otherwise(
                                              Formula.when(PLACE.given()).then(1).otherwise(0))))))
          .band(CLIMATE)
          .means(
              "Where the reference ET of this design comes from and what that is worth; all water, times and budgets rest on it."
                  + " Months typed over those of a place are your own.")
          .source(
              "From the choices above; the table Places says row by row what its figures are worth.")
          .build();

  private static final Formula PUBLISHED_ET = Formula.lookup(PLACE, PLACE_MONTHS, NUMBER);

  public static final Column REFERENCE_ET =
      Column.defaulted(
              MONTHS,
              "reference-et",
              "Reference ET",
              QuantityKind.DEPTH,
              Formula.when(WeatherSite.comesBy(WeatherSite.PENMAN_MONTEITH))
                  .then(calculated(CalculatedEt.PENMAN_MONTEITH))
                  .otherwise(
                      Formula.when(WeatherSite.comesBy(WeatherSite.HARGREAVES))
                          .then(calculated(CalculatedEt.HARGREAVES))
                          .otherwise(
                              Formula.when(WeatherSite.comesBy(WeatherSite.RECORD))
                                  .then(RecordedWeather.USED.inRow(NUMBER))
                                  .otherwise(PUBLISHED_ET))))
          .band(CLIMATE)
          .originIn(ORIGIN)
          .within(Bounds.from(0, 20, Units.INCH))
          .means(
              "Reference evapotranspiration of the month: the water a wide field of short, well-watered grass gives to the air."
                  + " Published for the climate place, from the weather record or calculated from the weather sheet, as the site says, unless"
                  + " typed.")
          .source(
              "Published monthly values, row by row in the table Places; or the weather sheet. The reference surface is that of FAO"
                  + " Irrigation and Drainage Paper 56 (1998).")
          .build();

  public static final Column DAILY_REFERENCE_ET =
      Column.calculated(
              MONTHS,
              "daily-reference-et",
              "Mean daily reference ET",
              QuantityKind.DAILY_DEPTH,
              REFERENCE_ET.over(DAYS))
          .band(CLIMATE)
          .means("Reference evapotranspiration of a mean day of the month.")
          .source("By definition.")
          .build();

  public static final Column YEAR_REFERENCE_ET =
      Column.calculated(
              SITE,
              "year-reference-et",
              "Reference ET of the year",
              QuantityKind.DEPTH,
              REFERENCE_ET.sum())
          .band(CLIMATE)
          .means("Reference evapotranspiration of all twelve months.")
          .source("By definition.")
          .build();

  public static final Column PRINTED_YEAR =
      Column.calculated(
              SITE,
              "printed-year",
              "Reference ET of the year as printed",
              QuantityKind.DEPTH,
              Formula.when(PRINTED)
                  .then(PLACES.numbers("Annual (in)", QuantityKind.DEPTH).of(PLACE))
                  .otherwise(
                      Formula.doesNotApply(
                          "not printed", "No published values of a climate place are used.")))
          .band(CLIMATE)
          .originIn(ORIGIN)
          .means(
              "The annual value printed beside the months of the climate place. It can differ a little from their sum: both were rounded.")
          .source("Table Places, row by row.")
          .build();

  private static Formula calculated(Column daily) {
    return daily.inRow(NUMBER).times(DAYS);
  }

  private Climate() {}
}
