package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Condition.ConditionVisitor;

/** Makes a formula of plain numbers ready to run over blocks of rows. */
final class Kernels implements FormulaVisitor<Kernel>, ConditionVisitor<Kernel> {
  private final Workspace workspace;

  /** What stands where a question does not arise. */
  private final double none;

  Kernels(Workspace workspace) {
    this(workspace, Double.NaN);
  }

  Kernels(Workspace workspace, double none) {
    this.workspace = workspace;
    this.none = none;
  }

  private static Kernel same(Kernel whole, Kernel... parts) {
    for (Kernel part : parts) {
      if (!(part instanceof Kernel.Single)) {
        return whole;
      }
    }
    return new Kernel.Same(whole);
  }

  private Kernel cells(Reference reference) {
    BlockColumn column = workspace.column(reference);
    return workspace.single(reference)
        ? new WholeColumnKernels.OneCell(column)
        : new Kernel.Cells(column);
  }

  @Override
  public Kernel constant(Formula.Constant constant) {
    return new WholeColumnKernels.Constant(constant.value());
  }

  @Override
  public Kernel cell(Formula.Cell cell) {
    return cells(cell.reference());
  }

  @Override
  public Kernel arithmetic(Formula.Arithmetic sum) {
    Kernel left = sum.left().accept(this);
    Kernel right = sum.right().accept(this);
    return same(ArithmeticKernels.of(sum.operator(), left, right), left, right);
  }

  @Override
  public Kernel extreme(Formula.Extreme extreme) {
    Kernel left = extreme.left().accept(this);
    Kernel right = extreme.right().accept(this);
    return same(new ArithmeticKernels.Extreme(extreme.largest(), left, right), left, right);
  }

  @Override
  public Kernel rounding(Formula.Rounding rounding) {
    Kernel operand = rounding.operand().accept(this);
    return same(new ArithmeticKernels.Rounding(rounding.way(), operand), operand);
  }

  @Override
  public Kernel power(Formula.Power power) {
    Kernel base = power.base().accept(this);
    Kernel exponent = power.exponent().accept(this);
    return same(new ArithmeticKernels.Power(base, exponent), base, exponent);
  }

  @Override
  public Kernel function(Formula.Function function) {
    Kernel operand = function.operand().accept(this);
    return same(new ArithmeticKernels.Function(function.kind(), operand), operand);
  }

  @Override
  public Kernel measure(Formula.Measure measure) {
    return measure.operand().accept(this);
  }

  @Override
  public Kernel choose(Formula.Choose choose) {
    Kernel condition = choose.condition().accept(this);
    Kernel then = choose.then().accept(this);
    Kernel otherwise = choose.otherwise().accept(this);
    return same(
        new ConditionKernels.Choose(condition, then, otherwise), condition, then, otherwise);
  }

  @Override
  public Kernel nth(Formula.Nth nth) {
    Kernel position = nth.position().accept(this);
    List<Kernel> options = nth.options().stream().map(option -> option.accept(this)).toList();
    List<Kernel> parts = new ArrayList<>(options);
    parts.add(position);
    return same(new NthKernel(position, options), parts.toArray(Kernel[]::new));
  }

  @Override
  public Kernel nothing(Formula.Nothing nothing) {
    return new WholeColumnKernels.Constant(nothing.fault() ? Double.NaN : none);
  }

  @Override
  public Kernel lookup(Formula.Lookup lookup) {
    Kernel word = cells(lookup.word());
    double[] list = lookup.column().values(workspace.system());
    return same(new WholeColumnKernels.FromList(list, word), word);
  }

  @Override
  public Kernel lookupAcross(Formula.LookupAcross lookup) {
    Kernel word = cells(lookup.word());
    Kernel position = lookup.position().accept(this);
    return same(
        new WholeColumnKernels.FromGrid(grid(lookup.columns()), word, position), word, position);
  }

