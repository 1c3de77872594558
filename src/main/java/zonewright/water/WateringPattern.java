package zonewright.water;

import static zonewright.trade.Sheets.NIGHT_RULES;
import static zonewright.trade.Sheets.ZONE_NIGHTS;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns that say on which days a zone waters, where not simply on nights of the site. */
public final class WateringPattern {
  public static final String SITE = "nights of the site";
  public static final String OWN = "weekdays of its own";
  public static final String INTERVAL = "every few days";
  public static final String ODD = AllowedDates.ODD;
  public static final String EVEN = AllowedDates.EVEN;

  /** Dates of a year of 365 days that are odd, and even. */
  private static final double ODD_DATES = 186;

  private static final double EVEN_DATES = 179;

  public static final Column ZONE =
      Column.words(ZONE_NIGHTS, "zone", "Zone").band(NIGHT_RULES).means("The zone.").build();

  public static final Column ORDER =
      Column.input(ZONE_NIGHTS, "order", "Place in the order", QuantityKind.COUNT)
          .band(NIGHT_RULES)
          .within(Bounds.from(1, 9999, Units.ONE).wholeNumbers())
          .optional()
          .means(
              "Where in the night it should come: 1 before 2, and both before zones without a place. Followed where it costs no time; on a"
                  + " controller that starts programs, always among stations with as many cycles.")
          .build();

  public static final Column PATTERN =
      Column.choice(
              ZONE_NIGHTS,
              "pattern",
              "Waters on",
              new WordList.Fixed(List.of(SITE, OWN, INTERVAL, ODD, EVEN)),
              SITE)
          .band(NIGHT_RULES)
          .means(
              "On which days it waters: on nights of the site that the timetable chooses, on weekdays of its own, every few days, or on"
                  + " odd or even dates as some local rules ask.")
          .build();

  public static final Column OWN_DAYS =
      Column.choice(
              ZONE_NIGHTS,
              "own-days",
              "Weekdays of its own",
              new WordList.Published(SiteRules.WEEKDAY_SETS))
          .band(NIGHT_RULES)
          .optional()
          .means("The weekdays, such as Mon Thu, for a zone that has its own.")
          .build();

  public static final Column EVERY =
      Column.input(ZONE_NIGHTS, "every", "Days from one to the next", QuantityKind.DAYS)
          .band(NIGHT_RULES)
          .within(Bounds.from(1, 31, Units.DAY).wholeNumbers())
          .optional()
          .means(
              "How many days from one watering to the next, for a zone that waters every few days.")
          .build();

  private static final Formula WEEK = Formula.amount(7, Units.DAY);

  /** Says that a zone waters on nights of the site. */
  static final Condition ON_SITE_NIGHTS = is(SITE).and(AllowedDates.IN_FORCE.is(AllowedDates.ANY));

  private static final Condition ON_ODD_DATES =
      is(ODD).or(is(SITE).and(AllowedDates.IN_FORCE.is(ODD)));

  public static final Column PATTERN_A_WEEK =
      Column.calculated(
              ZONE_NIGHTS,
              "pattern-a-week",
              "Waterings a week by the pattern",
              QuantityKind.FACTOR,
              Formula.when(ON_SITE_NIGHTS)
                  .then(
                      Formula.doesNotApply("as the site", "The zone waters on nights of the site."))
                  .otherwise(
                      Formula.when(is(OWN))
                          .then(
                              SiteRules.WEEKDAY_SETS
                                  .numbers("Days", QuantityKind.COUNT)
                                  .of(OWN_DAYS))
                          .otherwise(
                              Formula.when(is(INTERVAL))
                                  .then(WEEK.over(EVERY))
                                  .otherwise(
                                      Formula.when(ON_ODD_DATES)
                                          .then(aWeek(ODD_DATES))
                                          .otherwise(aWeek(EVEN_DATES))))))
          .band(NIGHT_RULES)
          .means("How often a week it waters by its own pattern, on average.")
          .source("By counting; a year of 365 days has 186 odd dates and 179 even ones.")
          .build();

  public static final Column PATTERN_GAP =
      Column.calculated(
              ZONE_NIGHTS,
              "pattern-gap",
              "Longest gap of the pattern",
              QuantityKind.DAYS,
              Formula.when(ON_SITE_NIGHTS)
                  .then(
                      Formula.doesNotApply("as the site", "The zone waters on nights of the site."))
                  .otherwise(
                      Formula.when(is(OWN))
                          .then(
                              SiteRules.WEEKDAY_SETS
                                  .numbers("Longest gap with 7 (days)", QuantityKind.DAYS)
                                  .of(OWN_DAYS))
                          .otherwise(
                              Formula.when(is(INTERVAL))
                                  .then(EVERY)
                                  .otherwise(
                                      Formula.when(ON_ODD_DATES)
                                          .then(Formula.amount(2, Units.DAY))
                                          .otherwise(Formula.amount(3, Units.DAY))))))
          .band(NIGHT_RULES)
          .means("Days from one watering to the next at the widest place.")
          .source(
              "By counting; from the 30th of a month with 31 days to the next even date, the 2nd, are 3 days, and odd dates are never"
                  + " more than 2 apart.")
          .build();

  private static final Rule ON_OTHER_DATES =
      new Rule(
          "other-dates",
          Severity.CHECK,
          ZONE_NIGHTS,
          against(ODD).or(against(EVEN)),
          PATTERN,
          "is not what the site may do, which is to water on {0}",
          "let it water on nights of the site, or see the dates allowed on Site",
          List.of(AllowedDates.IN_FORCE));

  private WateringPattern() {}

  private static Condition against(String dates) {
    return AllowedDates.IN_FORCE.is(dates).and(PATTERN.is(SITE, dates).negated());
  }

  /** Returns what to tell a designer about the days of zones. */
  public static List<Rule> rules() {
    return List.of(ON_OTHER_DATES);
  }

  private static Condition is(String pattern) {
    return PATTERN.is(pattern);
  }

  private static Formula aWeek(double datesAYear) {
    return Formula.number(7 * datesAYear / 365);
  }
}
