package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Condition.ConditionVisitor;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** A declared formula as a person reads it: names joined by × and ÷, no factors. */
public final class PrintedText implements FormulaVisitor<Text>, ConditionVisitor<String> {
  /** A constant of more characters is rounded to significant digits. */
  private static final int LONGEST_CONSTANT = 8;

  private static final int DIGITS_OF_A_CONSTANT = 7;
  private static final int PRODUCT = 2;
  private static final int STRAIGHT_ANGLE = 180;

  /** Where a constant is nobody's result and held against nothing. */
  private static final PrintedText INSIDE = new PrintedText(QuantityKind.FACTOR);

  /** What a constant is that stands for the whole. */
  private final QuantityKind result;

  private PrintedText(QuantityKind result) {
    this.result = result;
  }

  /** Returns the formula of a column in names and signs. */
  public static String of(Formula formula, QuantityKind result) {
    return formula.accept(new PrintedText(result)).words();
  }

  /** Returns a part of a formula in names and signs. */
  public static String of(Formula formula) {
    return formula.accept(INSIDE).words();
  }

  /** Returns {@code condition} in names and signs. */
  public static String of(Condition condition) {
    return condition.accept(INSIDE);
  }

  /** Nothing is nothing in every unit; a share and a time are written as the cell shows them. */
  @Override
  public Text constant(Formula.Constant constant) {
    boolean nothing = constant.value() == 0 && constant.unit().zero().signum() == 0;
    boolean shown = result.onCalendar() || (result.percent() && constant.unit().equals(Units.ONE));
    if (shown) {
      double value = constant.unit().convert(constant.value(), result.unit(UnitSystem.US));
      return Text.number(() -> QuantityText.typed(value, result));
    }
    return nothing ? number(constant.value()) : withUnit(constant);
  }

  /** Returns a number with its unit, where it has one. */
  static Text withUnit(Formula.Constant constant) {
    String symbol = constant.unit().symbol();
    String unit = symbol.equals("days") && constant.value() == 1 ? "day" : symbol;
    Text number = number(constant.value());
    return unit.isEmpty() ? number : Text.number(() -> number.words() + " " + unit);
  }

  /** Returns a number of a formula: exactly if it is short, else rounded; what π makes with π. */
  static Text number(double value) {
    if (value == Math.PI) {
      return Text.closed("π");
    }
    if (value == Math.PI / 4) {
      return new Text("π ÷ 4", PRODUCT);
    }
    if (value == STRAIGHT_ANGLE / Math.PI) {
      return new Text("180° ÷ π", PRODUCT);
    }
    String number = QuantityText.exact(value);
    return Text.number(
        () ->
            number.length() <= LONGEST_CONSTANT
                ? number
                : QuantityText.significant(value, DIGITS_OF_A_CONSTANT));
  }

  @Override
  public Text cell(Formula.Cell cell) {
    return Text.closed(cell.reference().name());
  }

  @Override
  public Text arithmetic(Formula.Arithmetic sum) {
    String sign = " " + sum.operator().printed() + " ";
    return Text.joined(
        sum.left().accept(INSIDE), sign, sum.right().accept(INSIDE), sum.operator().rank());
  }

  @Override
  public Text extreme(Formula.Extreme extreme) {
    return Text.extreme(
        extreme.largest(), extreme.left().accept(this), extreme.right().accept(this));
  }

  @Override
  public Text rounding(Formula.Rounding rounding) {
    String unit = rounding.unit().inWords();
    return new Text(
        "%s, %s to %s"
            .formatted(
                rounding.operand().accept(this).onLeft(1),
                rounding.way().words(),
                unit.isEmpty() ? "a whole number" : "a whole number of " + unit),
        0);
  }

  @Override
  public Text power(Formula.Power power) {
    return Text.power(power.base().accept(INSIDE), power.exponent().accept(INSIDE));
  }

  @Override
  public Text function(Formula.Function function) {
    return Text.closed(
        function.kind().words() + "(" + function.operand().accept(INSIDE).words() + ")");
  }

  @Override
  public Text measure(Formula.Measure measure) {
    Text operand = measure.operand().accept(INSIDE);
    boolean angle = measure.unit().equals(Units.ONE) && angle(measure.operand());
    String unit = angle ? "radians" : measure.unit().inWords();
    return unit.isEmpty() ? operand : Text.closed(operand.onLeft(Text.CLOSED) + " in " + unit);
  }

  private static boolean angle(Formula operand) {
    return operand instanceof Formula.Cell cell && cell.reference().kind() == QuantityKind.ANGLE;
  }

