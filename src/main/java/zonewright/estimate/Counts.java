package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COUNTED;
import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.PARTS;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.emitters.Emitters;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.retrofit.AsFound;
import zonewright.retrofit.Difference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Columns of the takeoff added up over all zones: a row for each thing that can be counted. */
public final class Counts {
  public static final Column WHAT =
      Column.choice(COUNTS, "what", "What", Counted.WORD_LIST)
          .band(COUNTED)
          .means("What is counted.")
          .build();

  public static final Column NUMBER_NEEDED =
      numbers("number-needed", "Number needed", "In the finished job.", needed());

  public static final Column NUMBER_KEPT =
      numbers("number-kept", "Number kept", "There already, and stays.", kept());

  public static final Column NUMBER_NEW =
      Column.calculated(
              COUNTS,
              "number-new",
              "Number new",
              QuantityKind.COUNT,
              Formula.when(WHAT.is(Counted.LATERAL_FITTINGS))
                  .then(PipeTakeoff.FITTINGS_NEW.sum())
                  .otherwise(
                      Formula.when(WHAT.is(Counted.MAIN_FITTINGS))
                          .then(PipeTakeoff.MAIN_FITTINGS_NEW.sum())
                          .otherwise(Formula.larger(number(0), NUMBER_NEEDED.minus(NUMBER_KEPT)))))
          .band(COUNTED)
          .means("To be bought and fitted.")
          .source("By definition.")
          .build();

  public static final Column NUMBER_FOUND =
      numbers("number-found", "Number as found", "Before the job.", found());

  public static final Column NUMBER_REMOVED =
      difference(
          "number-removed", "Number removed", NUMBER_FOUND, NUMBER_KEPT, "Taken out of use.");

  public static final Column LENGTH_NEEDED =
      lengths("length-needed", "Length needed", "In the finished job.", lengthNeeded());

  public static final Column LENGTH_NEW =
      lengths("length-new", "Length new", "To be bought and laid.", lengthNew());

  public static final Column LENGTH_KEPT =
      difference(
          "length-kept", "Length kept", LENGTH_NEEDED, LENGTH_NEW, "There already, and stays.");

  public static final Column LENGTH_REMOVED =
      lengths(
          "length-removed",
          "Length removed",
          "Taken out of use. Buried pipe and wire out of use are taken to stay where they are.",
          Map.of(
              Counted.DRIP_LINE,
              AsFound.of(Takeoff.DRIP_LENGTH).sum().minus(Difference.DRIP_KEPT.sum())));

  public static final Column AREA_NEEDED =
      of(
          "area-needed",
          "Area needed",
          QuantityKind.AREA,
          "Irrigated in the finished job.",
          areas(Emitters.AREA.sum(), Takeoff.TURF.sum()));

  public static final Column AREA_FOUND =
      of(
          "area-found",
          "Area as found",
          QuantityKind.AREA,
          "Irrigated before the job.",
          areas(AsFound.of(Emitters.AREA).sum(), AsFound.of(Takeoff.TURF).sum()));

  public static final Column AREA_NEW =
      difference("area-new", "Area new", AREA_NEEDED, AREA_FOUND, "More than before the job.");

  public static final Column AREA_REMOVED =
      difference(
          "area-removed",
          "Area removed",
          AREA_FOUND,
          AREA_NEEDED,
          "Less than before the job: of turf, what is replaced by other plants or no longer watered.");

  public static final Column AREA_KEPT =
      difference("area-kept", "Area kept", AREA_NEEDED, AREA_NEW, "As before the job.");

  public static final Column ANY_NEW =
      Column.calculated(
              COUNTS,
              "any-new",
              "Something new",
              QuantityKind.COUNT,
              Formula.when(lengths().and(WHAT.is(Counted.COMMON_WIRE).negated()))
                  .then(oneWhere(LENGTH_NEW.above(Formula.zero(QuantityKind.LENGTH))))
                  .otherwise(
                      Formula.when(
                              WHAT.is(
                                  Counted.AREA,
                                  Counted.TURF,
                                  Counted.STATIONS,
                                  Counted.JOB,
                                  Counted.LATERAL_FITTINGS,
                                  Counted.MAIN_FITTINGS,
                                  Counted.COMMON_WIRE))
                          .then(0)
                          .otherwise(oneWhere(NUMBER_NEW.above(0)))))
          .band(COUNTED)
          .means(
              "1 where something new is needed of it that some item should buy, else 0; fittings and common wire may be counted by pipe and"
                  + " wire instead.")
          .source("By definition.")
          .build();

