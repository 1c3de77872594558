package zonewright.water;

import static zonewright.trade.Sheets.MONTHLY;
import static zonewright.trade.Sheets.NIGHT_RULES;
import static zonewright.trade.Sheets.SCHEDULE;
import static zonewright.trade.Sheets.ZONES;
import static zonewright.trade.Sheets.ZONE_NIGHTS;

import zonewright.climate.Peak;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.soil.Salinity;
import zonewright.soil.SoilLayers;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns from what the plants need to the minutes of a watering day. */
public final class Demand {
  private static final Formula WEEK = Formula.amount(7, Units.DAY);

  /** Greatest need of a month; declared with the months it is found in. */
  static final Reference GREATEST_NEED =
      new Reference(MONTHLY, "greatest-need", "Greatest need", QuantityKind.DAILY_DEPTH);

  public static final Column PEAK_NEED =
      Column.calculated(
              ZONES,
              "peak-need",
              "Need in the site's peak month",
              QuantityKind.DAILY_DEPTH,
              Formula.larger(
                  Formula.zero(QuantityKind.DAILY_DEPTH),
                  Peak.REFERENCE_ET.times(Plants.LANDSCAPE_COEFFICIENT).minus(Peak.EFFECTIVE_RAIN)))
          .band(SCHEDULE)
          .means(
              "Depth of water the planting needs on a mean day of the site's peak month, less the rain that counts.")
          .source(
              "Landscape evapotranspiration = landscape coefficient × reference evapotranspiration (landscape coefficient method,"
                  + " 2000), less effective rain; never below 0.")
          .build();

  public static final Column NET_DEMAND =
      Column.calculated(
              ZONES,
              "net-demand",
              "Net demand",
              QuantityKind.DAILY_DEPTH,
              Formula.when(
                      Peak.ZONE_BY_ZONE.or(
                          PEAK_NEED.atMost(Formula.zero(QuantityKind.DAILY_DEPTH))))
                  .then(GREATEST_NEED)
                  .otherwise(PEAK_NEED))
          .band(SCHEDULE)
          .means(
              "Depth of water a day that 100 % of the zone stands for: its need in the site's peak month; or its greatest need of a"
                  + " month, where the site says so or where rain covers its need in the site's peak month.")
          .source("By definition.")
          .build();

  private static final Condition NEVER_NEEDS =
      NET_DEMAND.atMost(Formula.zero(QuantityKind.DAILY_DEPTH));

  public static final Column RUN_TIME_MULTIPLIER =
      Column.calculated(
              ZONES,
              "run-time-multiplier",
              "Run-time multiplier",
              QuantityKind.FACTOR,
              Formula.number(1)
                  .over(
                      Formula.number(0.4)
                          .plus(Formula.number(0.6).times(Emitters.DISTRIBUTION_UNIFORMITY))))
          .band(SCHEDULE)
          .means(
              "How much longer the valve runs so that the drier parts get enough; 1 where the water is perfectly even.")
          .source(
              "Scheduling multiplier 1 ÷ (0.4 + 0.6 × lower-quarter uniformity), verified (secondary). Not the 1 ÷ uniformity of"
                  + " the WaterSense budget.")
          .build();

  public static final Column GROSS_DEMAND =
      Column.calculated(
              ZONES,
              "gross-demand",
              "Gross demand",
              QuantityKind.DAILY_DEPTH,
              Formula.when(
                      SiteRules.GROSS_METHOD
                          .is(SiteRules.BY_EFFICIENCY)
                          .and(Emitters.RATE_IS_NET.negated()))
                  .then(NET_DEMAND.over(Emitters.IRRIGATION_EFFICIENCY))
                  .otherwise(NET_DEMAND.times(RUN_TIME_MULTIPLIER))
                  .over(Formula.number(1).minus(Salinity.LEACHING_REQUIREMENT)))
          .band(SCHEDULE)
          .means(
              "Depth of water to apply on a mean day of the peak month. Where the rate is what cans caught, the losses are off it already:"
                  + " it is never divided by an efficiency again, only lengthened for the unevenness.")
          .source(
              "Net depth × run-time multiplier; or total water applied = evapotranspiration ÷ irrigation efficiency (landscape"
                  + " coefficient method, 2000, verified). Either ÷ (1 − leaching requirement): FAO Irrigation and Drainage Paper 29"
                  + " (1985), equation 7.")
          .build();

