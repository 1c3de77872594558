package zonewright.retrofit;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.KEPT;
import static zonewright.trade.Sheets.SAVED;
import static zonewright.trade.Sheets.TAKEOFF;

import java.util.List;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns that hold a proposed zone against the zones as found that it takes the place of: what is
 * kept, what is new, what water it saves.
 */
public final class Difference {
  public static final String NEW = "new";
  public static final String UNCHANGED = "unchanged";
  public static final String CHANGED = "changed";

  private static final Matching SAME_ZONE = Matching.rows(AsFound.BECOMES, Takeoff.ZONE_NAME);

  private static final Matching SAME_ZONE_AND_KIND =
      SAME_ZONE.and(AsFound.of(Emitters.EMITTER), Emitters.EMITTER.reference());

  public static final Column ZONES_FOUND =
      column(
          "zones-found",
          "Zones as found",
          QuantityKind.COUNT,
          SAME_ZONE.count(),
          "How many zones as found become this one; none where the zone is new.");

  public static final Column HEADS_KEPT =
      kept("heads-kept", "Heads kept", Takeoff.HEADS, SAME_ZONE_AND_KIND)
          .means(
              "Emitters that stay: as many as there were of the same kind, unless you type how many are worth keeping.")
          .build();

  public static final Column HEADS_NEW = fresh("heads-new", "Heads new", Takeoff.HEADS, HEADS_KEPT);

  public static final Column DRIP_KEPT =
      kept("drip-kept", "Drip line kept", Takeoff.DRIP_LENGTH, SAME_ZONE_AND_KIND)
          .means("Drip line that stays: as much as there was of the same kind, unless you type it.")
          .build();

  public static final Column DRIP_NEW =
      fresh("drip-new", "Drip line new", Takeoff.DRIP_LENGTH, DRIP_KEPT);

  public static final Column LOW_FLOW_KEPT =
      kept("low-flow-kept", "Drip kit kept", Takeoff.LOW_FLOW_ZONE, SAME_ZONE)
          .means(
              "1 where filter and pressure regulator are there already and stay, unless you type otherwise.")
          .build();

  public static final Column LOW_FLOW_NEW =
      fresh("low-flow-new", "Drip kit new", Takeoff.LOW_FLOW_ZONE, LOW_FLOW_KEPT);

  public static final Column VALVES_KEPT =
      kept("valves-kept", "Valves kept", Takeoff.VALVES, SAME_ZONE)
          .means("Valves that stay: as many as there were, unless you type how many.")
          .build();

  public static final Column VALVES_NEW =
      fresh("valves-new", "Valves new", Takeoff.VALVES, VALVES_KEPT);

  public static final Column BOXES_KEPT =
      Column.defaulted(
              TAKEOFF,
              "boxes-kept",
              "Valve boxes kept",
              QuantityKind.COUNT,
              Formula.smaller(Takeoff.BOXES, VALVES_KEPT))
          .band(KEPT)
          .within(Bounds.from(0, 50, Units.ONE).wholeNumbers())
          .means("Boxes that stay: one for each valve that stays, unless you type how many.")
          .source("Common practice, no source.")
          .build();

  public static final Column BOXES_NEW =
      fresh("boxes-new", "Valve boxes new", Takeoff.BOXES, BOXES_KEPT);

  public static final Column VOLUME_FOUND =
      column(
          "volume-found",
          "Volume a year as found",
          QuantityKind.VOLUME,
          SAME_ZONE.sum(AsFound.of(MonthlyVolume.YEAR)),
          "Water of a year that the zones as found would need, well scheduled, at their own uniformity and rate.");

  public static final Column VOLUME_PROPOSED =
      column(
          "volume-proposed",
          "Volume a year proposed",
          QuantityKind.VOLUME,
          ZoneBudget.VOLUME_PER_YEAR,
          "Water of a year of the zone as proposed.");

  public static final Column STATE =
      Column.calculatedWord(
              TAKEOFF,
              "state",
              "Beside as found",
              new WordList.Fixed(List.of(UNCHANGED, CHANGED, NEW)),
              Formula.when(ZONES_FOUND.atMost(0))
                  .then(2)
                  .otherwise(
                      Formula.when(
                              HEADS_NEW
                                  .plus(LOW_FLOW_NEW)
                                  .plus(VALVES_NEW)
                                  .atMost(0)
                                  .and(DRIP_NEW.atMost(Formula.zero(QuantityKind.LENGTH)))
                                  .and(sameVolume()))
                          .then(0)
                          .otherwise(1)))
          .band(SAVED)
          .means(
              "New where no zone as found becomes this one; unchanged where nothing is to be fitted and it needs the same water;"
                  + " otherwise changed.")
          .source("By definition.")
          .build();

  /** Returns the columns of zones, heads and valves; {@link #STATE} is the first. */
  public static List<Column> ofHeads() {
    return List.of(
        STATE,
        ZONES_FOUND,
        Takeoff.KIND,
        Takeoff.HEADS,
        HEADS_KEPT,
        HEADS_NEW,
        Takeoff.DRIP_LENGTH,
        DRIP_KEPT,
        DRIP_NEW,
        Takeoff.LOW_FLOW_ZONE,
        LOW_FLOW_KEPT,
        LOW_FLOW_NEW,
        Takeoff.VALVES,
        Takeoff.TURF,
        VALVES_KEPT,
        VALVES_NEW,
        Takeoff.BOXES,
        BOXES_KEPT,
        BOXES_NEW);
  }

  private Difference() {}

  private static Condition sameVolume() {
    Formula tolerance = number(1.001);
    return VOLUME_FOUND
        .atMost(tolerance.times(VOLUME_PROPOSED))
        .and(VOLUME_PROPOSED.atMost(tolerance.times(VOLUME_FOUND)));
  }

  private static Column column(
      String id, String name, QuantityKind kind, Term formula, String means) {
    return Column.calculated(TAKEOFF, id, name, kind, formula)
        .band(SAVED)
        .means(means)
        .source("By definition.")
        .build();
  }

  private static Column.Builder kept(String id, String name, Column needed, Matching same) {
    Reference found =
        new Reference(FOUND, needed.reference().column(), needed.name(), needed.kind());
    Column.Builder column =
        Column.defaulted(TAKEOFF, id, name, needed.kind(), Formula.smaller(needed, same.sum(found)))
            .band(KEPT)
            .source("The smaller of what is needed and what was found.");
    return needed.kind() == QuantityKind.COUNT
        ? column.within(Bounds.from(0, 1_000_000, Units.ONE).wholeNumbers())
        : column.within(Bounds.from(0, 200_000, Units.FOOT));
  }

  private static Column fresh(String id, String name, Column needed, Column kept) {
    return Column.calculated(
            TAKEOFF,
            id,
            name,
            needed.kind(),
            Formula.larger(Formula.zero(needed.kind()), needed.minus(kept)))
        .band(KEPT)
        .means("What is needed less what is kept: to be bought and fitted.")
        .source("By definition.")
        .build();
  }
}
