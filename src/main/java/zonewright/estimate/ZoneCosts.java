package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.TAKEOFF;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.retrofit.Difference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the cost by zone: each item's cost is allotted to the zones by how much of what it is
 * counted by each of them has.
 */
public final class ZoneCosts {
  private static final Formula NOTHING = Formula.zero(QuantityKind.MONEY);

  private static final Condition SIZED = Parts.OF_A_SIZE.above(0);

  private static final Condition NEW = Parts.WHICH.is(Counted.NEW);

  public static final Column OF_NEW =
      item(
          "of-new",
          "Cost of new",
          NEW.and(SIZED.negated()),
          Parts.LINE,
          "The cost, if the item counts new things and not pipe or wire of a size; else nothing.");

  public static final Column OF_LATERAL =
      sized(
          "of-lateral",
          "Cost of new lateral of a size",
          "The cost, if the item counts new lateral, or its fittings, of one size; else nothing.",
          Counted.LATERAL,
          Counted.LATERAL_FITTINGS);

  public static final Column OF_MAIN =
      sized(
          "of-main",
          "Cost of new main of a size",
          "The cost, if the item counts new main, or its fittings, of one size; else nothing.",
          Counted.MAIN,
          Counted.MAIN_FITTINGS);

  public static final Column OF_WIRE =
      sized(
          "of-wire",
          "Cost of new wire of a size",
          "The cost, if the item counts new station wire of one size; else nothing.",
          Counted.WIRE);

  public static final Column OF_NEEDED = ofWhich("of-needed", "Cost of needed", Counted.NEEDED);

  public static final Column OF_KEPT = ofWhich("of-kept", "Cost of kept", Counted.KEPT);

  public static final Column COST_NEW = byThing("cost-new", "Cost of new", OF_NEW);

  public static final Column COST_NEEDED = byThing("cost-needed", "Cost of needed", OF_NEEDED);

  public static final Column EMITTERS_NEW =
      zone(
          "cost-emitters-new",
          "By new emitters",
          kind(OF_NEW, Difference.HEADS_NEW, Difference.DRIP_NEW),
          "Items counted by new emitters or drip line of the zone's kind, by the zone's part of them.");

  public static final Column EMITTERS_NEEDED =
      zone(
          "cost-emitters-needed",
          "By emitters needed",
          kind(OF_NEEDED, Takeoff.HEADS, Takeoff.DRIP_LENGTH),
          "Items counted by all emitters or drip line of the zone's kind, by the zone's part of them.");

  public static final Column EMITTERS_KEPT =
      zone(
          "cost-emitters-kept",
          "By emitters kept",
          kind(OF_KEPT, Difference.HEADS_KEPT, Difference.DRIP_KEPT),
          "Items counted by kept emitters or drip line of the zone's kind, by the zone's part of them.");

  public static final Column EMITTERS =
      zone(
          "cost-emitters",
          "Emitters and drip line",
          EMITTERS_NEW.plus(EMITTERS_NEEDED).plus(EMITTERS_KEPT),
          "Items counted by emitters or drip line of the zone's kind, by the zone's part of them.");

  public static final Column VALVES =
      zone(
          "cost-valves",
          "Valves and boxes",
          fresh(Counted.VALVES, Difference.VALVES_NEW)
              .plus(needed(Counted.VALVES, Takeoff.VALVES))
              .plus(fresh(Counted.BOXES, Difference.BOXES_NEW))
              .plus(needed(Counted.BOXES, Takeoff.BOXES))
              .plus(fresh(Counted.DRIP_ZONES, Difference.LOW_FLOW_NEW))
              .plus(needed(Counted.DRIP_ZONES, Takeoff.LOW_FLOW_ZONE)),
          "Items counted by valves, valve boxes or drip zones, by the zone's part of them.");

  public static final Column LATERAL_PART =
      zone(
          "cost-lateral",
          "Lateral",
          length(Counted.LATERAL, PipeTakeoff.LENGTH_NEW)
              .plus(fresh(Counted.LATERAL_FITTINGS, PipeTakeoff.FITTINGS_NEW))
              .plus(
                  pipeOfSize(
                      Laterals.OWN,
                      PipeTakeoff.PIPE,
                      PipeTakeoff.OWN,
                      OF_LATERAL,
                      PipeTakeoff.LENGTH_NEW)),
          "Items counted by new lateral or its fittings, by the zone's part of them; those of one size by its part of that size.");

