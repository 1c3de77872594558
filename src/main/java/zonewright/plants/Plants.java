package zonewright.plants;

import static zonewright.trade.Sheets.PLANTS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the plants of a zone. */
public final class Plants {
  /** Plant types with their factor, root depth and allowed depletion. */
  public static final ReferenceTable TYPES =
      ReferenceTable.read(Plants.class, "plants.csv", "Plants");

  public static final Column PLANT =
      Column.choice(ZONES, "plant", "Plant type", new WordList.Published(TYPES))
          .band(PLANTS)
          .means(
              "What the valve waters. Where plants are mixed, choose the thirstiest: it sets what the whole valve needs.")
          .source(
              "Kjelgren, Beeson, Pittenger and Montague, Simplified Landscape Irrigation Demand Estimation (SLIDE), Applied"
                  + " Engineering in Agriculture 32(4), 2016 (abstract verified).")
          .build();

  public static final String OWN_BASIS = "each plant's own";

  /** A basis of plant factors, and its column in the table, which has a number for every plant. */
  private record Basis(String name, String heading) {}

  private static final List<Basis> BASES =
      List.of(
          new Basis(OWN_BASIS, "Plant factor"),
          new Basis("ASABE S623", "By ASABE S623 or own"),
          new Basis("FAO-56 Kc", "By FAO-56 or own"),
          new Basis("WUCOLS", "By WUCOLS or own"),
          new Basis("MWELO", "By MWELO or own"),
          new Basis("WaterSense", "By WaterSense or own"));

  /** Returns the headings of the table under which a plant factor stands, one for each basis. */
  public static String[] factorHeadings() {
    return BASES.stream().map(Basis::heading).toArray(String[]::new);
  }

  private static final List<ReferenceTable.Numbers> FACTORS =
      BASES.stream().map(basis -> TYPES.numbers(basis.heading(), QuantityKind.FACTOR)).toList();

  public static final Column BASIS =
      Column.choice(
              SITE,
              "plant-basis",
              "Plant factors by",
              new WordList.Fixed(BASES.stream().map(Basis::name).toList()),
              OWN_BASIS)
          .band(PLANTS)
          .means(
              "Whose plant factors the zones take by default: the basis the table Plants names for each plant, or one basis for all"
                  + " the plants it covers; a plant it does not cover keeps its own. The bases differ: cool-season turf is 0.8 by one"
                  + " and 0.95 by another. A rule may prescribe one.")
          .source(
              "Table Plants, which says row by row what each figure is worth. By MWELO the top of each range stands, the safe"
                  + " side.")
          .build();

  public static final Column BASIS_PLACE =
      Column.calculated(
              SITE, "plant-basis-place", "Column of that basis", QuantityKind.COUNT, placeOfBasis())
          .band(PLANTS)
          .means(
              "Which of the columns of factors in the table Plants the zones take, counted from the left.")
          .source("By counting.")
          .build();

  public static final String THIRSTIEST = "thirstiest";
  public static final String BY_AREA = "by area";

  public static final Column SECOND_PLANT =
      Column.choice(ZONES, "second-plant", "Second plant", new WordList.Published(TYPES))
          .band(PLANTS)
          .optional()
          .means("A second plant type on the same valve, where they could not be kept apart.")
          .build();

  public static final Column SECOND_SHARE =
      Column.input(ZONES, "second-share", "Share of second", QuantityKind.SHARE)
          .band(PLANTS)
          .within(Bounds.from(0, 1, Units.ONE))
          .optional()
          .means(
              "Part of the area the second plant covers; counts only where mixed plants go by area.")
          .build();

  public static final Column MIXED =
      Column.choice(
              ZONES,
              "mixed-plants",
              "Mixed plants",
              new WordList.Fixed(List.of(THIRSTIEST, BY_AREA)),
              THIRSTIEST)
          .band(PLANTS)
          .means(
              "What a valve with two plants goes by: the thirstier one, so that none dries, or the mean by area, which over- and"
                  + " underwaters.")
          .build();

