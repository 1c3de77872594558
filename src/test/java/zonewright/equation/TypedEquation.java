package zonewright.equation;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FormulaVisitor;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.sheet.Schema;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.Units;

/** Writes a declared formula as a person would type it, where the language has words for it. */
public final class TypedEquation
    implements FormulaVisitor<String>, Condition.ConditionVisitor<String> {
  /** The language has no words for a part of it. */
  private static final class Inexpressible extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  private final Schema schema;
  private final KnownColumns columns;

  private TypedEquation(Schema schema, KnownColumns columns) {
    this.schema = schema;
    this.columns = columns;
  }

  /** Returns the equation as it would be typed on a sheet; empty where it cannot be. */
  public static Optional<String> of(Formula formula, Schema schema, KnownColumns columns) {
    try {
      return Optional.of(formula.accept(new TypedEquation(schema, columns)));
    } catch (Inexpressible nothing) {
      return Optional.empty();
    }
  }

  private static String none() {
    throw new Inexpressible();
  }

  private static String number(double value, Unit unit) {
    if (value == Math.PI) {
      return "PI()";
    }
    String number = QuantityText.exact(value);
    boolean unnamed = unit.equals(Units.ONE) || unit.equals(Units.MONEY);
    if (unit.equals(Units.PERCENT)) {
      return none();
    }
    return unnamed
        ? number
        : Units.named(unit.symbol()).isPresent() ? number + " " + unit.symbol() : none();
  }

  private String name(Reference reference) {
    return columns.written(schema.column(reference));
  }

  private String in(Formula part) {
    String typed = part.accept(this);
    return part instanceof Formula.Arithmetic || part instanceof Formula.Power
        ? "(" + typed + ")"
        : typed;
  }

  @Override
  public String constant(Formula.Constant constant) {
    return number(constant.value(), constant.unit());
  }

  @Override
  public String cell(Formula.Cell cell) {
    return name(cell.reference());
  }

  @Override
  public String arithmetic(Formula.Arithmetic sum) {
    return in(sum.left()) + " " + sum.operator().printed() + " " + in(sum.right());
  }

  @Override
  public String extreme(Formula.Extreme extreme) {
    return (extreme.largest() ? "MAX(" : "MIN(")
        + extreme.left().accept(this)
        + "; "
        + extreme.right().accept(this)
        + ")";
  }

  @Override
  public String rounding(Formula.Rounding rounding) {
    String operand = rounding.operand().accept(this);
    String step = rounding.unit().equals(Units.ONE) ? "" : "; " + number(1, rounding.unit());
    String function =
        switch (rounding.way()) {
          case UP -> "CEILING";
          case DOWN -> "FLOOR";
          case NEAREST -> "ROUND";
        };
    return function + "(" + operand + step + ")";
  }

  @Override
  public String power(Formula.Power power) {
    return in(power.base()) + " ^ " + in(power.exponent());
  }

  @Override
  public String function(Formula.Function function) {
    return switch (function.kind()) {
      case MONTH -> none();
      default -> function.kind().spreadsheet() + "(" + function.operand().accept(this) + ")";
    };
  }

  @Override
  public String measure(Formula.Measure measure) {
    return measure.unit().equals(Units.ONE)
        ? none()
        : in(measure.operand()) + " in " + measure.unit().symbol();
  }

  @Override
  public String choose(Formula.Choose choose) {
    return "IF(%s; %s; %s)"
        .formatted(
            choose.condition().accept(this),
            choose.then().accept(this),
            choose.otherwise().accept(this));
  }

  @Override
  public String nth(Formula.Nth nth) {
    return none();
  }

  @Override
  public String nothing(Formula.Nothing nothing) {
    return nothing.fault() ? none() : "\"" + nothing.shown() + "\"";
  }

  @Override
  public String lookup(Formula.Lookup lookup) {
    return none();
  }

  @Override
  public String lookupAcross(Formula.LookupAcross lookup) {
    return none();
  }

  @Override
  public String lookupCount(Formula.LookupCount lookup) {
    return none();
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    return switch (aggregate.aggregation()) {
      case SUM, LARGEST, SMALLEST, COUNT ->
          aggregate.aggregation().spreadsheet() + "(" + name(aggregate.column()) + ")";
      default -> none();
    };
  }

  @Override
  public String where(Formula.Where where) {
    List<Matching.Pair> pairs = where.matching().pairs();
    Optional<Matching.Limit> limit = where.matching().limit();
    if (schema.table(where.column().table()).single()
        || pairs.size() + (limit.isPresent() ? 1 : 0) != 1) {
      return none();
    }
    String rows =
        limit.isPresent()
            ? name(limit.get().column())
                + "; \""
                + limit.get().comparator().typed()
                + limit.get().than().accept(this)
                + "\""
            : name(pairs.get(0).word()) + "; " + name(pairs.get(0).key());
    return switch (where.kind()) {
      case SUM -> "SUMIF(" + rows + "; " + name(where.column()) + ")";
      case COUNT -> "COUNTIF(" + rows + ")";
      default -> none();
    };
  }

  @Override
  public String rowLookup(Formula.RowLookup lookup) {
    return none();
  }

  @Override
  public String pick(Formula.Pick pick) {
    return none();
  }

  @Override
  public String comparison(Condition.Comparison comparison) {
    return comparison.left().accept(this)
        + " "
        + comparison.comparator().printed()
        + " "
        + comparison.right().accept(this);
  }

  @Override
  public String wordIs(Condition.WordIs wordIs) {
    List<String> each =
        wordIs.words().stream().map(word -> name(wordIs.word()) + " = \"" + word + "\"").toList();
    return each.size() == 1 ? each.get(0) : "OR(" + String.join("; ", each) + ")";
  }

  @Override
  public String given(Condition.Given given) {
    return "NOT(ISBLANK(" + name(given.cell()) + "))";
  }

  @Override
  public String joined(Condition.Joined joined) {
    return (joined.both() ? "AND(" : "OR(")
        + joined.left().accept(this)
        + "; "
        + joined.right().accept(this)
        + ")";
  }

  @Override
  public String not(Condition.Not not) {
    return "NOT(" + not.condition().accept(this) + ")";
  }
}
