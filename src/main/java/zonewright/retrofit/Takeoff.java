package zonewright.retrofit;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COUNTED;
import static zonewright.trade.Sheets.TAKEOFF;
import static zonewright.trade.Sheets.ZONE;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what a zone is made of, as a person would count it on a plan. */
public final class Takeoff {
  private static final List<String> LINES = kinds("line");

  private static final List<String> LOW_FLOW = lowFlow();

  public static final Column ZONE_NAME =
      Column.words(TAKEOFF, "zone", "Zone")
          .band(ZONE)
          .means("The zone, as on the sheet Zones.")
          .build();

  public static final Column KIND =
      Column.calculatedWord(
              TAKEOFF, "kind", "Emitter", new WordList.Published(Emitters.KINDS), Emitters.EMITTER)
          .band(COUNTED)
          .means("Kind of emitter of the zone, as on the sheet Zones.")
          .source("The sheet Zones.")
          .build();

  public static final Column HEADS =
      Column.calculated(
              TAKEOFF,
              "heads",
              "Heads and emitters",
              QuantityKind.COUNT,
              Formula.when(isLine()).then(0).otherwise(Emitters.EMITTER_COUNT))
          .band(COUNTED)
          .means(
              "Emitters counted one by one. Drip line is counted by its length instead, and comes to none here.")
          .source("By definition.")
          .build();

  public static final Column DRIP_LENGTH =
      Column.defaulted(
              TAKEOFF,
              "drip-length",
              "Drip line",
              QuantityKind.LENGTH,
              Formula.when(isLine())
                  .then(Emitters.EMITTER_COUNT.times(Emitters.HEAD_SPACING))
                  .otherwise(Formula.zero(QuantityKind.LENGTH)))
          .band(COUNTED)
          .within(Bounds.from(0, 200_000, Units.FOOT))
          .means(
              "Length of drip line: its emission points times their spacing, unless you type what you measured.")
          .source("By definition.")
          .build();

  public static final Column LOW_FLOW_ZONE =
      Column.calculated(
              TAKEOFF,
              "low-flow-zone",
              "Drip zone",
              QuantityKind.COUNT,
              Formula.when(Emitters.EMITTER.is(LOW_FLOW)).then(1).otherwise(0))
          .band(COUNTED)
          .means("1 where the valve needs a filter and a pressure regulator of its own, else 0.")
          .source("Common practice, no source: drip and micro-spray are filtered and regulated.")
          .build();

  public static final Column VALVES =
      Column.defaulted(TAKEOFF, "valves", "Valves", QuantityKind.COUNT, number(1))
          .band(COUNTED)
          .within(Bounds.from(0, 50, Units.ONE).wholeNumbers())
          .means("Remote control valves of the zone: one, unless you type another number.")
          .source("By definition: a zone is what one valve waters.")
          .build();

  public static final Column BOXES =
      Column.defaulted(TAKEOFF, "boxes", "Valve boxes", QuantityKind.COUNT, VALVES)
          .band(COUNTED)
          .within(Bounds.from(0, 50, Units.ONE).wholeNumbers())
          .means("Valve boxes of the zone; type 0 where its valve stands in another zone's box.")
          .source("Common practice, no source: a box for each valve.")
          .build();

  public static final Column TURF =
      Column.calculated(
              TAKEOFF,
              "turf-area",
              "Turf area",
              QuantityKind.AREA,
              Formula.when(Plants.PLANT.is(turf()))
                  .then(Emitters.AREA)
                  .otherwise(Formula.zero(QuantityKind.AREA)))
          .band(COUNTED)
          .means("The zone's area where its plant type is turf, else nothing.")
          .source("Table PlantTypes, by its groups.")
          .build();

  /** What a zone as found has as well. */
  static final List<Column> COMMON = List.of(HEADS, DRIP_LENGTH, LOW_FLOW_ZONE, VALVES, TURF);

  private Takeoff() {}

  static Condition isLine() {
    return Emitters.EMITTER.is(LINES);
  }

  private static List<String> kinds(String applies) {
    ReferenceTable table = Emitters.KINDS;
    return table.keys().stream()
        .filter(
            kind -> table.text(table.position(kind).orElseThrow(), "Applies as").equals(applies))
        .toList();
  }

  private static List<String> turf() {
    ReferenceTable table = Plants.TYPES;
    return table.keys().stream()
        .filter(plant -> table.text(table.position(plant).orElseThrow(), "Group").equals("turf"))
        .toList();
  }

  private static List<String> lowFlow() {
    return Emitters.KINDS.keys().stream()
        .filter(kind -> kind.contains("drip") || kind.contains("micro"))
        .toList();
  }
}