  private static final Formula FIRST_FACTOR = Formula.lookup(PLANT, FACTORS, BASIS_PLACE);
  private static final Formula SECOND_FACTOR = Formula.lookup(SECOND_PLANT, FACTORS, BASIS_PLACE);

  public static final Column PLANT_FACTOR =
      Column.defaulted(
              ZONES,
              "plant-factor",
              "Plant factor",
              QuantityKind.FACTOR,
              Formula.when(SECOND_PLANT.given())
                  .then(
                      Formula.when(MIXED.is(BY_AREA))
                          .then(
                              FIRST_FACTOR
                                  .times(Formula.number(1).minus(SECOND_SHARE))
                                  .plus(SECOND_FACTOR.times(SECOND_SHARE)))
                          .otherwise(Formula.larger(FIRST_FACTOR, SECOND_FACTOR)))
                  .otherwise(FIRST_FACTOR))
          .band(PLANTS)
          .within(Bounds.above(0, 2, Units.ONE))
          .means(
              "Share of the reference evapotranspiration that the plants need to look well. Follows from the plant type and"
                  + " the basis the site goes by unless typed; of two plants the thirstier counts, or their mean by area.")
          .source(
              "Table Plants, by row; published bases differ, so each row names its own. Of mixed plants the thirstiest sets the valve's"
                  + " demand: SLIDE (2016, abstract verified).")
          .build();

  public static final Column DENSITY_FACTOR =
      factor(
          "density-factor",
          "Density factor",
          "1 for an average planting; less for a sparse or new one, more for layered or very full ones.");

  public static final Column MICROCLIMATE_FACTOR =
      factor(
          "microclimate-factor",
          "Microclimate factor",
          "1 in open average conditions; less in shade and shelter, more beside paving, reflected heat or wind.");

  public static final Column LANDSCAPE_COEFFICIENT =
      Column.calculated(
              ZONES,
              "landscape-coefficient",
              "Landscape coefficient",
              QuantityKind.FACTOR,
              PLANT_FACTOR.times(DENSITY_FACTOR).times(MICROCLIMATE_FACTOR))
          .band(PLANTS)
          .means(
              "Share of the reference evapotranspiration that this planting needs in this place.")
          .source(
              "Landscape coefficient method: Costello, Matheny and Clark, in the guide of UC Cooperative Extension and the"
                  + " California Department of Water Resources (2000); the product form is verified in a public salinity-management"
                  + " guide.")
          .build();

  public static final Column ROOT_DEPTH =
      Column.defaulted(
              ZONES,
              "root-depth",
              "Root depth",
              QuantityKind.DEPTH,
              TYPES.numbers("Root depth (in)", QuantityKind.DEPTH).of(PLANT))
          .band(PLANTS)
          .within(Bounds.above(0, 120, Units.INCH))
          .decimals(1, 0)
          .means(
              "Depth in which most roots are, to be watered through. Dig and look: young or often-watered plants root far"
                  + " shallower.")
          .source("Table Plants, by row.")
          .build();

  public static final Column ALLOWED_DEPLETION =
      Column.defaulted(
              ZONES,
              "allowed-depletion",
              "Allowed depletion",
              QuantityKind.SHARE,
              TYPES.numbers("Allowed depletion", QuantityKind.SHARE).of(PLANT))
          .band(PLANTS)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "Part of the water held in the root zone that may be used before the next watering.")
          .source("Table Plants, by row.")
          .build();

  private static Formula placeOfBasis() {
    Formula place = Formula.number(1);
    for (int at = BASES.size(); at > 1; at--) {
      place = Formula.when(BASIS.is(BASES.get(at - 1).name())).then(at).otherwise(place);
    }
    return place;
  }

  private static Column factor(String id, String name, String meaning) {
    return Column.defaulted(ZONES, id, name, QuantityKind.FACTOR, Formula.number(1))
        .band(PLANTS)
        .within(Bounds.from(0.1, 2, Units.ONE))
        .means(meaning)
        .source(
            "Landscape coefficient method (2000); ranges from memory, 1.0 for the average case verified in its chapter 8.")
        .build();
  }

  private Plants() {}
}
