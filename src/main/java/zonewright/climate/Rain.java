package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.RAIN;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of rain and of the part of it that counts. */
public final class Rain {
  public static final String NONE = "none";
  public static final String SHARE = "fixed share";
  public static final String SCS = "USDA-SCS with storage";
  public static final String SCS_SIMPLE = "USDA-SCS simplified";
  public static final String DEPENDABLE = "FAO dependable rain";
  public static final String BY_DAYS = "day by day, from the record";

  private static final Formula NOTHING = Formula.zero(QuantityKind.DEPTH);

  public static final Column METHOD =
      Column.choice(
              SITE,
              "rain-method",
              "Effective rain",
              new WordList.Fixed(List.of(NONE, SHARE, SCS, SCS_SIMPLE, DEPENDABLE, BY_DAYS)),
              NONE)
          .band(RAIN)
          .means(
              "How much of the monthly rain counts. None is the safe choice for a baseline: a weather-based controller takes rain off"
                  + " day by day. All methods but the last are for whole months; that takes what the sheet Record says.")
          .build();

  /** Says that some of the rain counts. */
  public static final Condition COUNTS = by(NONE).negated();

  public static final Column COUNTED_SHARE =
      Column.defaulted(
              SITE, "rain-share", "Share of rain that counts", QuantityKind.SHARE, number(0.25))
          .band(RAIN)
          .within(Bounds.from(0, 1, Units.ONE))
          .means("Part of the month's rain that counts, where a fixed share is chosen.")
          .source(
              "A quarter, as in the WaterSense water budget (from memory); local rules may say otherwise.")
          .build();

  public static final Column USABLE_STORAGE =
      Column.defaulted(
              SITE,
              "usable-storage",
              "Usable soil storage",
              QuantityKind.DEPTH,
              Formula.amount(1, Units.INCH))
          .band(RAIN)
          .within(Bounds.from(0.2, 7, Units.INCH))
          .means(
              "Depth of rain the root zone can take up between waterings; counts only in the USDA-SCS method with storage. Shallow"
                  + " turf has well under 3 in.")
          .source("One inch for shallow landscape roots: common practice, no source.")
          .build();

  /** Mean landscape coefficient of the site, by area; declared with the zones it is made from. */
  public static final Column MEAN_COEFFICIENT =
      Column.defaulted(
              SITE, "rain-coefficient", "Coefficient for rain", QuantityKind.FACTOR, number(1))
          .band(RAIN)
          .within(Bounds.above(0, 2, Units.ONE))
          .means(
              "Landscape coefficient by which the USDA-SCS method with storage finds the site's water use; 1 counts the site as a field"
                  + " of reference grass.")
          .source("One unless typed: the reference surface itself.")
          .build();

  public static final Column MONTH_RAIN =
      Column.input(MONTHS, "rain", "Rain", QuantityKind.DEPTH)
          .band(RAIN)
          .within(Bounds.from(0, 200, Units.INCH))
          .optional()
          .means("Mean rain of the month.")
          .build();

  public static final Column EFFECTIVE =
      Column.calculated(
              MONTHS,
              "effective-rain",
              "Effective rain",
              QuantityKind.DEPTH,
              Formula.when(by(NONE))
                  .then(NOTHING)
                  .otherwise(
                      Formula.when(by(SHARE))
                          .then(MONTH_RAIN.times(COUNTED_SHARE))
                          .otherwise(
                              Formula.when(by(SCS))
                                  .then(withStorage())
                                  .otherwise(
                                      Formula.when(by(SCS_SIMPLE))
                                          .then(simplified())
                                          .otherwise(
                                              Formula.when(by(DEPENDABLE))
                                                  .then(dependable())
                                                  .otherwise(
                                                      RecordedWeather.EFFECTIVE_RAIN.inRow(
                                                          Climate.NUMBER)))))))
          .band(RAIN)
          .means("The part of the month's rain that plants can use.")
          .source(
              "USDA-SCS with storage: NEH part 623 chapter 2, equations 2-84 and 2-85; simplified USDA-SCS and FAO dependable rain:"
                  + " all verified (secondary) in an open effective-precipitation library.")
          .build();

  public static final Column DAILY_EFFECTIVE =
      Column.calculated(
              MONTHS,
              "daily-effective-rain",
              "Effective rain a day",
              QuantityKind.DAILY_DEPTH,
              EFFECTIVE.over(Climate.DAYS))
          .band(RAIN)
          .means("Effective rain of a mean day of the month.")
          .source("By definition.")
          .build();

  private static Condition by(String method) {
    return METHOD.is(method);
  }

  /**
   * NEH part 623 chapter 2, equations 2-84 and 2-85; inches; the coefficient stands outside the
   * power.
   */
  private static Formula withStorage() {
    Formula storage = USABLE_STORAGE.measuredIn(Units.INCH);
    Formula factor =
        number(0.531747)
            .plus(number(0.295164).times(storage))
            .minus(number(0.057697).times(storage.power(2)))
            .plus(number(0.003804).times(storage.power(3)));
    Formula use = Climate.REFERENCE_ET.times(MEAN_COEFFICIENT);
    Formula rain = MONTH_RAIN.measuredIn(Units.INCH);
    Formula inches =
        factor
            .times(number(0.70917).times(rain.power(0.82416)).minus(0.11556))
            .times(number(10).power(number(0.02426).times(use.measuredIn(Units.INCH))));
    return Formula.larger(
        NOTHING,
        Formula.smaller(
            inches.times(Formula.amount(1, Units.INCH)), Formula.smaller(MONTH_RAIN, use)));
  }

  private static Formula simplified() {
    Formula rain = MONTH_RAIN.measuredIn(Units.MILLIMETRE);
    Formula millimetre = Formula.amount(1, Units.MILLIMETRE);
    return Formula.when(rain.atMost(250))
        .then(rain.times(number(125).minus(number(0.2).times(rain))).over(125).times(millimetre))
        .otherwise(number(125).plus(number(0.1).times(rain)).times(millimetre));
  }

  private static Formula dependable() {
    Formula rain = MONTH_RAIN.measuredIn(Units.MILLIMETRE);
    Formula millimetre = Formula.amount(1, Units.MILLIMETRE);
    return Formula.when(rain.atMost(70))
        .then(Formula.larger(NOTHING, number(0.6).times(rain).minus(10).times(millimetre)))
        .otherwise(number(0.8).times(rain).minus(24).times(millimetre));
  }

  private Rain() {}
}