  public static final Column NEED_PER_WEEK =
      Column.calculated(
              ZONES,
              "need-per-week",
              "Run time needed a week",
              QuantityKind.MINUTES,
              GROSS_DEMAND
                  .times(WEEK)
                  .over(Emitters.PRECIPITATION_RATE)
                  .times(TuningPercents.both()))
          .band(SCHEDULE)
          .decimals(1, 1)
          .means(
              "Minutes of watering that the plants need in a week of the peak month, before rounding and whatever a stage forbids; the tuning of site and zone is in it.")
          .source(
              "Minutes = 60 × depth ÷ precipitation rate: Ohio State University Extension, Bulletin 912, step 11 (verified); times"
                  + " the tuning of site and zone.")
          .build();

  public static final Column RUN_TIME_PER_WEEK =
      Column.calculated(
              ZONES,
              "run-time-per-week",
              "Run time a week",
              QuantityKind.MINUTES,
              NEED_PER_WEEK.times(DroughtStages.KEPT))
          .band(SCHEDULE)
          .decimals(1, 1)
          .means(
              "Minutes of watering that a week of the peak month asks for, before rounding: what is needed, less the cut of the stage in force.")
          .source("Run time needed a week × what the stage leaves; all of it without a stage.")
          .build();

  public static final Column DEPLETION_USED =
      Column.calculated(
              ZONES,
              "depletion-used",
              "Depletion used",
              QuantityKind.SHARE,
              Formula.when(SiteRules.DEPLETION_METHOD.is(SiteRules.BY_DEMAND))
                  .then(adjustedDepletion())
                  .otherwise(Plants.ALLOWED_DEPLETION))
          .band(SCHEDULE)
          .means("The allowed depletion the schedule goes by: as given, or adjusted to the demand.")
          .source(
              "p + 0.04 × (5 − mm a day), kept within 0.1 and 0.8: FAO Irrigation and Drainage Paper 56 (1998), page 167 and Table 22"
                  + " (verified).")
          .build();

  public static final Column DEPLETION_DEPTH =
      Column.calculated(
              ZONES,
              "depletion-depth",
              "Depletion depth",
              QuantityKind.DEPTH,
              SoilLayers.WATER_HELD.times(DEPLETION_USED))
          .band(SCHEDULE)
          .means("Depth of water that may be used up between two waterings.")
          .source("FAO Irrigation and Drainage Paper 56 (1998), equation 83 (verified).")
          .build();

  public static final Column LONGEST_INTERVAL =
      Column.calculated(
              ZONES,
              "longest-interval",
              "Longest interval",
              QuantityKind.DAYS,
              Formula.when(NEVER_NEEDS)
                  .then(
                      Formula.doesNotApply(
                          "no watering", "Rain covers what the plants need in every month."))
                  .otherwise(
                      Formula.larger(
                          Formula.amount(1, Units.DAY),
                          DEPLETION_DEPTH.over(NET_DEMAND).roundedDownTo(Units.DAY))))
          .band(SCHEDULE)
          .means("Most whole days from one watering to the next, at least one.")
          .source(
              "Days = allowed depletion ÷ daily use, rounded down: the safe side. Practice as in the extension examples of the"
                  + " precision agriculture tutorial on irrigation water management (verified).")
          .build();

  public static final Column DAYS_NEEDED =
      Column.calculated(
              ZONES,
              "days-needed",
              "Watering days needed",
              QuantityKind.COUNT,
              WEEK.over(LONGEST_INTERVAL).roundedUpTo(Units.ONE))
          .band(SCHEDULE)
          .means(
              "Fewest days a week, evenly spread, whose longest gap keeps to the longest interval.")
          .source(
              "Days evenly spread over a week leave gaps of at most 7 ÷ days, rounded up to whole days.")
          .build();