  public static final Column MAIN_PART =
      zone(
          "cost-main",
          "Main",
          length(Counted.MAIN, PipeTakeoff.MAIN_NEW)
              .plus(fresh(Counted.MAIN_FITTINGS, PipeTakeoff.MAIN_FITTINGS_NEW))
              .plus(
                  pipeOfSize(
                      Mains.OWN,
                      PipeTakeoff.MAIN_PIPE,
                      PipeTakeoff.MAIN_OWN,
                      OF_MAIN,
                      PipeTakeoff.MAIN_NEW)),
          "Items counted by new main or its fittings, by the zone's part of them; those of one size by its part of that size.");

  public static final Column PIPE =
      zone(
          "cost-pipe",
          "Pipe and wire",
          LATERAL_PART
              .plus(MAIN_PART)
              .plus(length(Counted.WIRE, PipeTakeoff.WIRE_NEW))
              .plus(
                  Formula.when(OF_WIRE.sum().atMost(NOTHING))
                      .then(NOTHING)
                      .otherwise(
                          ofSize(
                              Parts.WIRE, PipeTakeoff.WIRE_SIZE, OF_WIRE, PipeTakeoff.WIRE_NEW))),
          "Items counted by new lateral, main or station wire, by the zone's part of them; those of one size by its part of that size.");

  public static final Column EACH_ZONE =
      zone(
          "cost-each-zone",
          "For each zone",
          needed(Counted.ZONES, one()).plus(fresh(Counted.STATIONS, Takeoff.VALVES)),
          "Items counted by zones or stations, in equal parts.");