  @Override
  public Text choose(Formula.Choose choose) {
    return new Text(
        "if %s: %s; otherwise: %s"
            .formatted(
                choose.condition().accept(this),
                choose.then().accept(this).words(),
                choose.otherwise().accept(this).words()),
        0);
  }

  @Override
  public Text nth(Formula.Nth nth) {
    List<String> options = nth.options().stream().map(each -> each.accept(this).words()).toList();
    int last = options.size() - 1;
    List<String> told =
        last < 3 ? options : List.of(options.get(0), options.get(1), "…", options.get(last));
    return new Text(
        "by %s: %s".formatted(nth.position().accept(INSIDE).words(), String.join("; ", told)), 0);
  }

  @Override
  public Text nothing(Formula.Nothing nothing) {
    return Text.closed("“" + nothing.shown() + "”");
  }

  @Override
  public Text lookup(Formula.Lookup lookup) {
    return Text.closed(
        "%s of the %s (table %s)"
            .formatted(
                lookup.column().name(), lookup.word().name(), lookup.column().table().name()));
  }

  @Override
  public Text lookupAcross(Formula.LookupAcross lookup) {
    return Text.closed(
        "the value of the %s (table %s), column %s"
            .formatted(
                lookup.word().name(),
                lookup.columns().get(0).table().name(),
                lookup.position().accept(INSIDE).words()));
  }

  @Override
  public Text lookupCount(Formula.LookupCount lookup) {
    return Text.closed(
        "how many numbers of the %s (table %s, %s to %s) are below %s"
            .formatted(
                lookup.word().name(),
                lookup.columns().get(0).table().name(),
                lookup.columns().get(0).name(),
                lookup.columns().get(lookup.columns().size() - 1).name(),
                lookup.limit().accept(INSIDE).words()));
  }

  @Override
  public Text aggregate(Formula.Aggregate aggregate) {
    return Text.closed(aggregate.aggregation().words() + " " + aggregate.column().name());
  }

  @Override
  public Text where(Formula.Where where) {
    List<String> so = new ArrayList<>();
    for (Matching.Pair pair : where.matching().pairs()) {
      so.add(pair.word().name() + " is this " + pair.key().name());
    }
    where
        .matching()
        .limit()
        .ifPresent(
            limit ->
                so.add(
                    "%s %s %s"
                        .formatted(
                            limit.column().name(),
                            limit.comparator().printed(),
                            than(limit.than()))));
    String what = where.kind().keepsUnit() ? " " + where.column().name() : "";
    return Text.closed(where.kind().words() + what + " where " + String.join(" and ", so));
  }

  private String than(Formula formula) {
    return formula instanceof Formula.Cell cell
        ? cell.reference().name() + " of this row"
        : formula.accept(INSIDE).onRight(1);
  }

  @Override
  public Text rowLookup(Formula.RowLookup lookup) {
    return Text.closed(lookup.column().name() + " of the " + lookup.word().name());
  }

  @Override
  public Text pick(Formula.Pick pick) {
    String position = pick.position().accept(INSIDE).onLeft(Text.CLOSED);
    String row = pick.position() instanceof Formula.Aggregate ? "the " : "row ";
    return Text.closed(pick.column().name() + " in " + row + position);
  }

  @Override
  public String comparison(Condition.Comparison comparison) {
    return side(comparison.left(), comparison.right())
        + " "
        + comparison.comparator().printed()
        + " "
        + side(comparison.right(), comparison.left());
  }

  /** A constant is written as what it is held against. */
  private static String side(Formula side, Formula other) {
    QuantityKind kind =
        other instanceof Formula.Cell cell ? cell.reference().kind() : QuantityKind.FACTOR;
    return side.accept(new PrintedText(kind)).onLeft(1);
  }

  @Override
  public String wordIs(Condition.WordIs wordIs) {
    return wordIs.word().name() + " is " + String.join(" or ", wordIs.words());
  }

  @Override
  public String given(Condition.Given given) {
    return given.cell().name() + " is given";
  }

  @Override
  public String joined(Condition.Joined joined) {
    return within(joined, joined.left())
        + (joined.both() ? " and " : " or ")
        + within(joined, joined.right());
  }

  private String within(Condition.Joined whole, Condition part) {
    return mixed(whole, part) ? "(" + part.accept(this) + ")" : part.accept(this);
  }

  /** Says whether one of two is all of some and the other any of some: that needs brackets. */
  static boolean mixed(Condition.Joined whole, Condition part) {
    return part instanceof Condition.Joined inner && inner.both() != whole.both();
  }

  @Override
  public String not(Condition.Not not) {
    return "not (" + not.condition().accept(this) + ")";
  }
}
