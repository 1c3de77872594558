package zonewright.formula;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import zonewright.units.Units;

/**
 * What is left of formulas where some cells are known to be blank in every row: ways through a
 * choice that cannot be taken go, and what needs a blank cell is no number.
 *
 * <p>What is left gives the same as the whole formula as long as these cells stay blank.
 */
public final class Reduction {
  private static final Formula.Nothing NOTHING =
      new Formula.Nothing("—", "Nothing was typed that it rests on.", true);

  private final Predicate<Reference> blank;
  private final Predicate<Reference> none;
  private final Function<Reference, Optional<Formula>> constant;
  private final Predicate<String> empty;
  private final Set<Reference> asked = new LinkedHashSet<>();

  /**
   * Prepares for formulas.
   *
   * @param blank says of which columns to type into every cell is blank
   * @param none says which columns have no number and no word in any row
   * @param constant gives the number that every row of a column has; empty where they may differ
   * @param empty says which tables have no rows, by their identifiers
   */
  public Reduction(
      Predicate<Reference> blank,
      Predicate<Reference> none,
      Function<Reference, Optional<Formula>> constant,
      Predicate<String> empty) {
    this.blank = blank;
    this.none = none;
    this.constant = constant;
    this.empty = empty;
  }

  /** Says whether a formula gives no number, whatever else is typed. */
  public static boolean isNothing(Formula formula) {
    return formula instanceof Formula.Nothing;
  }

  /**
   * Returns the blank columns met so far that count all the same: without them a cell that was
   * typed and is no good would not be seen.
   */
  public Set<Reference> asked() {
    return asked;
  }

  /** Returns what is left of a formula. */
  public Formula of(Formula whole) {
    Formula left = Rewriter.replaced(whole, this::part);
    return lacks(left) ? NOTHING : left;
  }

  /** What stands for a part; null where its own parts are to be looked at. */
  private Formula part(Formula part) {
    if (part instanceof Formula.Cell cell) {
      return none.test(cell.reference()) ? NOTHING : constant.apply(cell.reference()).orElse(null);
    }
    if (part instanceof Formula.Pick pick && none.test(pick.column())) {
      return NOTHING;
    }
    if (part instanceof Formula.RowLookup row && none.test(row.column())) {
      return NOTHING;
    }
    if (part instanceof Formula.Choose choose) {
      return choice(choose);
    }
    if (part instanceof Formula.Arithmetic sum && sum.operator() == Operator.PLUS) {
      return withoutNothingAdded(sum);
    }
    if (part instanceof Formula.Nth nth) {
      Formula position = of(nth.position());
      return isNothing(position)
          ? NOTHING
          : new Formula.Nth(position, nth.options().stream().map(this::of).toList());
    }
    if (part instanceof Formula.Aggregate all && empty.test(all.column().table())) {
      return switch (all.aggregation()) {
        case SUM -> zero(all.column());
        case COUNT -> Formula.number(0);
        default -> NOTHING;
      };
    }
    if (part instanceof Formula.Where where && empty.test(where.column().table())) {
      return switch (where.kind()) {
        case COUNT -> Formula.number(0);
        case SUM -> zero(where.column());
        default -> NOTHING;
      };
    }
    return null;
  }

  private static Formula zero(Reference column) {
    return Formula.zero(column.kind());
  }

  /** A sum without the part that came to 0 because nobody typed what it rests on. */
  private Formula withoutNothingAdded(Formula.Arithmetic sum) {
    Formula left = of(sum.left());
    Formula right = of(sum.right());
    if (cameToZero(sum.left(), left)) {
      return right;
    }
    return cameToZero(sum.right(), right)
        ? left
        : new Formula.Arithmetic(Operator.PLUS, left, right);
  }

  private static boolean cameToZero(Formula whole, Formula left) {
    return !(whole instanceof Formula.Constant)
        && left instanceof Formula.Constant constant
        && constant.value() == 0
        && constant.unit().zero().signum() == 0;
  }