  public static final Column COST_OF_ZONE =
      Column.calculated(
              TAKEOFF,
              "cost",
              "Cost",
              QuantityKind.MONEY,
              EMITTERS.plus(VALVES).plus(PIPE).plus(EACH_ZONE).roundedTo(Units.CENT))
          .band(COST)
          .means(
              "What the zone itself costs, before overhead, to the smallest amount of the currency.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column PRICE_OF_ZONE =
      Column.calculated(
              TAKEOFF,
              "zone-price",
              "Price before tax",
              QuantityKind.MONEY,
              Formula.when(BuildUp.DIRECT.atMost(NOTHING))
                  .then(NOTHING)
                  .otherwise(
                      COST_OF_ZONE
                          .times(BuildUp.NET_PRICE)
                          .over(BuildUp.DIRECT)
                          .roundedTo(Units.CENT)))
          .band(COST)
          .means(
              "Its cost with its part of overhead, profit and contingency, to the smallest amount of the currency.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column NOT_ALLOTTED =
      Column.calculated(
              ESTIMATE,
              "not-allotted",
              "Not allotted to zones",
              QuantityKind.MONEY,
              BuildUp.DIRECT.minus(COST_OF_ZONE.sum()).roundedTo(Units.CENT))
          .band(COST)
          .means(
              "Direct cost that belongs to no single zone: controllers, main line, removal, extras, items counted by hand, and the"
                  + " cents that rounding leaves. Zones and this add up to the direct cost.")
          .source("By definition.")
          .build();

  private ZoneCosts() {}

  /** Columns to stand on the sheet Takeoff, in their order. */
  public static List<Column> takeoffColumns() {
    return List.of(
        EMITTERS_NEW,
        EMITTERS_NEEDED,
        EMITTERS_KEPT,
        EMITTERS,
        VALVES,
        LATERAL_PART,
        MAIN_PART,
        PIPE,
        EACH_ZONE,
        COST_OF_ZONE,
        PRICE_OF_ZONE);
  }

  /** Columns to print of each zone, its name first. */
  public static List<Column> printed() {
    return List.of(
        Takeoff.ZONE_NAME,
        Difference.STATE,
        EMITTERS,
        VALVES,
        PIPE,
        EACH_ZONE,
        COST_OF_ZONE,
        PRICE_OF_ZONE);
  }

  private static Column ofWhich(String id, String name, String which) {
    return item(
        id,
        name,
        Parts.WHICH.is(which),
        Parts.LINE,
        "The cost, if the item counts " + which + " things; else nothing.");
  }

  /** What an item is counted by is asked only where it is said: it may be counted by hand. */
  private static Column sized(String id, String name, String means, String... words) {
    return item(
        id,
        name,
        NEW.and(SIZED),
        Formula.when(Parts.COUNTED_BY.is(words)).then(Parts.LINE).otherwise(NOTHING),
        means);
  }

  private static Column item(String id, String name, Condition counts, Term cost, String means) {
    return Column.calculated(
            PARTS, id, name, QuantityKind.MONEY, Formula.when(counts).then(cost).otherwise(NOTHING))
        .band(COST)
        .means(means)
        .source("By definition.")
        .build();
  }

  private static Column byThing(String id, String name, Column part) {
    return Column.calculated(
            COUNTS,
            id,
            name,
            QuantityKind.MONEY,
            Matching.rows(Parts.COUNTED_BY, Counts.WHAT).sum(part))
        .band(COST)
        .means("Cost of all items counted by it so.")
        .source("By definition.")
        .build();
  }

  private static Column zone(String id, String name, Term formula, String means) {
    return Column.calculated(TAKEOFF, id, name, QuantityKind.MONEY, formula)
        .band(COST)
        .means(means)
        .source("By definition; rounded only in the zone's cost.")
        .build();
  }

  /** The zone's part of the items of its own kind of emitter, by number or by length. */
  private static Formula kind(Column cost, Column heads, Column drip) {
    Formula items = Matching.rows(Parts.EMITTER, Emitters.EMITTER).sum(cost);
    Matching same = Matching.rows(Takeoff.KIND, Takeoff.KIND);
    Formula byLength = part(items, drip, same.sum(drip), QuantityKind.LENGTH);
    return Formula.when(drip.above(Formula.zero(QuantityKind.LENGTH)))
        .then(byLength)
        .otherwise(part(items, heads, same.sum(heads), QuantityKind.COUNT));
  }

  private static Formula part(Term cost, Term own, Term all, QuantityKind kind) {
    return Formula.when(own.atMost(Formula.zero(kind)))
        .then(NOTHING)
        .otherwise(cost.times(own).over(all));
  }

  private static Formula one() {
    return number(1);
  }

  private static Formula needed(String word, Term own) {
    return part(row(COST_NEEDED, word), own, row(Counts.NUMBER_NEEDED, word), QuantityKind.COUNT);
  }

  private static Formula fresh(String word, Column own) {
    return Formula.when(row(COST_NEW, word).atMost(NOTHING))
        .then(NOTHING)
        .otherwise(
            Formula.when(row(Counts.NUMBER_NEW, word).atMost(0))
                .then(NOTHING)
                .otherwise(
                    part(
                        row(COST_NEW, word),
                        own,
                        row(Counts.NUMBER_NEW, word),
                        QuantityKind.COUNT)));
  }

  /** Nobody needs to know the lengths of what no item is counted by. */
  private static Formula length(String word, Column own) {
    return Formula.when(row(COST_NEW, word).atMost(NOTHING))
        .then(NOTHING)
        .otherwise(
            part(row(COST_NEW, word), own, row(Counts.LENGTH_NEW, word), QuantityKind.LENGTH));
  }

  /** The zone's part of the items of its own size of pipe, or of its pipe of one's own. */
  private static Formula pipeOfSize(
      Column chosen, Column pipe, Column own, Column cost, Column length) {
    return Formula.when(cost.sum().atMost(NOTHING))
        .then(NOTHING)
        .otherwise(
            Formula.when(chosen.given())
                .then(ofSize(Parts.OWN_PIPE, own, cost, length))
                .otherwise(ofSize(Parts.PIPE, pipe, cost, length)));
  }

  private static Formula ofSize(Column items, Column size, Column cost, Column length) {
    Formula all = Matching.rows(items, size).sum(cost);
    Matching same = Matching.rows(size, size);
    return part(all, length, same.sum(length), QuantityKind.LENGTH);
  }

  private static Formula row(Column column, String word) {
    return column.inRow(Counted.row(word));
  }
}
