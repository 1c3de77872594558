package zonewright.formula;

import java.util.LinkedHashSet;
import java.util.Set;
import zonewright.formula.Condition.ConditionVisitor;

/**
 * Lists the columns a formula depends on: cells of the same row or a one-row table, and whole
 * columns.
 */
public final class Dependencies implements FormulaVisitor<Void>, ConditionVisitor<Void> {
  private final Set<Reference> cells = new LinkedHashSet<>();
  private final Set<Reference> columns = new LinkedHashSet<>();
  private final Set<ReferenceTable.Numbers> published = new LinkedHashSet<>();
  private final Set<Matching.Pair> pairs = new LinkedHashSet<>();
  private final Set<Formula.RowLookup> finds = new LinkedHashSet<>();
  private final Set<Reference> givens = new LinkedHashSet<>();

  private Dependencies() {}

  /** Returns what {@code formula} depends on. */
  public static Dependencies of(Formula formula) {
    Dependencies dependencies = new Dependencies();
    formula.accept(dependencies);
    return dependencies;
  }

  /** Returns what {@code condition} depends on. */
  public static Dependencies of(Condition condition) {
    Dependencies dependencies = new Dependencies();
    condition.accept(dependencies);
    return dependencies;
  }

  /** Returns the columns whose cell in the same row counts, in the order of the formula. */
  public Set<Reference> cells() {
    return cells;
  }

  /** Returns the columns all of whose cells count. */
  public Set<Reference> columns() {
    return columns;
  }

  /** Returns the words it holds against each other. */
  public Set<Matching.Pair> pairs() {
    return pairs;
  }

  /** Returns the rows of other tables it finds by name. */
  public Set<Formula.RowLookup> finds() {
    return finds;
  }

  /** Returns the cells it asks whether something was typed into them. */
  public Set<Reference> givens() {
    return givens;
  }

  /** Returns the columns of reference tables it looks numbers up in. */
  public Set<ReferenceTable.Numbers> published() {
    return published;
  }

  @Override
  public Void constant(Formula.Constant constant) {
    return null;
  }

  @Override
  public Void cell(Formula.Cell cell) {
    cells.add(cell.reference());
    return null;
  }

  @Override
  public Void arithmetic(Formula.Arithmetic sum) {
    sum.left().accept(this);
    return sum.right().accept(this);
  }

  @Override
  public Void extreme(Formula.Extreme extreme) {
    extreme.left().accept(this);
    return extreme.right().accept(this);
  }

  @Override
  public Void rounding(Formula.Rounding rounding) {
    return rounding.operand().accept(this);
  }

  @Override
  public Void power(Formula.Power power) {
    power.base().accept(this);
    return power.exponent().accept(this);
  }

  @Override
  public Void function(Formula.Function function) {
    return function.operand().accept(this);
  }

  @Override
  public Void measure(Formula.Measure measure) {
    return measure.operand().accept(this);
  }

  @Override
  public Void choose(Formula.Choose choose) {
    choose.condition().accept(this);
    choose.then().accept(this);
    return choose.otherwise().accept(this);
  }

  @Override
  public Void nth(Formula.Nth nth) {
    nth.position().accept(this);
    nth.options().forEach(option -> option.accept(this));
    return null;
  }

  @Override
  public Void nothing(Formula.Nothing nothing) {
    return null;
  }

  @Override
  public Void lookup(Formula.Lookup lookup) {
    cells.add(lookup.word());
    published.add(lookup.column());
    return null;
  }

  @Override
  public Void lookupAcross(Formula.LookupAcross lookup) {
    cells.add(lookup.word());
    published.addAll(lookup.columns());
    return lookup.position().accept(this);
  }

  @Override
  public Void lookupCount(Formula.LookupCount lookup) {
    cells.add(lookup.word());
    published.addAll(lookup.columns());
    return lookup.limit().accept(this);
  }

  @Override
  public Void aggregate(Formula.Aggregate aggregate) {
    columns.add(aggregate.column());
    return null;
  }

  @Override
  public Void where(Formula.Where where) {
    columns.add(where.column());
    for (Matching.Pair pair : where.matching().pairs()) {
      columns.add(pair.word());
      cells.add(pair.key());
      pairs.add(pair);
    }
    where
        .matching()
        .limit()
        .ifPresent(
            limit -> {
              columns.add(limit.column());
              limit.than().accept(this);
            });
    return null;
  }

  @Override
  public Void rowLookup(Formula.RowLookup lookup) {
    columns.add(lookup.column());
    cells.add(lookup.word());
    finds.add(lookup);
    return null;
  }

  @Override
  public Void pick(Formula.Pick pick) {
    columns.add(pick.column());
    return pick.position().accept(this);
  }

  @Override
  public Void comparison(Condition.Comparison comparison) {
    comparison.left().accept(this);
    return comparison.right().accept(this);
  }

  @Override
  public Void wordIs(Condition.WordIs wordIs) {
    cells.add(wordIs.word());
    return null;
  }

  @Override
  public Void given(Condition.Given given) {
    givens.add(given.cell());
    cells.add(given.cell());
    return null;
  }

  @Override
  public Void joined(Condition.Joined joined) {
    joined.left().accept(this);
    return joined.right().accept(this);
  }

  @Override
  public Void not(Condition.Not not) {
    return not.condition().accept(this);
  }
}
