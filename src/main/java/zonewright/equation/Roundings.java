package zonewright.equation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import zonewright.formula.Formula;
import zonewright.formula.RoundingWay;
import zonewright.units.Dimension;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * Rounding as the open formula standard has it: to decimals, or to whole multiples of an amount.
 * ROUND, ROUNDUP and ROUNDDOWN go by the size without the sign, CEILING up and FLOOR down.
 */
final class Roundings {
  private static final int MOST_DECIMALS = 9;

  /** How often an amount that may be below zero stands in the formula: asked, and rounded twice. */
  private static final int COPIES = 3;

  private final Sign sign;
  private final Combining combining;

  Roundings(Sign sign, Combining combining) {
    this.sign = sign;
    this.combining = combining;
  }

  /** Returns an amount rounded. */
  Part.Amount rounded(Functions.Known function, Part.Amount amount, Optional<Part.Amount> step)
      throws Misread {
    if (sign.below(amount.formula())) {
      combining.copied(amount, COPIES);
    }
    Formula result =
        step.isPresent() && !(step.get().formula() instanceof Formula.Constant)
            ? inSteps(function, amount, step.get())
            : toUnit(function, amount.formula(), unit(function, amount, step));
    return Part.Amount.of(result, amount.dimension(), amount.from(), amount.to());
  }

  /** Steps that are no constant: as many whole ones, times the step. */
  private Formula inSteps(Functions.Known function, Part.Amount amount, Part.Amount step)
      throws Misread {
    same(amount, step);
    combining.copied(step, 2);
    return toUnit(function, amount.formula().over(step.formula()), Units.ONE).times(step.formula());
  }

  private static void same(Part.Amount amount, Part.Amount step) throws Misread {
    if (!amount.dimension().equals(step.dimension())) {
      throw new Misread(
          step,
          "%s is not rounded to %s."
              .formatted(Quantities.capital(Quantities.words(amount)), Quantities.words(step)));
    }
  }

  private static Unit unit(Functions.Known function, Part.Amount amount, Optional<Part.Amount> step)
      throws Misread {
    boolean plain = amount.dimension().equals(Dimension.NONE);
    boolean unnamed = plain || amount.dimension().equals(Dimension.MONEY);
    Unit own = plain ? Units.ONE : Units.MONEY;
    if (step.isEmpty()) {
      if (unnamed) {
        return own;
      }
      String example = Quantities.oneOf(amount.dimension());
      throw new Misread(
          amount.to(),
          amount.to(),
          "Say to what %s is rounded, as %s(…; %s)."
              .formatted(Quantities.words(amount), function.name(), example),
          List.of("; " + example));
    }
    Formula.Constant said = (Formula.Constant) step.get().formula();
    boolean places = function != Functions.Known.CEILING && function != Functions.Known.FLOOR;
    if (unnamed && places && said.unit().equals(Units.ONE)) {
      return decimals(own, said.value(), step.get());
    }
    Part.Amount fitting = unnamed ? Quantities.fitting(step.get(), amount.dimension()) : step.get();
    same(amount, fitting);
    Formula.Constant one = (Formula.Constant) fitting.formula();
    if (!(one.value() > 0)) {
      throw new Misread(step.get(), "What is rounded to must be above 0.");
    }
    String number = QuantityText.exact(one.value());
    return one.value() == 1
        ? one.unit()
        : one.unit().multiple(number, (number + " " + one.unit().symbol()).strip());
  }

  private static Unit decimals(Unit own, double places, Part.Amount step) throws Misread {
    if (places != Math.rint(places) || Math.abs(places) > MOST_DECIMALS) {
      throw new Misread(step, "The number of decimals is a whole number from -9 to 9.");
    }
    String size = BigDecimal.ONE.movePointLeft((int) places).toPlainString();
    return places == 0 ? own : own.multiple(size, size);
  }

  private Formula toUnit(Functions.Known function, Formula formula, Unit unit) {
    boolean below = sign.below(formula);
    Formula zero = Combining.zero(unit.dimension());
    Formula turned = zero.minus(formula);
    return switch (function) {
      case FLOOR, INT -> formula.roundedDownTo(unit);
      case CEILING -> below ? zero.minus(turned.roundedDownTo(unit)) : formula.roundedUpTo(unit);
      default -> {
        RoundingWay way =
            switch (function) {
              case ROUNDUP -> RoundingWay.UP;
              case ROUNDDOWN -> RoundingWay.DOWN;
              default -> RoundingWay.NEAREST;
            };
        Formula above = new Formula.Rounding(way, formula, unit);
        yield below
            ? Formula.when(formula.below(zero))
                .then(zero.minus(new Formula.Rounding(way, turned, unit)))
                .otherwise(above)
            : above;
      }
    };
  }
}
