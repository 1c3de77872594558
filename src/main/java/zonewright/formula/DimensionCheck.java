package zonewright.formula;

import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.Dimension;

/** Finds what a formula is made of and refuses one that adds, compares or raises unlike things. */
final class DimensionCheck implements FormulaVisitor<DimensionCheck.Found>, ConditionVisitor<Void> {
  /** A dimension, or {@code any} for a branch that holds no number. */
  record Found(Dimension dimension, boolean any) {}

  private static final Found ANY = new Found(Dimension.NONE, true);

  private DimensionCheck() {}

  static Dimension of(Formula formula) {
    return formula.accept(new DimensionCheck()).dimension();
  }

  static void of(Condition condition) {
    condition.accept(new DimensionCheck());
  }

  private static Found found(Dimension dimension) {
    return new Found(dimension, false);
  }

  private Found alike(Formula left, Formula right, String verb) {
    Found first = left.accept(this);
    Found second = right.accept(this);
    if (first.any() || second.any()) {
      return first.any() ? second : first;
    }
    if (!first.dimension().equals(second.dimension())) {
      throw new IllegalArgumentException(
          "cannot %s %s and %s"
              .formatted(verb, first.dimension().inWords(), second.dimension().inWords()));
    }
    return first;
  }

  private Found pure(Formula formula, String where) {
    Found found = formula.accept(this);
    if (!found.any() && !found.dimension().equals(Dimension.NONE)) {
      throw new IllegalArgumentException(
          where + " takes a pure number, not " + found.dimension().inWords());
    }
    return found(Dimension.NONE);
  }

  @Override
  public Found constant(Formula.Constant constant) {
    return found(constant.unit().dimension());
  }

  @Override
  public Found cell(Formula.Cell cell) {
    return found(cell.reference().kind().dimension());
  }

  @Override
  public Found arithmetic(Formula.Arithmetic sum) {
    return switch (sum.operator()) {
      case PLUS -> alike(sum.left(), sum.right(), "add");
      case MINUS -> alike(sum.left(), sum.right(), "subtract");
      case TIMES -> found(made(sum.left()).times(made(sum.right())));
      case OVER -> found(made(sum.left()).over(made(sum.right())));
    };
  }

  private Dimension made(Formula formula) {
    return formula.accept(this).dimension();
  }

  @Override
  public Found extreme(Formula.Extreme extreme) {
    return alike(extreme.left(), extreme.right(), "compare");
  }

  @Override
  public Found rounding(Formula.Rounding rounding) {
    Found found = rounding.operand().accept(this);
    if (!found.dimension().equals(rounding.unit().dimension())) {
      throw new IllegalArgumentException(
          "cannot round %s to whole %s"
              .formatted(found.dimension().inWords(), rounding.unit().symbol()));
    }
    return found;
  }

  @Override
  public Found power(Formula.Power power) {
    pure(power.base(), "a power");
    return pure(power.exponent(), "a power");
  }

  @Override
  public Found function(Formula.Function function) {
    return function.kind().keepsUnit()
        ? function.operand().accept(this)
        : pure(function.operand(), function.kind().words().strip());
  }

  @Override
  public Found measure(Formula.Measure measure) {
    Found found = measure.operand().accept(this);
    if (!found.dimension().equals(measure.unit().dimension())) {
      throw new IllegalArgumentException(
          "cannot measure %s in %s"
              .formatted(found.dimension().inWords(), measure.unit().symbol()));
    }
    return found(Dimension.NONE);
  }

  @Override
  public Found choose(Formula.Choose choose) {
    choose.condition().accept(this);
    return alike(choose.then(), choose.otherwise(), "choose between");
  }

  @Override
  public Found nth(Formula.Nth nth) {
    pure(nth.position(), "a position");
    Found found = ANY;
    for (Formula option : nth.options()) {
      found = alike(nth.options().get(0), option, "choose between");
    }
    return found;
  }

  @Override
  public Found nothing(Formula.Nothing nothing) {
    return ANY;
  }

  @Override
  public Found lookup(Formula.Lookup lookup) {
    return found(lookup.column().kind().dimension());
  }

  @Override
  public Found lookupAcross(Formula.LookupAcross lookup) {
    pure(lookup.position(), "a position");
    return found(lookup.columns().get(0).kind().dimension());
  }

  @Override
  public Found lookupCount(Formula.LookupCount lookup) {
    alike(new Formula.Lookup(lookup.word(), lookup.columns().get(0)), lookup.limit(), "compare");
    return found(Dimension.NONE);
  }

  @Override
  public Found aggregate(Formula.Aggregate aggregate) {
    return aggregate.aggregation().keepsUnit()
        ? found(aggregate.column().kind().dimension())
        : found(Dimension.NONE);
  }

  @Override
  public Found where(Formula.Where where) {
    where
        .matching()
        .limit()
        .ifPresent(limit -> alike(new Formula.Cell(limit.column()), limit.than(), "compare"));
    return found(where.kind().keepsUnit() ? where.column().kind().dimension() : Dimension.NONE);
  }

  @Override
  public Found rowLookup(Formula.RowLookup lookup) {
    return found(lookup.column().kind().dimension());
  }

  @Override
  public Found pick(Formula.Pick pick) {
    pure(pick.position(), "a position");
    return found(pick.column().kind().dimension());
  }

  @Override
  public Void comparison(Condition.Comparison comparison) {
    alike(comparison.left(), comparison.right(), "compare");
    return null;
  }

  @Override
  public Void wordIs(Condition.WordIs wordIs) {
    return null;
  }

  @Override
  public Void given(Condition.Given given) {
    return null;
  }

  @Override
  public Void joined(Condition.Joined joined) {
    joined.left().accept(this);
    joined.right().accept(this);
    return null;
  }

  @Override
  public Void not(Condition.Not not) {
    not.condition().accept(this);
    return null;
  }
}
