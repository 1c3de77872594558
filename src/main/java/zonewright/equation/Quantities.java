package zonewright.equation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.formula.Formula;
import zonewright.formula.Operator;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.Scale;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** What amounts are made of, in words a designer uses. */
final class Quantities {
  /** The kinds equations are made of most, by which the others are said. */
  private static final List<QuantityKind> USUAL =
      List.of(
          QuantityKind.AREA,
          QuantityKind.FLOW,
          QuantityKind.DEPTH,
          QuantityKind.RATE,
          QuantityKind.MINUTES,
          QuantityKind.VOLUME,
          QuantityKind.MONEY,
          QuantityKind.PRESSURE,
          QuantityKind.TEMPERATURE,
          QuantityKind.ENERGY);

  private Quantities() {}

  /** Returns what an amount is: {@code an area}, {@code an area over a flow}. */
  static String words(Dimension dimension) {
    return named(dimension)
        .map(Quantities::words)
        .or(() -> ofTwo(dimension))
        .orElseGet(dimension::inWords);
  }

  /** Returns what a number of a kind is, as far as adding goes. */
  static String words(QuantityKind kind) {
    boolean plain = kind == QuantityKind.FACTOR || kind == QuantityKind.COUNT;
    return plain ? "a plain number" : kind.wordsWithArticle();
  }

  /** Returns words that begin with a capital letter. */
  static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Returns one of what a dimension measures, such as {@code 1 min}. */
  static String oneOf(Dimension dimension) {
    return ("1 " + unit(dimension).symbol()).strip();
  }

  /** Returns what a part is, by the column where it is one. */
  static String words(Part.Amount amount) {
    return amount.formula() instanceof Formula.Cell cell
        ? words(cell.reference().kind())
        : words(amount.dimension());
  }

  /** Returns the kind of a dimension that a person thinks of first. */
  static Optional<QuantityKind> named(Dimension dimension) {
    if (dimension.equals(Dimension.NONE)) {
      return Optional.of(QuantityKind.FACTOR);
    }
    List<QuantityKind> kinds = new ArrayList<>(USUAL);
    kinds.addAll(List.of(QuantityKind.values()));
    return kinds.stream().filter(kind -> kind.dimension().equals(dimension)).findFirst();
  }

  private static Optional<String> ofTwo(Dimension dimension) {
    for (QuantityKind left : USUAL) {
      for (QuantityKind right : USUAL) {
        if (left.dimension().over(right.dimension()).equals(dimension)) {
          return Optional.of(words(left) + " over " + words(right));
        }
        if (left.dimension().times(right.dimension()).equals(dimension)) {
          return Optional.of(words(left) + " times " + words(right));
        }
      }
    }
    return Optional.empty();
  }

  /** Returns a unit of a dimension, for nothing of it. */
  static Unit unit(Dimension dimension) {
    return named(dimension)
        .map(kind -> kind.unit(UnitSystem.US))
        .orElseGet(() -> new Unit("", dimension, Scale.ONE));
  }

  /**
   * Returns an amount as one of another dimension, where what was typed leaves that open: a zero is
   * nothing of anything, and money has no unit to write, so any plain number may be money. Else the
   * amount itself.
   */
  static Part.Amount fitting(Part.Amount amount, Dimension wanted) {
    if (amount.any() || !amount.dimension().equals(Dimension.NONE)) {
      return amount;
    }
    Formula fitting = fitting(amount.formula(), unit(wanted));
    if (fitting == null && wanted.equals(Dimension.MONEY)) {
      fitting = priced(amount.formula());
    }
    return fitting == null ? amount : Part.Amount.of(fitting, wanted, amount.from(), amount.to());
  }

  /** Plain numbers as money: the first factor that was typed is the price, or else 1 is. */
  private static Formula priced(Formula formula) {
    return withPrice(formula).orElseGet(() -> formula.times(Formula.amount(1, Units.MONEY)));
  }

  private static Optional<Formula> withPrice(Formula formula) {
    Formula typed = fitting(formula, Units.MONEY);
    if (typed != null
        || !(formula instanceof Formula.Arithmetic two)
        || two.operator().rank() == 1) {
      return Optional.ofNullable(typed);
    }
    Optional<Formula> first =
        withPrice(two.left())
            .map(left -> new Formula.Arithmetic(two.operator(), left, two.right()));
    return first.isPresent() || two.operator() == Operator.OVER
        ? first
        : withPrice(two.right())
            .map(right -> new Formula.Arithmetic(two.operator(), two.left(), right));
  }

  /** Null where it does not fit. */
  private static Formula fitting(Formula formula, Unit unit) {
    if (formula instanceof Formula.Constant constant) {
      boolean open = constant.value() == 0 || unit.dimension().equals(Dimension.MONEY);
      return open ? Formula.amount(constant.value(), unit) : null;
    }
    if (formula instanceof Formula.Choose choose) {
      Formula then = fitting(choose.then(), unit);
      Formula otherwise = fitting(choose.otherwise(), unit);
      return then == null || otherwise == null
          ? null
          : Formula.when(choose.condition()).then(then).otherwise(otherwise);
    }
    return formula instanceof Formula.Nothing ? formula : null;
  }

  /** Returns what to do about an equation that gives one thing where another is wanted. */
  static String instead(Dimension gives, Dimension wanted) {
    List<String> ways = new ArrayList<>();
    if (named(gives).isPresent()) {
      ways.add("choose another kind for it");
    }
    named(wanted.over(gives)).ifPresent(by -> ways.add("multiply by " + words(by)));
    named(gives.over(wanted)).ifPresent(by -> ways.add("divide by " + words(by)));
    return ways.isEmpty() ? "write it otherwise" : String.join(", or ", ways);
  }
}
