package zonewright.savings;

import static zonewright.trade.Sheets.CASH;
import static zonewright.trade.Sheets.SAVINGS;

import zonewright.estimate.BuildUp;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What the job costs its owner; both savings and the caps of rebates rest on it. */
final class JobCost {
  static final Column COST =
      Column.defaulted(SAVINGS, "cost", "Cost of the job", QuantityKind.MONEY, BuildUp.TOTAL)
          .band(CASH)
          .within(Bounds.from(0, 1e10, Units.MONEY))
          .means("The price on the sheet Estimate, unless you type another.")
          .source("The sheet Estimate.")
          .build();

  private JobCost() {}
}
