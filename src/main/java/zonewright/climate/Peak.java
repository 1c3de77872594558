package zonewright.climate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Aggregation;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the month that asks most: the baseline at 100 percent is made for it. */
public final class Peak {
  public static final String BY_NEED = "by need of the plants";
  public static final String BY_ET = "by reference ET";
  public static final String BY_DEFICIT = "by deficit";

  public static final String OF_THE_SITE = "the site's peak month";
  public static final String OF_EACH_ZONE = "each zone's own peak month";

  private static final Condition DESCRIBED = WeatherSite.comesBy(WeatherSite.DESCRIPTION);

  /** Need of the site's plants in a month; declared with the zones it is made from. */
  private static final Reference NEED =
      new Reference(MONTHS, "daily-need", "Need a day", QuantityKind.DAILY_DEPTH);

  public static final Column CHOICE =
      Column.choice(
              SITE,
              "peak-choice",
              "Peak month chosen",
              new WordList.Fixed(List.of(BY_NEED, BY_ET, BY_DEFICIT)),
              BY_NEED)
          .band(CLIMATE)
          .means(
              "Whether the peak month is the one in which what is planted needs most beside the rain that counts; or the one of highest"
                  + " reference ET; or of the greatest deficit, reference ET less effective rain, as a field of reference grass has it."
                  + " Where no rain counts all three are the same.")
          .build();

  public static final Column BASELINE =
      Column.choice(
              SITE,
              "baseline-month",
              "Baseline made for",
              new WordList.Fixed(List.of(OF_THE_SITE, OF_EACH_ZONE)),
              OF_THE_SITE)
          .band(CLIMATE)
          .means(
              "Whether 100 % of a zone is its need in the site's peak month, so that one setting fits all zones, or in its own peak"
                  + " month. A zone whose need the rain covers in the site's peak month always goes by its own.")
          .build();

  public static final Column RANKING =
      Column.calculated(
              MONTHS,
              "ranking",
              "Peak ranking",
              QuantityKind.COUNT,
              ranked(
                  Formula.when(chosen(BY_NEED).and(Rain.COUNTS))
                      .then(NEED)
                      .otherwise(Climate.DAILY_REFERENCE_ET.minus(rainTakenOff()))))
          .band(CLIMATE)
          .means(
              "What the months are ranked by to find the peak, in ten-thousandths of a millimetre a day. By reference ET, a thousandth"
                  + " of the effective rain is taken off, so that of two equal months the drier counts.")
          .source("By definition.")
          .build();

  /**
   * Whole steps of a ten-thousandth of a millimetre a day, so that months equal but for the last
   * bits rank equal everywhere.
   */
  private static Formula ranked(Term daily) {
    return number(10_000)
        .times(daily.measuredIn(Units.MILLIMETRE_PER_DAY))
        .roundedDownTo(Units.ONE);
  }

  private static Condition chosen(String choice) {
    return CHOICE.is(choice);
  }

  private static Formula rainTakenOff() {
    return Formula.when(chosen(BY_DEFICIT))
        .then(Rain.DAILY_EFFECTIVE)
        .otherwise(number(0.001).times(Rain.DAILY_EFFECTIVE));
  }

  /** The place of the peak month in the year. */
  public static final Formula POSITION = RANKING.gathered(Aggregation.POSITION_OF_LARGEST);

  public static final Column MONTH =
      Column.calculatedWord(
              SITE,
              "peak-month",
              "Peak month",
              new WordList.RowsOf(MONTHS),
              Formula.when(DESCRIBED)
                  .then(
                      Formula.doesNotApply(
                          "not known", "A general description of the climate names no months."))
                  .otherwise(Climate.MONTH.inRow(POSITION)))
          .band(CLIMATE)
          .means(
              "The month that asks most of the site. The zones are weighed by their own coefficients and areas; one whose plant or area"
                  + " is not given yet has no say.")
          .source("By definition.")
          .build();

  public static final Column REFERENCE_ET =
      Column.calculated(
              SITE,
              "peak-reference-et",
              "Peak reference ET",
              QuantityKind.DAILY_DEPTH,
              Formula.when(DESCRIBED)
                  .then(
                      WeatherSite.DESCRIPTIONS
                          .numbers("Greatest (mm/day)", QuantityKind.DAILY_DEPTH)
                          .of(WeatherSite.DESCRIBED_CLIMATE))
                  .otherwise(Climate.DAILY_REFERENCE_ET.inRow(POSITION)))
          .band(CLIMATE)
          .means(
              "Mean daily reference evapotranspiration of the peak month. The baseline at 100 % is made for it.")
          .source(
              "The baseline is built for the peak month and scaled for the others: Washington State University Extension (Grant"
                  + " County), Monthly Sprinkler Runtime Adjustment (verified).")
          .build();

  public static final Column EFFECTIVE_RAIN =
      Column.calculated(
              SITE,
              "peak-effective-rain",
              "Peak effective rain",
              QuantityKind.DAILY_DEPTH,
              Formula.when(DESCRIBED.or(Rain.COUNTS.negated()))
                  .then(Formula.zero(QuantityKind.DAILY_DEPTH))
                  .otherwise(Rain.DAILY_EFFECTIVE.inRow(POSITION)))
          .band(CLIMATE)
          .means("Effective rain of a mean day of the peak month.")
          .source("By definition.")
          .build();

  public static final Column DAYS =
      Column.calculated(
              SITE,
              "peak-days",
              "Days in the peak month",
              QuantityKind.DAYS,
              Formula.when(DESCRIBED)
                  .then(Formula.amount(30, Units.DAY))
                  .otherwise(Climate.DAYS.inRow(POSITION)))
          .band(CLIMATE)
          .means("Days in the peak month; 30 where the month is not known.")
          .source("By definition.")
          .build();

  /** Says that each zone's baseline is made for its own peak month; the months must be known. */
  public static final Condition ZONE_BY_ZONE = BASELINE.is(OF_EACH_ZONE).and(DESCRIBED.negated());

  /** The climate is only a guess. */
  public static final Rule ONLY_DESCRIBED =
      new Rule(
          "only-described",
          Severity.CHECK,
          SITE,
          DESCRIBED,
          WeatherSite.ET_METHOD,
          "the peak reference ET of {0} comes from a general description of the climate; it can be off by half",
          "find published monthly values for a place nearby, or fill in the weather sheet",
          List.of(REFERENCE_ET));

  private Peak() {}
}