  @Override
  public Kernel lookupCount(Formula.LookupCount lookup) {
    Kernel word = cells(lookup.word());
    Kernel limit = lookup.limit().accept(this);
    return same(
        new WholeColumnKernels.CountBelow(grid(lookup.columns()), word, limit), word, limit);
  }

  private double[][] grid(List<ReferenceTable.Numbers> columns) {
    return columns.stream()
        .map(column -> column.values(workspace.system()))
        .toArray(double[][]::new);
  }

  @Override
  public Kernel aggregate(Formula.Aggregate aggregate) {
    return new WholeColumnKernels.Aggregate(
        aggregate.aggregation(),
        workspace.column(aggregate.column()),
        workspace.counted(aggregate.column()));
  }

  @Override
  public Kernel where(Formula.Where where) {
    Matching matching = where.matching();
    List<Kernel> keys = matching.pairs().stream().map(pair -> cells(pair.key())).toList();
    List<Kernel> parts = new ArrayList<>(keys);
    WhereKernel.Limited limited = null;
    if (matching.limit().isPresent()) {
      Matching.Limit limit = matching.limit().get();
      Kernel than = limit.than().accept(this);
      parts.add(than);
      limited =
          new WhereKernel.Limited(workspace.column(limit.column()), limit, than, own(matching));
    }
    Kernel kernel =
        new WhereKernel(
            where.kind(),
            workspace.column(where.column()),
            workspace.counted(where.column()),
            matching.pairs().stream().map(pair -> workspace.column(pair.word())).toList(),
            keys,
            limited);
    return same(kernel, parts.toArray(Kernel[]::new));
  }

  /** Says whether a matching holds the rows of a table against each other by the same number. */
  private boolean own(Matching matching) {
    Matching.Limit limit = matching.limit().orElseThrow();
    return limit.than() instanceof Formula.Cell cell
        && cell.reference().equals(limit.column())
        && !workspace.single(limit.column())
        && matching.pairs().stream().allMatch(pair -> pair.word().equals(pair.key()));
  }

  @Override
  public Kernel rowLookup(Formula.RowLookup lookup) {
    Kernel word = cells(lookup.word());
    return same(new WholeColumnKernels.Pick(workspace.column(lookup.column()), word, 0), word);
  }

  @Override
  public Kernel pick(Formula.Pick pick) {
    Kernel position = pick.position().accept(this);
    return same(
        new WholeColumnKernels.Pick(workspace.column(pick.column()), position, 1), position);
  }

  @Override
  public Kernel comparison(Condition.Comparison comparison) {
    Kernel left = comparison.left().accept(this);
    Kernel right = comparison.right().accept(this);
    return same(new ConditionKernels.Comparison(comparison.comparator(), left, right), left, right);
  }

  @Override
  public Kernel wordIs(Condition.WordIs wordIs) {
    Kernel word = cells(wordIs.word());
    BlockColumn held = workspace.column(wordIs.word());
    if (held.follows()) {
      return same(new ConditionKernels.OneOf(() -> held.places(wordIs.words()), word), word);
    }
    List<Integer> positions = workspace.positions(wordIs.word(), wordIs.words());
    return same(new ConditionKernels.OneOf(() -> positions, word), word);
  }

  @Override
  public Kernel given(Condition.Given given) {
    Kernel value = cells(given.cell());
    Kernel entered =
        workspace.single(given.cell())
            ? new WholeColumnKernels.OneCell(workspace.given(given.cell()))
            : new Kernel.Cells(workspace.given(given.cell()));
    return same(new ConditionKernels.Given(entered, value), entered, value);
  }

  @Override
  public Kernel joined(Condition.Joined joined) {
    Kernel left = joined.left().accept(this);
    Kernel right = joined.right().accept(this);
    return same(new ArithmeticKernels.Extreme(!joined.both(), left, right), left, right);
  }

  @Override
  public Kernel not(Condition.Not not) {
    Kernel condition = not.condition().accept(this);
    return same(
        ArithmeticKernels.of(Operator.MINUS, new WholeColumnKernels.Constant(1), condition),
        condition);
  }
}
