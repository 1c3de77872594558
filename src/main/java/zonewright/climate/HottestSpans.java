package zonewright.climate;

import static zonewright.trade.Sheets.EVAPOTRANSPIRATION;
import static zonewright.trade.Sheets.RECORD;
import static zonewright.trade.Sheets.SITE;

import java.util.List;
import zonewright.formula.Aggregation;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;

/** Columns that hold what a weather record says against what the design is made for. */
public final class HottestSpans {
  public static final Column AGAINST_PEAK =
      Column.calculated(
              RECORD,
              "against-peak",
              "Against the peak month",
              QuantityKind.SHARE,
              RecordedWeather.USED_A_DAY.over(Peak.REFERENCE_ET))
          .band(EVAPOTRANSPIRATION)
          .means(
              "Reference ET of a day of the span against that of the peak month the design is made for. What the hottest days ask beyond"
                  + " 100 % comes from the water the soil holds, or from a higher percentage in those days.")
          .source("By definition.")
          .build();

  /** Too few years to say what is exceeded how often. */
  public static final Rule FEW_YEARS =
      new Rule(
          "few-years",
          Severity.CHECK,
          SITE,
          WeatherSite.comesBy(WeatherSite.RECORD)
              .and(RecordedWeather.YEARS.gathered(Aggregation.SMALLEST).below(10)),
          RecordedWeather.ORIGIN,
          "the weather record has fewer than 10 years of some month; what it says of 8 or 9 years of 10 is not known",
          "read a file with more years, or take the mean and allow for hotter years",
          List.of());

  private HottestSpans() {}
}
