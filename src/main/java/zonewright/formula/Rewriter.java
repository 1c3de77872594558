package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.Unit;

/**
 * Writes a formula anew with other columns or parts in the place of some: two tables of the same
 * columns need one declaration, and a long formula can be written in steps.
 */
public final class Rewriter implements FormulaVisitor<Formula>, ConditionVisitor<Condition> {
  private final UnaryOperator<Reference> to;

  /** Gives what stands in the place of a part; null where its own parts are to be looked at. */
  private final UnaryOperator<Formula> instead;

  /** The same for conditions. */
  private final UnaryOperator<Condition> insteadOf;

  /** Gives the column to look up in, in place of that of a table. */
  private final UnaryOperator<ReferenceTable.Numbers> lookedUp;

  private Rewriter(UnaryOperator<Reference> to, UnaryOperator<Formula> instead) {
    this(to, instead, condition -> null);
  }

  private Rewriter(
      UnaryOperator<Reference> to,
      UnaryOperator<Formula> instead,
      UnaryOperator<Condition> insteadOf) {
    this(to, instead, insteadOf, UnaryOperator.identity());
  }

  private Rewriter(
      UnaryOperator<Reference> to,
      UnaryOperator<Formula> instead,
      UnaryOperator<Condition> insteadOf,
      UnaryOperator<ReferenceTable.Numbers> lookedUp) {
    this.to = to;
    this.instead = instead;
    this.insteadOf = insteadOf;
    this.lookedUp = lookedUp;
  }

  /**
   * Returns a formula that looks things up in other tables of the same headings.
   *
   * @param lookedUp gives the column to look up in, in place of that of a table
   * @param words gives the condition on words that stands in place of one; null where it stays
   */
  public static Formula lookedUp(
      Formula formula,
      UnaryOperator<ReferenceTable.Numbers> lookedUp,
      UnaryOperator<Condition> words) {
    return new Rewriter(UnaryOperator.identity(), part -> null, words, lookedUp).moved(formula);
  }

  /** Returns a condition that looks things up in other tables; see the one for formulas. */
  public static Condition lookedUp(
      Condition condition,
      UnaryOperator<ReferenceTable.Numbers> lookedUp,
      UnaryOperator<Condition> words) {
    return new Rewriter(UnaryOperator.identity(), part -> null, words, lookedUp).moved(condition);
  }

  /** Returns {@code formula} rounding to another unit wherever it rounds to {@code from}. */
  public static Formula rounded(Formula formula, Unit from, Unit to) {
    return replaced(
        formula,
        part ->
            part instanceof Formula.Rounding rounding && rounding.unit().equals(from)
                ? new Formula.Rounding(rounding.way(), rounded(rounding.operand(), from, to), to)
                : null);
  }

  /** Returns {@code formula} with each column replaced by what {@code to} gives for it. */
  public static Formula formula(Formula formula, UnaryOperator<Reference> to) {
    return formula(formula, to, Map.of());
  }

  /**
   * Returns {@code formula} with each column replaced by what {@code to} gives for it.
   *
   * @param instead what stands in place of cells that have nothing to stand for them there
   */
  public static Formula formula(
      Formula formula, UnaryOperator<Reference> to, Map<Reference, Formula> instead) {
    return new Rewriter(
            to, part -> part instanceof Formula.Cell cell ? instead.get(cell.reference()) : null)
        .moved(formula);
  }

  /** Returns {@code whole} with {@code instead} wherever {@code part} stood. */
  static Formula replaced(Formula whole, Formula part, Formula instead) {
    return replaced(whole, each -> each.equals(part) ? instead : null);
  }

  /**
   * Returns {@code whole} with other parts in the place of some.
   *
   * @param instead gives what stands in the place of a part; null where its own parts are to be
   *     looked at
   */
  static Formula replaced(Formula whole, UnaryOperator<Formula> instead) {
    return new Rewriter(UnaryOperator.identity(), instead).moved(whole);
  }

  /**
   * Shows the parts of a formula, itself first, those of conditions among them.
   *
   * @param seen is shown each; says whether to look into it
   */
  static void parts(Formula whole, Predicate<Formula> seen) {
    new Rewriter(UnaryOperator.identity(), part -> seen.test(part) ? null : part).moved(whole);
  }

  /** Returns {@code whole} with {@code instead} wherever the condition {@code part} stood. */
  static Formula replaced(Formula whole, Condition part, Condition instead) {
    return new Rewriter(
            UnaryOperator.identity(), each -> null, each -> each.equals(part) ? instead : null)
        .moved(whole);
  }

  /** Returns all conditions in a formula. */
  static List<Condition> conditions(Formula whole) {
    List<Condition> conditions = new ArrayList<>();
    UnaryOperator<Condition> collect =
        condition -> {
          conditions.add(condition);
          return null;
        };
    new Rewriter(UnaryOperator.identity(), part -> null, collect).moved(whole);
    return conditions;
  }

