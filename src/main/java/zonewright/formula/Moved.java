package zonewright.formula;

import java.util.Map;
import java.util.function.UnaryOperator;
import zonewright.formula.Condition.ConditionReading;

/**
 * Writes a formula anew with other columns in the place of some, so that two tables of the same
 * columns need one declaration.
 */
public final class Moved implements Reading<Formula>, ConditionReading<Condition> {
  private final UnaryOperator<Reference> to;
  private final Map<Reference, Formula> instead;

  private Moved(UnaryOperator<Reference> to, Map<Reference, Formula> instead) {
    this.to = to;
    this.instead = instead;
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
    return formula.read(new Moved(to, instead));
  }

  /** Returns {@code condition} with each column replaced by what {@code to} gives for it. */
  public static Condition condition(Condition condition, UnaryOperator<Reference> to) {
    return condition.read(new Moved(to, Map.of()));
  }

  @Override
  public Formula constant(Formula.Constant constant) {
    return constant;
  }

  @Override
  public Formula cell(Formula.Cell cell) {
    Formula other = instead.get(cell.reference());
    return other == null ? new Formula.Cell(to.apply(cell.reference())) : other;
  }

  @Override
  public Formula arithmetic(Formula.Arithmetic sum) {
    return new Formula.Arithmetic(sum.operator(), sum.left().read(this), sum.right().read(this));
  }

  @Override
  public Formula extreme(Formula.Extreme extreme) {
    return new Formula.Extreme(
        extreme.largest(), extreme.left().read(this), extreme.right().read(this));
  }

  @Override
  public Formula rounding(Formula.Rounding rounding) {
    return new Formula.Rounding(rounding.way(), rounding.operand().read(this), rounding.unit());
  }

  @Override
  public Formula power(Formula.Power power) {
    return new Formula.Power(power.base().read(this), power.exponent().read(this));
  }

  @Override
  public Formula function(Formula.Function function) {
    return new Formula.Function(function.kind(), function.operand().read(this));
  }

  @Override
  public Formula measure(Formula.Measure measure) {
    return new Formula.Measure(measure.operand().read(this), measure.unit());
  }

  @Override
  public Formula choose(Formula.Choose choose) {
    return new Formula.Choose(
        choose.condition().read(this), choose.then().read(this), choose.otherwise().read(this));
  }

  @Override
  public Formula nothing(Formula.Nothing nothing) {
    return nothing;
  }

  @Override
  public Formula lookup(Formula.Lookup lookup) {
    return new Formula.Lookup(to.apply(lookup.word()), lookup.column());
  }

  @Override
  public Formula nth(Formula.Nth nth) {
    return new Formula.Nth(
        nth.position().read(this), nth.options().stream().map(each -> each.read(this)).toList());
  }

  @Override
  public Formula lookupAcross(Formula.LookupAcross lookup) {
    return new Formula.LookupAcross(
        to.apply(lookup.word()), lookup.columns(), lookup.position().read(this));
  }

  @Override
  public Formula gather(Formula.Gather gather) {
    return new Formula.Gather(gather.gathering(), to.apply(gather.column()));
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
    return new Matching.Limit(
        to.apply(limit.column()), limit.comparator(), limit.than().read(this));
  }

  @Override
  public Formula find(Formula.Find find) {
    return new Formula.Find(to.apply(find.column()), to.apply(find.word()));
  }

  @Override
  public Formula pick(Formula.Pick pick) {
    return new Formula.Pick(to.apply(pick.column()), pick.position().read(this));
  }

  @Override
  public Condition comparison(Condition.Comparison comparison) {
    return new Condition.Comparison(
        comparison.comparator(), comparison.left().read(this), comparison.right().read(this));
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
    return new Condition.Joined(joined.both(), joined.left().read(this), joined.right().read(this));
  }

  @Override
  public Condition not(Condition.Not not) {
    return new Condition.Not(not.condition().read(this));
  }
}
