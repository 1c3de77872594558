package zonewright.balance;

/**
 * The water balance of a root zone over days in a row: the plain loop of FAO-56 chapter 8 with a
 * single coefficient.
 *
 * <p>Plants take what they need down to the allowed depletion, and below it the less the less is
 * left (equation 84). Water comes early in the day, the night's irrigation before the rain; what
 * goes beyond field capacity drains at once, and then the plants take of what is there. So stand
 * example 38 and its figures; equation 88 would let the plants of that day drink first. Below field
 * capacity nothing drains, and no water rises from below.
 *
 * @see "FAO Irrigation and Drainage Paper 56 (1998), equations 84 to 88, and its advice to leave
 *     out rain of a day below a fifth of reference evapotranspiration (page 170)"
 */
public final class SoilDays {
  /** Rain of a day below this part of reference evapotranspiration is gone before it soaks in. */
  public static final double LIGHT_RAIN = 0.2;

  private final RootZone soil;
  private final double before;
  private final double[] needs;
  private final double[] irrigation;
  private final double[] rain;
  private final double[] depletion;
  private final double[] taken;
  private final double[] drainedIrrigation;
  private final double[] drainedRain;

  /**
   * Follows the days.
   *
   * @param needs what plants need on each day, mm
   * @param irrigation what soaks in of each night's irrigation, mm
   * @param before depletion before the first day, mm, from 0 to all the soil holds
   */
  public SoilDays(
      RootZone soil, DaysOfWeather days, double[] needs, double[] irrigation, double before) {
    this.soil = soil;
    this.before = before;
    this.needs = needs;
    this.irrigation = irrigation;
    int size = days.size();
    rain = new double[size];
    depletion = new double[size];
    taken = new double[size];
    drainedIrrigation = new double[size];
    drainedRain = new double[size];
    double total = soil.totalAvailable();
    double readily = soil.readilyAvailable();
    double depleted = before;
    for (int day = 0; day < size; day++) {
      depleted -= irrigation[day];
      if (depleted < 0) {
        drainedIrrigation[day] = -depleted;
        depleted = 0;
      }
      double fell = days.rain(day);
      rain[day] = fell < LIGHT_RAIN * days.evapotranspiration(day) ? 0 : fell;
      depleted -= rain[day];
      if (depleted < 0) {
        drainedRain[day] = -depleted;
        depleted = 0;
      }
      double left = Math.max(0, total - depleted);
      double stress = left < total - readily ? left / (total - readily) : 1;
      taken[day] = Math.min(stress * needs[day], left);
      depleted += taken[day];
      depletion[day] = depleted;
    }
  }

  /** Returns the soil. */
  public RootZone soil() {
    return soil;
  }

  /** Returns how many days there are. */
  public int size() {
    return depletion.length;
  }

  /** Returns the depletion before the first day, mm. */
  public double before() {
    return before;
  }

  /** Returns the depletion at the end of a day, mm. */
  public double depletion(int day) {
    return depletion[day];
  }

  /** Returns what the plants needed on a day, mm. */
  public double need(int day) {
    return needs[day];
  }

  /** Returns what the plants took on a day, mm. */
  public double taken(int day) {
    return taken[day];
  }

  /** Returns what soaked in of the night's irrigation, mm. */
  public double irrigation(int day) {
    return irrigation[day];
  }

  /** Returns the rain that soaked in, mm: nothing where it was too light. */
  public double rain(int day) {
    return rain[day];
  }

  /** Returns how much of the night's irrigation went below the roots, mm. */
  public double drainedIrrigation(int day) {
    return drainedIrrigation[day];
  }

  /** Returns how much of the day's rain went below the roots, mm. */
  public double drainedRain(int day) {
    return drainedRain[day];
  }

  /** Says whether a day ends below the allowed depletion. */
  public boolean belowAllowed(int day) {
    return depletion[day] > soil.readilyAvailable() + 1e-9;
  }

  /** Returns the depletion after the last day, mm. */
  public double after() {
    return size() == 0 ? before : depletion[size() - 1];
  }
}
