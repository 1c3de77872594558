package zonewright.estimate;

import static zonewright.trade.Sheets.CURRENCIES;
import static zonewright.trade.Sheets.ITEM;
import static zonewright.trade.Sheets.PRICE;

import java.util.List;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the currencies other than that of the job in which suppliers price. */
public final class Currencies {
  public static final Column CODE =
      Column.words(CURRENCIES, "currency", "Other currency")
          .band(ITEM)
          .means("Code of a currency in which a supplier prices, such as EUR.")
          .build();

  public static final Column WORTH =
      Column.input(CURRENCIES, "worth", "Worth", QuantityKind.FACTOR)
          .band(PRICE)
          .within(Bounds.above(0, 1e9, Units.ONE))
          .inFull()
          .means("What one of it costs in the currency of the job. Banks add a charge; ask yours.")
          .build();

  public static final Column AS_OF =
      Column.words(CURRENCIES, "as-of", "Worth is from")
          .band(PRICE)
          .optional()
          .means("The day of the rate, and who said it.")
          .build();

  private Currencies() {}

  /** Returns the columns of the sheet in their order. */
  public static List<Column> columns() {
    return List.of(CODE, WORTH, AS_OF);
  }
}