  public static final Column WATERING_DAYS =
      Column.defaulted(
              ZONES,
              "watering-days",
              "Watering days",
              QuantityKind.COUNT,
              Formula.when(WateringPattern.ON_SITE_NIGHTS)
                  .then(
                      Formula.when(NEVER_NEEDS)
                          .then(1)
                          .otherwise(
                              Formula.smaller(
                                  fewestDays(1),
                                  Formula.smaller(SiteRules.DAYS_ALLOWED, AllowedDays.BY_RULE))))
                  .otherwise(WateringPattern.PATTERN_A_WEEK.roundedUpTo(Units.ONE)))
          .band(SCHEDULE)
          .within(Bounds.from(1, 7, Units.ONE).wholeNumbers())
          .means(
              "Days a week the zone is watered: the fewest whose longest gap keeps to the longest interval, and no more than allowed,"
                  + " unless typed. For a zone with days of its own as many as those, in the fullest week.")
          .source(
              "By counting gaps of the weekdays allowed; a finding tells where they do not suffice.")
          .build();

  /** Whatever days a zone is given, a stage or a rule may leave fewer. */
  private static final Formula ALLOWED_DAYS = Formula.smaller(WATERING_DAYS, AllowedDays.BY_RULE);

  public static final Column WATERINGS_A_WEEK =
      Column.calculated(
              ZONE_NIGHTS,
              "waterings-a-week",
              "Waterings a week",
              QuantityKind.FACTOR,
              Formula.when(WateringPattern.ON_SITE_NIGHTS)
                  .then(ALLOWED_DAYS)
                  .otherwise(WateringPattern.PATTERN_A_WEEK))
          .band(NIGHT_RULES)
          .decimals(1, 1)
          .means("How often a week it really waters, on average.")
          .source(
              "Its watering days, as far as a stage or a rule allows them; or what its own pattern comes to.")
          .build();

  public static final Column LONGEST_GAP =
      Column.calculated(
              ZONES,
              "longest-gap",
              "Longest gap",
              QuantityKind.DAYS,
              Formula.when(WateringPattern.ON_SITE_NIGHTS)
                  .then(Formula.nth(ALLOWED_DAYS, AllowedDays.LONGEST_GAPS))
                  .otherwise(WateringPattern.PATTERN_GAP))
          .band(SCHEDULE)
          .means("Days from one watering to the next at the widest place of the week.")
          .source("From the weekdays allowed, or evenly spread; the week goes round.")
          .build();

  public static final Column RUN_TIME =
      Column.calculated(
              ZONES,
              "run-time",
              "Run time a watering day",
              QuantityKind.MINUTES,
              onAWateringDay(RUN_TIME_PER_WEEK))
          .band(SCHEDULE)
          .means(
              "Minutes of watering on each watering day: the week's demand over the days it really has, rounded up to the controller's step.")
          .source("Run time a week ÷ waterings a week, rounded up once.")
          .build();

  /** Returns the minutes to key in for a watering day that a week's minutes come to. */
  static Formula onAWateringDay(Term week) {
    return Controller.roundedUp(week.over(WATERINGS_A_WEEK));
  }

  /**
   * Returns the part of the zone's baseline that a need a day comes to: nothing where rain covers
   * what the plants need in every month.
   */
  public static Formula partOfBaseline(Term need) {
    return Formula.when(NEVER_NEEDS).then(0).otherwise(need.over(NET_DEMAND));
  }

  private static Formula adjustedDepletion() {
    Formula use =
        Peak.REFERENCE_ET.times(Plants.LANDSCAPE_COEFFICIENT).measuredIn(Units.MILLIMETRE_PER_DAY);
    Formula adjusted =
        Plants.ALLOWED_DEPLETION.plus(Formula.number(0.04).times(Formula.number(5).minus(use)));
    return Formula.larger(Formula.number(0.1), Formula.smaller(Formula.number(0.8), adjusted));
  }

  /** The fewest days from {@code days} on whose gap keeps to the interval; 7 where none does. */
  private static Formula fewestDays(int days) {
    if (days == 7) {
      return Formula.number(7);
    }
    return Formula.when(AllowedDays.LONGEST_GAPS.get(days - 1).atMost(LONGEST_INTERVAL))
        .then(days)
        .otherwise(fewestDays(days + 1));
  }

  private Demand() {}
}
