package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COUNTED;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PRICE;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.retrofit.AsFound;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What a person says about the job as a whole before it can be priced. */
public final class JobFacts {
  public static final String ON_MATERIAL = "material";
  public static final String ON_PRICE = "the whole price";
  public static final String IN_PRICES = "nothing, prices include it";

  public static final Column CURRENCY =
      Column.words(ESTIMATE, "currency", "Currency")
          .band(PRICE)
          .optional()
          .means(
              "What all money on these sheets is in, such as USD or EUR. Amounts are rounded and shown by its smallest amount where it"
                  + " is a code of ISO 4217, else in hundredths.")
          .build();

  public static final Column LABOUR_RATE =
      Column.input(ESTIMATE, "labour-rate", "Labour rate", QuantityKind.PRICE_PER_HOUR)
          .band(PRICE)
          .within(Bounds.from(0, 10_000, Units.MONEY_PER_HOUR))
          .optional()
          .means("Cost of one hour of one worker, with all that is paid on top of wages.")
          .build();

  public static final Column OVERHEAD_SHARE =
      share(
          "overhead-share",
          "Overhead",
          "Office, insurance, vehicles: as a part of the direct cost.");

  public static final Column PROFIT_SHARE =
      share("profit-share", "Profit", "As a part of direct cost and overhead.");

  public static final Column CONTINGENCY_SHARE =
      share(
          "contingency-share",
          "Contingency",
          "For what cannot be seen yet: as a part of direct cost, overhead and profit.");

  public static final Column TAX_SHARE =
      share("tax-share", "Tax", "Sales tax or value added tax, by the rule chosen below.");

  public static final Column TAX_ON =
      Column.choice(
              ESTIMATE,
              "tax-on",
              "Tax on",
              new WordList.Fixed(List.of(ON_PRICE, ON_MATERIAL, IN_PRICES)),
              ON_PRICE)
          .band(PRICE)
          .means(
              "Whether tax comes on top of the whole price, or of material at cost only, or is in all prices and rates as you type them: then the"
                  + " price stays as it adds up, and the tax in it is told. Local tax law decides.")
          .build();

  private static final Formula ZONES_FOUND = AsFound.of(Takeoff.VALVES).sum();

  public static final Column CONTROLLERS =
      Column.defaulted(ESTIMATE, "controllers", "Controllers", QuantityKind.COUNT, number(1))
          .band(COUNTED)
          .within(Bounds.from(0, 100, Units.ONE).wholeNumbers())
          .means("Controllers of the finished job.")
          .source("Common practice, no source: one.")
          .build();

  public static final Column CONTROLLERS_KEPT =
      keptOnSite("controllers-kept", "Controllers kept", CONTROLLERS);

  public static final Column SENSORS =
      Column.defaulted(ESTIMATE, "sensors", "Sensors", QuantityKind.COUNT, number(1))
          .band(COUNTED)
          .within(Bounds.from(0, 1000, Units.ONE).wholeNumbers())
          .means("Rain, freeze, soil moisture or flow sensors of the finished job.")
          .source("Common practice, no source: one.")
          .build();

  public static final Column SENSORS_KEPT = keptOnSite("sensors-kept", "Sensors kept", SENSORS);

  private JobFacts() {}

  private static Column share(String id, String name, String means) {
    return Column.defaulted(ESTIMATE, id, name, QuantityKind.SHARE, number(0))
        .band(PRICE)
        .within(Bounds.from(0, 5, Units.ONE))
        .decimals(2, 2)
        .inFull()
        .means(means)
        .source("None unless typed.")
        .build();
  }

  private static Column keptOnSite(String id, String name, Column all) {
    Condition retrofit = ZONES_FOUND.above(0);
    return Column.defaulted(
            ESTIMATE, id, name, QuantityKind.COUNT, Formula.when(retrofit).then(all).otherwise(0))
        .band(COUNTED)
        .within(Bounds.from(0, 1000, Units.ONE).wholeNumbers())
        .means(
            "How many of them are there already and stay: all in a retrofit, unless you type otherwise.")
        .source("Common practice, no source.")
        .build();
  }
}
