package zonewright.climate;

import static zonewright.formula.Formula.number;

import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Term;
import zonewright.units.Units;

/** Pieces of the FAO-56 equations that stand in several columns. */
final class Vapour {
  private Vapour() {}

  /** Returns a temperature as a number of degrees Celsius. */
  static Formula celsius(Term temperature) {
    return temperature.measuredIn(Units.CELSIUS);
  }

  /**
   * Returns saturation vapour pressure in kPa at {@code celsius}.
   *
   * @see "FAO Irrigation and Drainage Paper 56 (1998), equation 11"
   */
  static Formula saturation(Term celsius) {
    return number(0.6108)
        .times(
            number(17.27).times(celsius).over(celsius.plus(237.3)).apply(FunctionKind.EXPONENTIAL));
  }

  /** Returns a number of kPa as a pressure. */
  static Formula kilopascals(Term number) {
    return number.times(Formula.amount(1, Units.KILOPASCAL));
  }

  /** Returns a pressure as a number of kPa. */
  static Formula inKilopascals(Term pressure) {
    return pressure.measuredIn(Units.KILOPASCAL);
  }
}
