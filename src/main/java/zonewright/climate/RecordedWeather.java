package zonewright.climate;

import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.EVAPOTRANSPIRATION;
import static zonewright.trade.Sheets.MEASURED;
import static zonewright.trade.Sheets.RECORD;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what years of weather come to: each month, and the hottest spans of days. */
public final class RecordedWeather {
  public static final String MEAN_OF_THE_YEARS = "mean of the years";
  public static final String FIVE_OF_TEN = "5 years of 10";
  public static final String EIGHT_OF_TEN = "8 years of 10";
  public static final String NINE_OF_TEN = "9 years of 10";

  private static final String MADE =
      "From the days of a weather file, month by month of each year. ";
  private static final String PLACED =
      "The m-th smallest of n years stands for m ÷ (n + 1) of them (Weibull's plotting position, from memory).";

  public static final Column YEARS_COVERED =
      Column.choice(
              SITE,
              "years-covered",
              "Years covered",
              new WordList.Fixed(
                  List.of(MEAN_OF_THE_YEARS, FIVE_OF_TEN, EIGHT_OF_TEN, NINE_OF_TEN)),
              EIGHT_OF_TEN)
          .band(CLIMATE)
          .means(
              "Where reference ET comes from a weather record: in how many years of ten a month shall ask no more than the design gives."
                  + " A baseline made for the mean is too small in about every second year; 8 of 10 is common practice.")
          .build();

  public static final Column ORIGIN =
      Column.words(SITE, "record-origin", "Weather record")
          .band(CLIMATE)
          .optional()
          .means(
              "Which file the sheet Record was made from, of which place and years, and how evapotranspiration was found.")
          .build();

  public static final Column SEASON =
      Column.words(SITE, "record-season", "Season without frost")
          .band(CLIMATE)
          .optional()
          .means("First and last frost, from the weather record.")
          .build();

  public static final Column SPAN =
      Column.words(RECORD, "span", "Span")
          .band(MEASURED)
          .means("A month, or the hottest days in a row of each year.")
          .build();

  public static final Column DAYS =
      Column.input(RECORD, "days", "Days", QuantityKind.DAYS)
          .band(MEASURED)
          .within(Bounds.from(1, 31, Units.DAY).wholeNumbers())
          .means("Days in the span; February has 28.")
          .build();

  public static final Column YEARS =
      Column.input(RECORD, "years", "Years", QuantityKind.COUNT)
          .band(MEASURED)
          .within(Bounds.from(0, 300, Units.ONE).wholeNumbers())
          .optional()
          .means(
              "Years that count: those in which at most 5 days of the month are missing, and at most 3 in a row.")
          .source("NOAA, US Climate Reference Network, README of monthly01 (verified).")
          .build();

  public static final Column MEAN =
      depth("mean", "Mean ET", "Mean reference evapotranspiration of the span.", MADE);

  public static final Column IN_FIVE = share(5);
  public static final Column IN_EIGHT = share(8);
  public static final Column IN_NINE = share(9);

  public static final Column RAIN =
      depth(
          "rain",
          "Rain",
          "Mean rain of the month.",
          MADE + "Months with a day missing do not count.");

  public static final Column EFFECTIVE_RAIN =
      depth(
          "effective-rain",
          "Effective rain by days",
          "Mean of the rain that fills the root zone up, followed day by day: what falls beyond the storage is lost, and rain below a"
              + " fifth of the day's reference ET counts as nothing.",
          "FAO Irrigation and Drainage Paper 56 (1998), chapter 8, equation 85 (verified), for grass that is watered when the storage is"
              + " used up; that is a choice of this program.");

  public static final Column FROST =
      days(
          "frost-days",
          "Days with frost",
          "Mean number of days whose lowest temperature is below 0 °C.");

  public static final Column GROWING =
      days(
          "growing-days",
          "Growing days",
          "Mean number of days of 5 °C and more, on which cool-season grass grows; warm-season grass wants about twice that.");

  public static final Column USED =
      Column.calculated(
              RECORD,
              "used",
              "ET used",
              QuantityKind.DEPTH,
              Formula.when(YEARS_COVERED.is(MEAN_OF_THE_YEARS))
                  .then(MEAN)
                  .otherwise(
                      Formula.when(YEARS_COVERED.is(FIVE_OF_TEN))
                          .then(IN_FIVE)
                          .otherwise(
                              Formula.when(YEARS_COVERED.is(EIGHT_OF_TEN))
                                  .then(IN_EIGHT)
                                  .otherwise(IN_NINE))))
          .band(EVAPOTRANSPIRATION)
          .means("Reference ET of the span, for as many years of ten as the site says.")
          .source("By definition.")
          .build();

  public static final Column USED_A_DAY =
      Column.calculated(
              RECORD, "used-a-day", "ET used a day", QuantityKind.DAILY_DEPTH, USED.over(DAYS))
          .band(EVAPOTRANSPIRATION)
          .means("The same on a mean day of the span.")
          .source("By definition.")
          .build();

  private static Column share(int tenths) {
    return depth(
        "in-" + tenths,
        "Not exceeded in %s of 10".formatted(tenths),
        "Reference evapotranspiration of the span that was not exceeded in %s years of 10."
            .formatted(tenths),
        MADE + PLACED);
  }

  private static Column depth(String id, String name, String meaning, String source) {
    return Column.input(RECORD, id, name, QuantityKind.DEPTH)
        .band(MEASURED)
        .within(Bounds.from(0, 200, Units.INCH))
        .optional()
        .means(meaning)
        .source(source)
        .build();
  }

  private static Column days(String id, String name, String meaning) {
    return Column.input(RECORD, id, name, QuantityKind.DAYS)
        .band(MEASURED)
        .within(Bounds.from(0, 31, Units.DAY))
        .decimals(1, 1)
        .optional()
        .means(meaning)
        .source(MADE + "The limit is common practice, no source.")
        .build();
  }

  private RecordedWeather() {}
}
