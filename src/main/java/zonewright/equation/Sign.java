package zonewright.equation;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Operator;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Tells formulas that can come to less than nothing from those that never do. */
final class Sign {
  private final Function<Reference, Column> columns;
  private final Map<Reference, Boolean> known = new HashMap<>();

  Sign(Function<Reference, Column> columns) {
    this.columns = columns;
  }

  /** Says whether a formula may be below zero: where that is not certain, it may. */
  boolean below(Formula formula) {
    if (formula instanceof Formula.Constant constant) {
      return constant.value() < 0;
    }
    if (formula instanceof Formula.Cell cell) {
      return below(cell.reference());
    }
    if (formula instanceof Formula.Arithmetic two) {
      return (two.operator() == Operator.MINUS && !restOfAll(two))
          || below(two.left())
          || below(two.right());
    }
    if (formula instanceof Formula.Extreme two) {
      return two.largest()
          ? below(two.left()) && below(two.right())
          : below(two.left()) || below(two.right());
    }
    if (formula instanceof Formula.Choose two) {
      return (below(two.then()) && !guarded(two)) || below(two.otherwise());
    }
    if (formula instanceof Formula.Rounding rounding) {
      return below(rounding.operand());
    }
    if (formula instanceof Formula.Measure measure) {
      return below(measure.operand());
    }
    if (formula instanceof Formula.Power power) {
      return below(power.base());
    }
    return lookedUp(formula);
  }

  /** Says whether what is looked up, gathered or made by a function may be below zero. */
  private boolean lookedUp(Formula formula) {
    if (formula instanceof Formula.Lookup lookup) {
      return open(lookup.column().kind());
    }
    if (formula instanceof Formula.LookupAcross lookup) {
      return open(lookup.columns().get(0).kind());
    }
    if (formula instanceof Formula.Nth nth) {
      return nth.options().stream().anyMatch(this::below);
    }
    if (formula instanceof Formula.RowLookup lookup) {
      return below(lookup.column());
    }
    if (formula instanceof Formula.Pick pick) {
      return below(pick.column());
    }
    if (formula instanceof Formula.Aggregate whole) {
      return below(whole.column());
    }
    if (formula instanceof Formula.Where where) {
      return where.kind().keepsUnit() && below(where.column());
    }
    return !(formula instanceof Formula.Nothing || formula instanceof Formula.LookupCount)
        && !(formula instanceof Formula.Function function && neverBelow(function.kind()));
  }

  /**
   * Says whether a choice takes a number only where that is above another that is not below zero.
   */
  private boolean guarded(Formula.Choose choose) {
    return choose.condition() instanceof Condition.Comparison held
        && (held.comparator() == Comparator.ABOVE || held.comparator() == Comparator.AT_LEAST)
        && held.left().equals(choose.then())
        && !below(held.right());
  }

  /** What a share leaves of the whole, as 1 − share, is never below zero: no share is above 1. */
  private static boolean restOfAll(Formula.Arithmetic minus) {
    return minus.left() instanceof Formula.Constant all && all.value() == 1 && share(minus.right());
  }

  private static boolean share(Formula formula) {
    if (formula instanceof Formula.Constant constant) {
      return constant.value() <= 1;
    }
    if (formula instanceof Formula.Choose choose) {
      return share(choose.then()) && share(choose.otherwise());
    }
    return formula instanceof Formula.Cell cell
        ? cell.reference().kind() == QuantityKind.SHARE
        : formula instanceof Formula.RowLookup lookup
            && lookup.column().kind() == QuantityKind.SHARE;
  }

  private static boolean neverBelow(FunctionKind kind) {
    return kind == FunctionKind.SQUARE_ROOT
        || kind == FunctionKind.EXPONENTIAL
        || kind == FunctionKind.ABSOLUTE;
  }

  private static boolean open(QuantityKind kind) {
    return kind.mayBeNegative() || kind.dimension().temperature() != 0;
  }

  private boolean below(Reference reference) {
    Boolean found = known.get(reference);
    if (found == null) {
      // a circle is refused elsewhere; here it only must come to an end
      known.put(reference, true);
      Column column = columns.apply(reference);
      boolean typed = column.takesEntries() && typedBelow(column);
      found = typed || column.formula().map(this::below).orElse(false);
      known.put(reference, found);
    }
    return found;
  }

  private static boolean typedBelow(Column column) {
    return column.bounds().map(Bounds::low).map(low -> low < 0).orElse(open(column.kind()))
        || open(column.kind());
  }
}