  private Formula choice(Formula.Choose choose) {
    Set<Reference> doubtful = new LinkedHashSet<>();
    Decision decision = decide(choose.condition(), doubtful);
    Formula then = of(choose.then());
    Formula otherwise = of(choose.otherwise());
    if (decision.undefined || (isNothing(then) && isNothing(otherwise))) {
      return NOTHING;
    }
    if (decision.holds.isEmpty()) {
      return new Formula.Choose(decision.condition, then, otherwise);
    }
    Formula taken = decision.holds.get() ? then : otherwise;
    if (!isNothing(taken)) {
      asked.addAll(doubtful);
    }
    return taken;
  }

  /**
   * What is known of a condition.
   *
   * @param holds whether it holds; empty where that depends
   * @param undefined whether it is neither so nor not, for want of what it rests on
   * @param condition what is left of it
   */
  private record Decision(Optional<Boolean> holds, boolean undefined, Condition condition) {
    static Decision known(boolean holds, Condition condition) {
      return new Decision(Optional.of(holds), false, condition);
    }

    static Decision unknown(Condition condition) {
      return new Decision(Optional.empty(), false, condition);
    }

    static Decision neither(Condition condition) {
      return new Decision(Optional.empty(), true, condition);
    }
  }

  private Decision decide(Condition condition, Set<Reference> doubtful) {
    if (condition instanceof Condition.Given given) {
      return blank.test(given.cell())
          ? Decision.known(false, condition)
          : Decision.unknown(condition);
    }
    if (condition instanceof Condition.WordIs is) {
      return none.test(is.word()) ? Decision.neither(condition) : Decision.unknown(condition);
    }
    if (condition instanceof Condition.Not not) {
      Decision inner = decide(not.condition(), doubtful);
      return new Decision(
          inner.holds.map(holds -> !holds), inner.undefined, new Condition.Not(inner.condition));
    }
    if (condition instanceof Condition.Joined joined) {
      return joined(joined, doubtful);
    }
    Condition.Comparison comparison = (Condition.Comparison) condition;
    Formula left = of(comparison.left());
    Formula right = of(comparison.right());
    if (isNothing(left) || isNothing(right)) {
      return Decision.neither(condition);
    }
    boolean known =
        left instanceof Formula.Constant one
            && right instanceof Formula.Constant other
            && one.unit().equals(Units.ONE)
            && other.unit().equals(Units.ONE);
    return known
        ? Decision.known(
            comparison
                .comparator()
                .holds(((Formula.Constant) left).value(), ((Formula.Constant) right).value()),
            condition)
        : Decision.unknown(new Condition.Comparison(comparison.comparator(), left, right));
  }

  private Decision joined(Condition.Joined joined, Set<Reference> doubtful) {
    Decision left = decide(joined.left(), doubtful);
    Decision right = decide(joined.right(), doubtful);
    if (left.undefined || right.undefined) {
      return Decision.neither(joined);
    }
    Optional<Boolean> decides = Optional.of(!joined.both());
    if (left.holds.equals(decides) || right.holds.equals(decides)) {
      // Where the side not known is neither so nor not, the whole is.
      if (left.holds.isEmpty()) {
        doubtful.addAll(Dependencies.of(joined.right()).givens());
      }
      if (right.holds.isEmpty()) {
        doubtful.addAll(Dependencies.of(joined.left()).givens());
      }
      return Decision.known(!joined.both(), joined);
    }
    if (left.holds.isPresent()) {
      return right;
    }
    return right.holds.isPresent()
        ? left
        : Decision.unknown(new Condition.Joined(joined.both(), left.condition, right.condition));
  }

  /** Whether something without which there is no number lacks. */
  private boolean lacks(Formula left) {
    boolean[] lacks = {false};
    Rewriter.parts(
        left,
        part -> {
          lacks[0] |= isNothing(part) || word(part).filter(none).isPresent();
          return !lacks[0] && !(part instanceof Formula.Choose) && !(part instanceof Formula.Nth);
        });
    return lacks[0];
  }

  /** The word in whose row a number is looked for. */
  private static Optional<Reference> word(Formula part) {
    if (part instanceof Formula.Lookup lookup) {
      return Optional.of(lookup.word());
    }
    if (part instanceof Formula.LookupAcross across) {
      return Optional.of(across.word());
    }
    if (part instanceof Formula.LookupCount count) {
      return Optional.of(count.word());
    }
    return part instanceof Formula.RowLookup row ? Optional.of(row.word()) : Optional.empty();
  }
}
