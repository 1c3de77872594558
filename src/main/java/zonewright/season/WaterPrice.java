package zonewright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.savings.Rates;
import zonewright.savings.Use;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.Units;

/** What the water of a month costs by the tiers of the sheet Rates, on top of other use. */
final class WaterPrice {
  private static final double HUNDRED_CUBIC_FEET = Units.CUBIC_FOOT.convert(100, Units.LITRE);

  private final double litresOfUnit;
  private final List<double[]> tiers;
  private final double[] other;

  private WaterPrice(double litresOfUnit, List<double[]> tiers, double[] other) {
    this.litresOfUnit = litresOfUnit;
    this.tiers = tiers;
    this.other = other;
  }

  /** Returns the prices of a design, where it has any. */
  static Optional<WaterPrice> of(Book book) {
    double billed = book.number(Rates.BILLED_BY.reference(), 0);
    if (Double.isNaN(billed)) {
      return Optional.empty();
    }
    String unit = book.choices(Rates.BILLED_BY).get((int) billed);
    double litres =
        unit.equals(Rates.THOUSAND_GALLONS)
            ? Units.GALLON.convert(1000, Units.LITRE)
            : unit.equals(Rates.HUNDRED_CUBIC_FEET) ? HUNDRED_CUBIC_FEET : 1000;
    List<double[]> tiers = new ArrayList<>();
    for (int row = 0; row < book.rows(Sheets.RATES); row++) {
      double[] tier = {
        book.number(Rates.START.reference(), row),
        book.number(Rates.END.reference(), row),
        book.number(Rates.COMBINED.reference(), row)
      };
      if (!Double.isNaN(tier[0] + tier[1] + tier[2])) {
        tiers.add(tier);
      }
    }
    Unit volume = QuantityKind.VOLUME.unit(book.system());
    double[] other = new double[12];
    for (int month = 0; month < other.length; month++) {
      double used = book.number(Use.OTHER.reference(), month);
      other[month] = Double.isNaN(used) ? 0 : volume.convert(used, Units.LITRE);
    }
    return tiers.isEmpty() ? Optional.empty() : Optional.of(new WaterPrice(litres, tiers, other));
  }

  /** Returns the cost of a month's irrigation, January 0. */
  double cost(int month, double litres) {
    return bill(other[month] + litres) - bill(other[month]);
  }

  private double bill(double litres) {
    double units = litres / litresOfUnit;
    double sum = 0;
    for (double[] tier : tiers) {
      sum += tier[2] * Math.max(0, Math.min(units, tier[1]) - tier[0]);
    }
    return sum;
  }
}