  public static final Column ITEMS =
      Column.calculated(
              COUNTS,
              "items",
              "Items counted by it",
              QuantityKind.COUNT,
              Matching.rows(
                      new Reference(PARTS, "counted-by", "Counted by", QuantityKind.CHOICE), WHAT)
                  .count())
          .band(COUNTED)
          .means("How many items of the price book are counted by it.")
          .source("By counting.")
          .build();

  public static final Column ITEMS_OF_ALL_SIZES =
      Column.calculated(
              COUNTS,
              "items-all-sizes",
              "Items of all sizes",
              QuantityKind.COUNT,
              Matching.rows(
                      new Reference(PARTS, "counted-by", "Counted by", QuantityKind.CHOICE), WHAT)
                  .with(
                      new Reference(PARTS, "of-a-size", "Of a size", QuantityKind.COUNT),
                      Comparator.AT_MOST,
                      number(0))
                  .count())
          .band(COUNTED)
          .means("How many items are counted by it whatever the size of pipe.")
          .source("By counting.")
          .build();

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(
        WHAT,
        NUMBER_NEEDED,
        NUMBER_KEPT,
        NUMBER_NEW,
        NUMBER_FOUND,
        NUMBER_REMOVED,
        LENGTH_NEEDED,
        LENGTH_KEPT,
        LENGTH_NEW,
        LENGTH_REMOVED,
        AREA_NEEDED,
        AREA_FOUND,
        AREA_KEPT,
        AREA_NEW,
        AREA_REMOVED,
        ANY_NEW,
        ITEMS,
        ITEMS_OF_ALL_SIZES);
  }

  private Counts() {}

  private static Condition lengths() {
    return WHAT.is(Counted.LENGTHS);
  }

  private static Formula oneWhere(Condition condition) {
    return Formula.when(condition).then(1).otherwise(0);
  }

  private static Formula kept(Column needed, Column fresh) {
    return needed.sum().minus(fresh.sum());
  }

  private static Map<String, Term> areas(Term irrigated, Term turf) {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.AREA, irrigated);
    rows.put(Counted.TURF, turf);
    return rows;
  }

  private static Map<String, Term> needed() {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.EMITTERS, Takeoff.HEADS.sum());
    rows.put(Counted.VALVES, Takeoff.VALVES.sum());
    rows.put(Counted.BOXES, Takeoff.BOXES.sum());
    rows.put(Counted.DRIP_ZONES, Takeoff.LOW_FLOW_ZONE.sum());
    rows.put(Counted.ZONES, allRows(Difference.ZONES_FOUND.reference(), 0));
    rows.put(Counted.CONTROLLERS, JobFacts.CONTROLLERS);
    rows.put(Counted.STATIONS, Takeoff.VALVES.sum());
    rows.put(Counted.SENSORS, JobFacts.SENSORS);
    rows.put(Counted.LATERAL_FITTINGS, PipeTakeoff.FITTINGS.sum());
    rows.put(Counted.MAIN_FITTINGS, PipeTakeoff.MAIN_FITTINGS.sum());
    rows.put(Counted.JOB, number(1));
    return rows;
  }

  private static Map<String, Term> kept() {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.EMITTERS, Difference.HEADS_KEPT.sum());
    rows.put(Counted.VALVES, Difference.VALVES_KEPT.sum());
    rows.put(Counted.BOXES, Difference.BOXES_KEPT.sum());
    rows.put(Counted.DRIP_ZONES, Difference.LOW_FLOW_KEPT.sum());
    rows.put(Counted.ZONES, allRows(Difference.ZONES_FOUND.reference(), 1));
    rows.put(Counted.CONTROLLERS, JobFacts.CONTROLLERS_KEPT);
    rows.put(
        Counted.STATIONS,
        Formula.when(JobFacts.CONTROLLERS.atMost(JobFacts.CONTROLLERS_KEPT))
            .then(Difference.VALVES_KEPT.sum())
            .otherwise(0));
    rows.put(Counted.SENSORS, JobFacts.SENSORS_KEPT);
    rows.put(Counted.LATERAL_FITTINGS, kept(PipeTakeoff.FITTINGS, PipeTakeoff.FITTINGS_NEW));
    rows.put(Counted.MAIN_FITTINGS, kept(PipeTakeoff.MAIN_FITTINGS, PipeTakeoff.MAIN_FITTINGS_NEW));
    rows.put(
        Counted.JOB, Formula.when(AsFound.of(Takeoff.VALVES).sum().above(0)).then(1).otherwise(0));
    return rows;
  }

  private static Map<String, Term> found() {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.EMITTERS, AsFound.of(Takeoff.HEADS).sum());
    rows.put(Counted.VALVES, AsFound.of(Takeoff.VALVES).sum());
    rows.put(Counted.BOXES, AsFound.of(Takeoff.VALVES).sum());
    rows.put(Counted.DRIP_ZONES, AsFound.of(Takeoff.LOW_FLOW_ZONE).sum());
    rows.put(Counted.ZONES, allRows(AsFound.of(Takeoff.VALVES), 0));
    rows.put(Counted.CONTROLLERS, JobFacts.CONTROLLERS_KEPT);
    rows.put(Counted.STATIONS, AsFound.of(Takeoff.VALVES).sum());
    rows.put(Counted.SENSORS, JobFacts.SENSORS_KEPT);
    rows.put(Counted.JOB, number(0));
    return rows;
  }

  private static Map<String, Term> lengthNeeded() {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.DRIP_LINE, Takeoff.DRIP_LENGTH.sum());
    rows.put(Counted.LATERAL, PipeTakeoff.LENGTH.sum());
    rows.put(Counted.MAIN, PipeTakeoff.MAIN.sum());
    rows.put(Counted.WIRE, PipeTakeoff.STATION_WIRE.sum());
    rows.put(Counted.COMMON_WIRE, PipeTakeoff.STATION_WIRE.largest());
    return rows;
  }

  private static Map<String, Term> lengthNew() {
    Map<String, Term> rows = new LinkedHashMap<>();
    rows.put(Counted.DRIP_LINE, Difference.DRIP_NEW.sum());
    rows.put(Counted.LATERAL, PipeTakeoff.LENGTH_NEW.sum());
    rows.put(Counted.MAIN, PipeTakeoff.MAIN_NEW.sum());
    rows.put(Counted.WIRE, PipeTakeoff.WIRE_NEW.sum());
    rows.put(Counted.COMMON_WIRE, PipeTakeoff.WIRE_NEW.largest());
    return rows;
  }

  /** How many rows hold at least so many. */
  private static Formula allRows(Reference column, int least) {
    return Matching.rowsWith(column, Comparator.AT_LEAST, number(least)).count();
  }

  private static Column numbers(String id, String name, String means, Map<String, Term> rows) {
    return of(id, name, QuantityKind.COUNT, means, rows);
  }

  private static Column lengths(String id, String name, String means, Map<String, Term> rows) {
    return of(id, name, QuantityKind.LENGTH, means, rows);
  }

  private static Column of(
      String id, String name, QuantityKind kind, String means, Map<String, Term> rows) {
    Formula formula = notSo();
    for (Map.Entry<String, Term> row : rows.entrySet()) {
      formula = Formula.when(WHAT.is(row.getKey())).then(row.getValue()).otherwise(formula);
    }
    return Column.calculated(COUNTS, id, name, kind, formula)
        .band(COUNTED)
        .means(means)
        .source(
            "Added up over the sheets Takeoff and Found, and the numbers on the sheet Estimate.")
        .build();
  }

  private static Formula notSo() {
    return Formula.doesNotApply("–", "This is not counted so: see the other columns of the row.");
  }

  private static Column difference(
      String id, String name, Column whole, Column part, String means) {
    return Column.calculated(
            COUNTS,
            id,
            name,
            whole.kind(),
            Formula.larger(Formula.zero(whole.kind()), whole.minus(part)))
        .band(COUNTED)
        .means(means)
        .source("By definition.")
        .build();
  }
}
