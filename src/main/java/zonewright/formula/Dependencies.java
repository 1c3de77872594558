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
    formula.read(dependencies);
    return dependencies;
  }

  /** Returns what {@code condition} depends on. */
  public static Dependencies of(Condition condition) {
    Dependencies dependencies = new Dependencies();
    condition.read(dependencies);
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
    sum.left().read(this);
    return sum.right().read(this);
  }

  @Override
  public Void extreme(Formula.Extreme extreme) {
    extreme.left().read(this);
    return extreme.right().read(this);
  }

  @Override
  public Void rounding(Formula.Rounding rounding) {
    return rounding.operand().read(this);
  }

  @Override
  public Void power(Formula.Power power) {
    power.base().read(this);
    return power.exponent().read(this);
  }

  @Override
  public Void function(Formula.Function function) {
    return function.operand().read(this);
  }

  @Override
  public Void measure(Formula.Measure measure) {
    return measure.operand().read(this);
  }

  @Override
  public Void choose(Formula.Choose choose) {
    choose.condition().read(this);
    choose.then().read(this);
    return choose.otherwise().read(this);
  }

  @Override
  public Void nth(Formula.Nth nth) {
    nth.position().read(this);
    nth.options().forEach(option -> option.read(this));
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
    return lookup.position().read(this);
  }

  @Override
  public Void lookupCount(Formula.LookupCount lookup) {
    cells.add(lookup.word());
    published.addAll(lookup.columns());
    return lookup.limit().read(this);
  }

  @Override
  public Void gather(Formula.Aggregate gather) {
    columns.add(gather.column());
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
              limit.than().read(this);
            });
    return null;
  }

  @Override
  public Void find(Formula.RowLookup find) {
    columns.add(find.column());
    cells.add(find.word());
    finds.add(find);
    return null;
  }

  @Override
  public Void pick(Formula.Pick pick) {
    columns.add(pick.column());
    return pick.position().read(this);
  }

  @Override
  public Void comparison(Condition.Comparison comparison) {
    comparison.left().read(this);
    return comparison.right().read(this);
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
    joined.left().read(this);
    return joined.right().read(this);
  }

  @Override
  public Void not(Condition.Not not) {
    return not.condition().read(this);
  }
}
