package zonewright.workbook.kit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.Reduction;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;

/**
 * The equations of a design as its workbook holds them: without what rests on columns nobody typed
 * into, so that a reader sees the equation that counts in this garden.
 */
final class Equations {
  private final Schema schema;
  private final Map<Reference, Formula> formulas = new HashMap<>();
  private final Map<Reference, Dependencies> needs = new HashMap<>();
  private final Set<Reference> blank = new HashSet<>();
  private final Set<Reference> none = new HashSet<>();

  /**
   * Works them out.
   *
   * @param blanks columns that nobody typed into and that need not stand in the workbook
   * @param empty tables without rows, by their identifiers
   */
  Equations(Schema schema, Set<Column> blanks, Set<String> empty) {
    this.schema = schema;
    blanks.forEach(column -> blank.add(column.reference()));
    Set<Reference> asked;
    do {
      asked = reduce(empty);
    } while (blank.removeAll(asked));
  }

  /** Reduces all formulas, and returns the blank columns that count all the same. */
  private Set<Reference> reduce(Set<String> empty) {
    none.clear();
    none.addAll(blank);
    formulas.clear();
    Reduction reduction =
        new Reduction(
            blank::contains,
            none::contains,
            column ->
                Optional.ofNullable(formulas.get(column))
                    .filter(Formula.Constant.class::isInstance),
            empty::contains);
    for (Column column : schema.order()) {
      Formula whole = column.formula().orElse(null);
      if (whole == null) {
        continue;
      }
      Formula left = reduction.of(whole);
      needs.put(column.reference(), Dependencies.of(left));
      boolean usual = column.role() == Column.Role.DEFAULTED;
      if (Reduction.isNothing(left) && !Reduction.isNothing(whole) && !usual) {
        none.add(column.reference());
      }
      boolean constant = left instanceof Formula.Constant && !(whole instanceof Formula.Constant);
      if (!left.equals(whole) && (!constant || !usual)) {
        formulas.put(column.reference(), left);
      }
    }
    Set<Reference> asked = new HashSet<>(reduction.asked());
    needs.values().stream()
        .flatMap(each -> Stream.concat(each.columns().stream(), keys(each)))
        .forEach(asked::add);
    return asked;
  }

  private static Stream<Reference> keys(Dependencies needs) {
    return needs.pairs().stream().flatMap(pair -> Stream.of(pair.word(), pair.key()));
  }

  /** Returns the equation of a column; empty where only typed values stand in it. */
  Optional<Formula> of(Column column) {
    return Optional.ofNullable(formulas.get(column.reference())).or(column::formula);
  }

  /** Returns what the equation of a column rests on. */
  Optional<Dependencies> needs(Column column) {
    return Optional.ofNullable(needs.get(column.reference()));
  }

  /** Says whether a column can be left out: nobody typed into it, or what it rests on. */
  boolean idle(Column column) {
    return none.contains(column.reference()) || constant(column);
  }

  private boolean constant(Column column) {
    return column.role() == Column.Role.CALCULATED
        && formulas.get(column.reference()) instanceof Formula.Constant;
  }
}
