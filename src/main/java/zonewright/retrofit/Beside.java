package zonewright.retrofit;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.BESIDE;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;

/** Columns that show, beside a zone as found, the zone proposed in its place and what changes. */
public final class Beside {
  /** What can change, in words. */
  private static final List<String> CHANGES =
      List.of(
          "nothing",
          "plants",
          "emitters",
          "plants and emitters",
          "flow or uniformity",
          "taken out of use");

  /** Two numbers apart by less than this part count as the same. */
  private static final double SAME = 0.001;

  /** The names of the proposed zones. */
  private static final Reference ZONE_NAME =
      new Reference(ZONES, "zone", "Zone", QuantityKind.CHOICE);

  private static final Condition STAYS = AsFound.BECOMES.given();

  public static final Column PLANT = word("proposed-plant", "Plant type proposed", Plants.PLANT);

  public static final Column EMITTER =
      word("proposed-emitter", "Emitter proposed", Emitters.EMITTER);

  public static final Column COUNT =
      beside("proposed-emitter-count", "Emitters proposed", Emitters.EMITTER_COUNT);

  public static final Column FLOW =
      beside("proposed-zone-flow", "Zone flow proposed", Emitters.ZONE_FLOW);

  public static final Column UNIFORMITY =
      beside(
          "proposed-uniformity",
          "Distribution uniformity proposed",
          Emitters.DISTRIBUTION_UNIFORMITY);

  public static final Column VOLUME =
      beside("proposed-volume", "Volume a year proposed", ZoneBudget.VOLUME_PER_YEAR);

  public static final Column CHANGE =
      Column.calculatedWord(
              FOUND,
              "change",
              "What changes",
              new WordList.Fixed(CHANGES),
              Formula.when(STAYS)
                  .then(
                      Formula.when(same(Plants.PLANT))
                          .then(
                              Formula.when(same(Emitters.EMITTER))
                                  .then(
                                      Formula.when(
                                              close(Emitters.EMITTER_COUNT, COUNT)
                                                  .and(close(Emitters.ZONE_FLOW, FLOW))
                                                  .and(
                                                      close(
                                                          Emitters.DISTRIBUTION_UNIFORMITY,
                                                          UNIFORMITY)))
                                          .then(0)
                                          .otherwise(4))
                                  .otherwise(2))
                          .otherwise(Formula.when(same(Emitters.EMITTER)).then(1).otherwise(3)))
                  .otherwise(5))
          .band(BESIDE)
          .means("What differs between the zone as found and the zone proposed in its place.")
          .source("By comparing the two sheets; numbers within a thousandth are the same.")
          .build();

  private Beside() {}

  /** Returns the columns, in their order. */
  public static List<Column> columns() {
    return List.of(CHANGE, PLANT, EMITTER, COUNT, FLOW, UNIFORMITY, VOLUME);
  }

  private static Formula found(Column column) {
    return Formula.when(STAYS)
        .then(column.inRowOf(AsFound.BECOMES))
        .otherwise(Formula.doesNotApply("–", "The zone is taken out of use."));
  }

  private static Column word(String id, String name, Column column) {
    return Column.calculatedWord(FOUND, id, name, column.words().orElseThrow(), found(column))
        .band(BESIDE)
        .means("Of the zone proposed in its place.")
        .source("The sheet Zones.")
        .build();
  }

  private static Column beside(String id, String name, Column column) {
    return Column.calculated(FOUND, id, name, column.kind(), found(column))
        .band(BESIDE)
        .means("Of the zone proposed in its place.")
        .source("The sheet Zones.")
        .build();
  }

  /** Says that the zone proposed has the same word: among the zones of its name one has it. */
  private static Condition same(Column column) {
    return Matching.rows(ZONE_NAME, AsFound.BECOMES)
        .and(column.reference(), AsFound.of(column))
        .count()
        .above(0);
  }

  private static Condition close(Column column, Column proposed) {
    Reference before = AsFound.of(column);
    return before.minus(proposed).apply(FunctionKind.ABSOLUTE).atMost(number(SAME).times(before));
  }
}
