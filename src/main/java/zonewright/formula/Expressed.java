package zonewright.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.Dimension;
import zonewright.units.Scale;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Turns a formula of quantities into the same formula of plain numbers in one unit system.
 *
 * <p>Each node is known with its scale, the exact size of the unit its number has; where two scales
 * must meet, the factor between them becomes a constant, put as far left as it goes: flow ÷ area is
 * 96.25 × flow ÷ area in gallons a minute, square feet and inches an hour.
 */
public final class Expressed
    implements FormulaVisitor<Expressed.Scaled>, ConditionVisitor<Condition> {
  /** A formula of plain numbers and the exact size of its unit in SI. */
  public record Scaled(Formula plain, Scale scale) {}

  /** The factors met so far, of which there are few: each takes a division of many digits. */
  private static final Map<Scale, Double> FACTORS = new ConcurrentHashMap<>();

  private final UnitSystem system;

  private Expressed(UnitSystem system) {
    this.system = system;
  }

  /** Returns {@code formula} as plain numbers of {@code system}, its result in {@code unit}. */
  public static Formula in(Formula formula, UnitSystem system, Unit unit) {
    return brought(formula.accept(new Expressed(system)), unit.size());
  }

  /** Returns {@code condition} as plain numbers of {@code system}. */
  public static Condition in(Condition condition, UnitSystem system) {
    DimensionCheck.of(condition);
    return condition.accept(new Expressed(system));
  }

  private static Formula brought(Scaled scaled, Scale target) {
    return scaled.scale().same(target)
        ? scaled.plain()
        : multiplied(scaled.plain(), scaled.scale().over(target));
  }

  private static Formula multiplied(Formula plain, Scale factor) {
    if (plain instanceof Formula.Constant constant) {
      return Formula.number(exactly(constant.value(), factor));
    }
    if (plain instanceof Formula.Nothing) {
      return plain;
    }
    if (plain instanceof Formula.Choose choose) {
      return new Formula.Choose(
          choose.condition(),
          multiplied(choose.then(), factor),
          multiplied(choose.otherwise(), factor));
    }
    if (plain instanceof Formula.Nth nth) {
      return each(nth, option -> multiplied(option, factor));
    }
    if (plain instanceof Formula.Arithmetic product && product.operator().rank() == 2) {
      return new Formula.Arithmetic(
          product.operator(), multiplied(product.left(), factor), product.right());
    }
    double times = FACTORS.computeIfAbsent(factor, Scale::toDouble);
    double over = FACTORS.computeIfAbsent(Scale.ONE.over(factor), Scale::toDouble);
    return Double.toString(over).length() < Double.toString(times).length()
        ? plain.over(Formula.number(over))
        : Formula.number(times).times(plain);
  }

  private static Formula each(Formula.Nth nth, UnaryOperator<Formula> change) {
    return new Formula.Nth(nth.position(), nth.options().stream().map(change).toList());
  }

  private static double exactly(double value, Scale factor) {
    return new BigDecimal(Double.toString(value))
        .multiply(factor.above())
        .divide(factor.below(), MathContext.DECIMAL128)
        .doubleValue();
  }

  private Formula pure(Formula formula) {
    return brought(formula.accept(this), Scale.ONE);
  }

  /** Two formulas on one scale: that of the first, unless only the second has a unit to keep. */
  private record Pair(Formula left, Formula right, Scale scale) {}

  private Pair together(Formula left, Formula right) {
    Scaled first = left.accept(this);
    Scaled second = right.accept(this);
    Scale scale = free(first.plain()) ? second.scale() : first.scale();
    return new Pair(brought(first, scale), brought(second, scale), scale);
  }

  /** Says whether a formula can be brought to any scale without a factor. */
  private static boolean free(Formula plain) {
    return plain instanceof Formula.Constant
        || plain instanceof Formula.Nothing
        || (plain instanceof Formula.Choose choose
            && free(choose.then())
            && free(choose.otherwise()));
  }

  @Override
  public Scaled constant(Formula.Constant constant) {
    boolean inBothSystems = constant.unit().dimension().equals(Dimension.TIME);
    return new Scaled(
        inBothSystems ? constant : Formula.number(constant.value()), constant.unit().size());
  }

  @Override
  public Scaled cell(Formula.Cell cell) {
    return new Scaled(cell, cell.reference().kind().unit(system).size());
  }

  @Override
  public Scaled arithmetic(Formula.Arithmetic sum) {
    if (sum.operator().rank() == 1) {
      Pair pair = together(sum.left(), sum.right());
      return new Scaled(
          new Formula.Arithmetic(sum.operator(), pair.left(), pair.right()), pair.scale());
    }
    Scaled left = sum.left().accept(this);
    Scaled right = sum.right().accept(this);
    Scale scale =
        sum.operator() == Operator.TIMES
            ? left.scale().times(right.scale())
            : left.scale().over(right.scale());
    return new Scaled(new Formula.Arithmetic(sum.operator(), left.plain(), right.plain()), scale);
  }

  @Override
  public Scaled extreme(Formula.Extreme extreme) {
    Pair pair = together(extreme.left(), extreme.right());
    return new Scaled(
        new Formula.Extreme(extreme.largest(), pair.left(), pair.right()), pair.scale());
  }

  @Override
  public Scaled rounding(Formula.Rounding rounding) {
    Scale scale = rounding.unit().size();
    Formula operand = brought(rounding.operand().accept(this), scale);
    return new Scaled(new Formula.Rounding(rounding.way(), operand, Units.ONE), scale);
  }

  @Override
  public Scaled power(Formula.Power power) {
    return new Scaled(new Formula.Power(pure(power.base()), pure(power.exponent())), Scale.ONE);
  }

  @Override
  public Scaled function(Formula.Function function) {
    Scaled operand = function.operand().accept(this);
    Scale scale = function.kind().keepsUnit() ? operand.scale() : Scale.ONE;
    return new Scaled(new Formula.Function(function.kind(), brought(operand, scale)), scale);
  }

  @Override
  public Scaled measure(Formula.Measure measure) {
    if (measure.operand() instanceof Formula.Cell cell) {
      Unit own = cell.reference().kind().unit(system);
      double shift = own.readingAtZeroOf(measure.unit());
      if (shift != 0) {
        Formula above = cell.minus(Formula.number(shift));
        return new Scaled(brought(new Scaled(above, own.size()), measure.unit().size()), Scale.ONE);
      }
    }
    return new Scaled(brought(measure.operand().accept(this), measure.unit().size()), Scale.ONE);
  }

  @Override
  public Scaled choose(Formula.Choose choose) {
    Pair pair = together(choose.then(), choose.otherwise());
    Condition condition = choose.condition().accept(this);
    return new Scaled(new Formula.Choose(condition, pair.left(), pair.right()), pair.scale());
  }

  @Override
  public Scaled nth(Formula.Nth nth) {
    Scale scale =
        nth.options().stream()
            .map(option -> option.accept(this))
            .filter(option -> !free(option.plain()))
            .findFirst()
            .orElseGet(() -> nth.options().get(0).accept(this))
            .scale();
    Formula.Nth plain = new Formula.Nth(pure(nth.position()), nth.options());
    return new Scaled(each(plain, option -> brought(option.accept(this), scale)), scale);
  }

  @Override
  public Scaled nothing(Formula.Nothing nothing) {
    return new Scaled(nothing, Scale.ONE);
  }

  @Override
  public Scaled lookup(Formula.Lookup lookup) {
    return new Scaled(lookup, lookup.column().kind().unit(system).size());
  }

  @Override
  public Scaled lookupAcross(Formula.LookupAcross lookup) {
    Formula position = pure(lookup.position());
    return new Scaled(
        new Formula.LookupAcross(lookup.word(), lookup.columns(), position),
        lookup.columns().get(0).kind().unit(system).size());
  }

  @Override
  public Scaled lookupCount(Formula.LookupCount lookup) {
    Scale scale = lookup.columns().get(0).kind().unit(system).size();
    return new Scaled(
        new Formula.LookupCount(
            lookup.word(), lookup.columns(), brought(lookup.limit().accept(this), scale)),
        Scale.ONE);
  }

  @Override
  public Scaled aggregate(Formula.Aggregate aggregate) {
    return new Scaled(
        aggregate,
        aggregate.aggregation().keepsUnit()
            ? aggregate.column().kind().unit(system).size()
            : Scale.ONE);
  }

  @Override
  public Scaled where(Formula.Where where) {
    Matching matching = where.matching();
    Optional<Matching.Limit> limit =
        matching
            .limit()
            .map(
                each ->
                    new Matching.Limit(
                        each.column(),
                        each.comparator(),
                        in(each.than(), system, each.column().kind().unit(system))));
    return new Scaled(
        new Formula.Where(where.kind(), where.column(), new Matching(matching.pairs(), limit)),
        where.kind().keepsUnit() ? where.column().kind().unit(system).size() : Scale.ONE);
  }

  @Override
  public Scaled rowLookup(Formula.RowLookup lookup) {
    return new Scaled(lookup, lookup.column().kind().unit(system).size());
  }

  @Override
  public Scaled pick(Formula.Pick pick) {
    return new Scaled(
        new Formula.Pick(pick.column(), pure(pick.position())),
        pick.column().kind().unit(system).size());
  }

  @Override
  public Condition comparison(Condition.Comparison comparison) {
    Pair pair = together(comparison.left(), comparison.right());
    return new Condition.Comparison(comparison.comparator(), pair.left(), pair.right());
  }

  @Override
  public Condition wordIs(Condition.WordIs wordIs) {
    return wordIs;
  }

  @Override
  public Condition given(Condition.Given given) {
    return given;
  }

  @Override
  public Condition joined(Condition.Joined joined) {
    return new Condition.Joined(
        joined.both(), joined.left().accept(this), joined.right().accept(this));
  }

  @Override
  public Condition not(Condition.Not not) {
    return new Condition.Not(not.condition().accept(this));
  }
}
