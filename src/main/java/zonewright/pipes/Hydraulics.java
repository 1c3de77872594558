package zonewright.pipes;

import static zonewright.formula.Formula.number;

import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Term;
import zonewright.units.Units;

/** The equations of water in full pipes, as formulas of quantities. */
public final class Hydraulics {
  /** Exponent of flow in the Hazen–Williams equation. */
  static final double FLOW_EXPONENT = 1.852;

  /** Exponent of the inside diameter in the Hazen–Williams equation. */
  static final double DIAMETER_EXPONENT = 4.8655;

  /** Feet of water lost in 100 ft of 1 in pipe at 1 gpm and C 100. */
  private static final double LOSS_OF_A_HUNDRED_FEET = 0.2083;

  static final String HAZEN_WILLIAMS =
      "Hazen–Williams: ft of water in 100 ft = 0.2083 × (100 ÷ C)^1.852 × gpm^1.852 ÷ in^4.8655, as the plastic pipe"
          + " industry prints it, verified (secondary).";

  static final String VELOCITY =
      "Velocity = flow ÷ inside area; ft/s = 0.4085 × gpm ÷ in² of the diameter, verified (secondary).";

  static final String CHRISTIANSEN =
      "Christiansen (1942): F = 1 ÷ (m + 1) + 1 ÷ (2 N) + √(m − 1) ÷ (6 N²) with m = 1.852 and the first outlet a full"
          + " spacing in; 1 for a single outlet (from memory).";

  private Hydraulics() {}

  /** Returns the speed of a flow in a full round pipe. */
  public static Formula velocity(Term flow, Term diameter) {
    return flow.over(number(Math.PI / 4).times(diameter).times(diameter));
  }

  /** Returns the inside diameter at which a flow has a given speed. */
  public static Formula diameterAt(Term flow, Term velocity) {
    return Formula.amount(1, Units.INCH)
        .times(
            flow.over(velocity.times(Math.PI / 4))
                .over(Formula.amount(1, Units.SQUARE_INCH))
                .apply(FunctionKind.SQUARE_ROOT));
  }

  /** Returns the flow that has a given speed in a full round pipe. */
  public static Formula flowAt(Term velocity, Term diameter) {
    return velocity.times(Math.PI / 4).times(diameter).times(diameter);
  }

  /** Returns the pressure lost along a pipe by Hazen–Williams. */
  public static Formula friction(Term length, Term flow, Term diameter, Term coefficient) {
    return lossInInches(length, flow, coefficient)
        .over(diameter.measuredIn(Units.INCH).power(DIAMETER_EXPONENT));
  }

  /** Returns the inside diameter at which a pipe loses just so much by Hazen–Williams. */
  public static Formula diameterFor(Term length, Term flow, Term coefficient, Term loss) {
    return Formula.amount(1, Units.INCH)
        .times(
            lossInInches(length, flow, coefficient)
                .over(loss)
                .power(number(1).over(DIAMETER_EXPONENT)));
  }

  /** The loss a pipe of 1 in would have. */
  private static Formula lossInInches(Term length, Term flow, Term coefficient) {
    return Formula.amount(LOSS_OF_A_HUNDRED_FEET, Units.FOOT_OF_WATER)
        .times(length.over(Formula.amount(100, Units.FOOT)))
        .times(number(100).over(coefficient).power(FLOW_EXPONENT))
        .times(flow.measuredIn(Units.GALLON_PER_MINUTE).power(FLOW_EXPONENT));
  }

  /**
   * Returns the part of the friction that is left when a pipe gives off water evenly on its way.
   */
  public static Formula outletFactor(Term outlets) {
    double constant = 1 / (FLOW_EXPONENT + 1);
    double square = Math.sqrt(FLOW_EXPONENT - 1) / 6;
    return Formula.when(outlets.atMost(1))
        .then(1)
        .otherwise(
            number(constant)
                .plus(number(1).over(number(2).times(outlets)))
                .plus(number(square).over(outlets.times(outlets))));
  }

  /** Returns the pressure that a rise costs; a fall gives it back. */
  public static Formula lift(Term rise) {
    return Formula.amount(1, Units.FOOT_OF_WATER).times(rise).over(Formula.amount(1, Units.FOOT));
  }
}