  /**
   * Returns the way through the choices of a formula that is taken where conditions hold or not.
   */
  public static Formula taken(Formula whole, Predicate<Condition> holds) {
    return new Rewriter(
            UnaryOperator.identity(),
            part ->
                part instanceof Formula.Choose choose
                    ? taken(
                        holds.test(choose.condition()) ? choose.then() : choose.otherwise(), holds)
                    : null)
        .moved(whole);
  }

  private Condition moved(Condition part) {
    Condition other = insteadOf.apply(part);
    return other == null ? part.accept(this) : other;
  }

  private Formula moved(Formula part) {
    Formula other = instead.apply(part);
    return other == null ? part.accept(this) : other;
  }

  /** Returns {@code condition} with each column replaced by what {@code to} gives for it. */
  public static Condition condition(Condition condition, UnaryOperator<Reference> to) {
    return condition.accept(new Rewriter(to, part -> null));
  }

  @Override
  public Formula constant(Formula.Constant constant) {
    return constant;
  }

  @Override
  public Formula cell(Formula.Cell cell) {
    return new Formula.Cell(to.apply(cell.reference()));
  }

  @Override
  public Formula arithmetic(Formula.Arithmetic sum) {
    return new Formula.Arithmetic(sum.operator(), moved(sum.left()), moved(sum.right()));
  }

  @Override
  public Formula extreme(Formula.Extreme extreme) {
    return new Formula.Extreme(extreme.largest(), moved(extreme.left()), moved(extreme.right()));
  }

  @Override
  public Formula rounding(Formula.Rounding rounding) {
    return new Formula.Rounding(rounding.way(), moved(rounding.operand()), rounding.unit());
  }

  @Override
  public Formula power(Formula.Power power) {
    return new Formula.Power(moved(power.base()), moved(power.exponent()));
  }

  @Override
  public Formula function(Formula.Function function) {
    return new Formula.Function(function.kind(), moved(function.operand()));
  }

  @Override
  public Formula measure(Formula.Measure measure) {
    return new Formula.Measure(moved(measure.operand()), measure.unit());
  }

  @Override
  public Formula choose(Formula.Choose choose) {
    return new Formula.Choose(
        moved(choose.condition()), moved(choose.then()), moved(choose.otherwise()));
  }

  @Override
  public Formula nothing(Formula.Nothing nothing) {
    return nothing;
  }

  @Override
  public Formula lookup(Formula.Lookup lookup) {
    return new Formula.Lookup(to.apply(lookup.word()), lookedUp.apply(lookup.column()));
  }

  @Override
  public Formula nth(Formula.Nth nth) {
    return new Formula.Nth(moved(nth.position()), nth.options().stream().map(this::moved).toList());
  }

  @Override
  public Formula lookupAcross(Formula.LookupAcross lookup) {
    return new Formula.LookupAcross(
        to.apply(lookup.word()),
        lookup.columns().stream().map(lookedUp).toList(),
        moved(lookup.position()));
  }

  @Override
  public Formula lookupCount(Formula.LookupCount lookup) {
    return new Formula.LookupCount(
        to.apply(lookup.word()),
        lookup.columns().stream().map(lookedUp).toList(),
        moved(lookup.limit()));
  }

  @Override
  public Formula aggregate(Formula.Aggregate aggregate) {
    return new Formula.Aggregate(aggregate.aggregation(), to.apply(aggregate.column()));
  }

  @Override
  public Formula where(Formula.Where where) {
    Matching matching = where.matching();
    return new Formula.Where(
        where.kind(),
        to.apply(where.column()),
        new Matching(
            matching.pairs().stream().map(this::pair).toList(), matching.limit().map(this::limit)));
  }

  private Matching.Pair pair(Matching.Pair pair) {
    return new Matching.Pair(to.apply(pair.word()), to.apply(pair.key()));
  }

  private Matching.Limit limit(Matching.Limit limit) {
    return new Matching.Limit(to.apply(limit.column()), limit.comparator(), moved(limit.than()));
  }

  @Override
  public Formula rowLookup(Formula.RowLookup lookup) {
    return new Formula.RowLookup(to.apply(lookup.column()), to.apply(lookup.word()));
  }

  @Override
  public Formula pick(Formula.Pick pick) {
    return new Formula.Pick(to.apply(pick.column()), moved(pick.position()));
  }

  @Override
  public Condition comparison(Condition.Comparison comparison) {
    return new Condition.Comparison(
        comparison.comparator(), moved(comparison.left()), moved(comparison.right()));
  }

  @Override
  public Condition wordIs(Condition.WordIs wordIs) {
    return new Condition.WordIs(to.apply(wordIs.word()), wordIs.words());
  }

  @Override
  public Condition given(Condition.Given given) {
    return new Condition.Given(to.apply(given.cell()));
  }

  @Override
  public Condition joined(Condition.Joined joined) {
    return new Condition.Joined(joined.both(), moved(joined.left()), moved(joined.right()));
  }

  @Override
  public Condition not(Condition.Not not) {
    return new Condition.Not(moved(not.condition()));
  }
}
