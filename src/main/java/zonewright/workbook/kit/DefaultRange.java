package zonewright.workbook.kit;

import java.util.function.DoublePredicate;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.units.UnitSystem;

/** Tells whether a default can only take values that keep to a range. */
public final class DefaultRange {
  private DefaultRange() {}

  /**
   * Returns whether every value {@code plain} can take is {@code fine}; where that cannot be seen
   * from constants and tables alone, it says no.
   */
  public static boolean within(Formula plain, UnitSystem system, DoublePredicate fine) {
    if (plain instanceof Formula.Constant constant) {
      return fine.test(constant.value());
    }
    if (plain instanceof Formula.Choose choose) {
      return within(choose.then(), system, fine) && within(choose.otherwise(), system, fine);
    }
    if (plain instanceof Formula.Lookup lookup) {
      return all(lookup.column(), system, fine);
    }
    if (plain instanceof Formula.LookupAcross lookup) {
      return lookup.columns().stream().allMatch(column -> all(column, system, fine));
    }
    return plain instanceof Formula.Nothing;
  }

  private static boolean all(
      ReferenceTable.Numbers column, UnitSystem system, DoublePredicate fine) {
    for (double value : column.values(system)) {
      if (!Double.isNaN(value) && !fine.test(value)) {
        return false;
      }
    }
    return true;
  }
}
