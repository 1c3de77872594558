package zonewright.estimate;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.sheet.WordList;
import zonewright.units.Unit;
import zonewright.units.Units;

/** The words a part is counted by: what is counted, which of it, and in which unit. */
public final class Counted {
  public static final String EMITTERS = "emitters";
  public static final String DRIP_LINE = "drip line";
  public static final String LATERAL = "lateral";
  public static final String MAIN = "main";
  public static final String WIRE = "wire";
  public static final String LATERAL_FITTINGS = "lateral fittings";
  public static final String MAIN_FITTINGS = "main fittings";
  public static final String COMMON_WIRE = "common wire";
  public static final String VALVES = "valves";
  public static final String BOXES = "valve boxes";
  public static final String DRIP_ZONES = "drip zones";
  public static final String ZONES = "zones";
  public static final String AREA = "irrigated area";
  public static final String TURF = "turf area";
  public static final String CONTROLLERS = "controllers";
  public static final String STATIONS = "stations";
  public static final String SENSORS = "sensors";
  public static final String JOB = "job";

  /** What can be counted, in the order of the sheet Counts. */
  public static final List<String> WORDS =
      List.of(
          EMITTERS,
          DRIP_LINE,
          LATERAL,
          MAIN,
          WIRE,
          VALVES,
          BOXES,
          DRIP_ZONES,
          ZONES,
          AREA,
          CONTROLLERS,
          STATIONS,
          SENSORS,
          JOB,
          LATERAL_FITTINGS,
          MAIN_FITTINGS,
          COMMON_WIRE,
          TURF);

  public static final String NEW = "new";
  public static final String NEEDED = "needed";
  public static final String KEPT = "kept";
  public static final String REMOVED = "removed";

  /** Which of it. */
  public static final List<String> WHICH = List.of(NEW, NEEDED, KEPT, REMOVED);

  public static final String EACH = "each";
  public static final String FOOT = "ft";
  public static final String METRE = "m";
  public static final String SQUARE_FOOT = "ft²";
  public static final String SQUARE_METRE = "m²";

  /** In which unit. */
  public static final List<String> UNITS = List.of(EACH, FOOT, METRE, SQUARE_FOOT, SQUARE_METRE);

  public static final String OTHER = "other";

  /** Parts of an estimate, in the order of the work. */
  public static final List<String> SECTIONS =
      List.of(
          "general",
          "supply and backflow",
          "pipe and fittings",
          "valves",
          "wire",
          "control",
          "heads and emitters",
          "drip line",
          "removal",
          "tune-up",
          OTHER);

  /** What comes in sizes of pipe. */
  static final List<String> SIZED = List.of(LATERAL, LATERAL_FITTINGS, MAIN, MAIN_FITTINGS);

  /** What is counted by its length. */
  static final List<String> LENGTHS = List.of(DRIP_LINE, LATERAL, MAIN, WIRE, COMMON_WIRE);

  static final WordList.Fixed SECTION_LIST = new WordList.Fixed(SECTIONS);
  static final WordList.Fixed WORD_LIST = new WordList.Fixed(WORDS);
  static final WordList.Fixed WHICH_LIST = new WordList.Fixed(WHICH);
  static final WordList.Fixed UNIT_LIST = new WordList.Fixed(UNITS);

  private Counted() {}

  /** Returns the row of the sheet Counts for a word, counted from 1. */
  static int row(String word) {
    return WORDS.indexOf(word) + 1;
  }

  /** Returns a length as a pure number of the unit a cell names. */
  static Formula length(Term length, Reference unit) {
    return measured(length, unit, FOOT, Units.FOOT, METRE, Units.METRE, "a length: choose ft or m");
  }

  /** Returns an area as a pure number of the unit a cell names. */
  static Formula area(Term area, Reference unit) {
    return measured(
        area,
        unit,
        SQUARE_FOOT,
        Units.SQUARE_FOOT,
        SQUARE_METRE,
        Units.SQUARE_METRE,
        "an area: choose ft² or m²");
  }

  /** Returns a number counted one by one. */
  static Formula each(Term number, Reference unit) {
    return Formula.when(unit.is(EACH))
        .then(number)
        .otherwise(Formula.refused("wrong unit", "this is counted one by one: choose each"));
  }

  private static Formula measured(
      Term amount, Reference unit, String us, Unit usUnit, String si, Unit siUnit, String what) {
    return Formula.when(unit.is(us))
        .then(amount.measuredIn(usUnit))
        .otherwise(
            Formula.when(unit.is(si))
                .then(amount.measuredIn(siUnit))
                .otherwise(Formula.refused("wrong unit", "this is " + what)));
  }
}
