package zonewright.emitters;

import static zonewright.trade.Sheets.APPLICATION;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the water application of a zone. */
public final class Emitters {
  /** Kinds of emitter with their usual uniformity and efficiency. */
  public static final ReferenceTable KINDS =
      ReferenceTable.read(Emitters.class, "emitters.csv", "Emitters");

  /** The ways to a precipitation rate. */
  public static final String BY_AREA = "by area";

  public static final String BY_SPACING = "by spacing";
  public static final String BY_CANOPY = "by canopy";
  public static final String BY_TEST = "by field test";

  public static final Column AREA =
      Column.input(ZONES, "area", "Area", QuantityKind.AREA)
          .band(ZONE)
          .within(Bounds.above(0, 1000, Units.ACRE))
          .means(
              "Ground the valve waters, measured flat. Paving and beds of other valves do not count.")
          .build();

  public static final Column EMITTER =
      Column.choice(ZONES, "emitter", "Emitter", new WordList.Published(KINDS))
          .band(APPLICATION)
          .means("Kind of emitter on the valve. Do not mix kinds on one valve: their rates differ.")
          .build();

  public static final Column EMITTER_COUNT =
      Column.input(ZONES, "emitter-count", "Emitters", QuantityKind.COUNT)
          .band(APPLICATION)
          .within(Bounds.from(1, 1_000_000, Units.ONE).wholeNumbers())
          .means("How many emitters the valve feeds; of drip line, its emission points.")
          .build();

  public static final Column EMITTER_FLOW =
      Column.input(ZONES, "emitter-flow", "Flow each", QuantityKind.FLOW)
          .band(APPLICATION)
          .within(Bounds.above(0, 500, Units.GALLON_PER_MINUTE))
          .decimals(3, 3)
          .means(
              "Flow of one emitter at its working pressure. Where they differ, type the mean; 0.6 gph or 2 L/h is fine too.")
          .build();

  public static final Column ZONE_FLOW =
      Column.defaulted(
              ZONES, "zone-flow", "Zone flow", QuantityKind.FLOW, EMITTER_COUNT.times(EMITTER_FLOW))
          .band(APPLICATION)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(2, 1)
          .means(
              "Flow of the whole valve. Follows from the emitters; type over it what a flow meter or the water meter shows.")
          .source("By definition.")
          .build();

  public static final Column HEAD_SPACING =
      Column.input(ZONES, "head-spacing", "Head spacing", QuantityKind.LENGTH)
          .band(APPLICATION)
          .within(Bounds.above(0, 300, Units.FOOT))
          .optional()
          .means("Distance between emitters in a row. Needed only for a rate by spacing.")
          .build();

  public static final Column ROW_SPACING =
      Column.input(ZONES, "row-spacing", "Row spacing", QuantityKind.LENGTH)
          .band(APPLICATION)
          .within(Bounds.above(0, 300, Units.FOOT))
          .optional()
          .means(
              "True distance between rows. In an equilateral triangle that is 0.866 of the head spacing; measure it, do not"
                  + " multiply a true row spacing again.")
          .build();

  public static final Column RATE_METHOD =
      Column.choice(
              ZONES,
              "rate-method",
              "Rate method",
              new WordList.Fixed(List.of(BY_AREA, BY_SPACING, BY_CANOPY, BY_TEST)),
              BY_AREA)
          .band(APPLICATION)
          .means(
              "How the precipitation rate is found: the valve's flow over its area, or one full-circle emitter's flow over the"
                  + " rectangle it waters, or, for emitters on single plants, the valve's flow over the ground under their canopies;"
                  + " or the catch-can test in use.")
          .build();

  public static final Column RATE_BY_AREA =
      Column.calculated(
              ZONES, "rate-by-area", "Rate by area", QuantityKind.RATE, ZONE_FLOW.over(AREA))
          .band(APPLICATION)
          .means("Precipitation rate as the valve's flow spread over its area.")
          .source(
              "Precipitation rate = 96.25 × gpm ÷ ft²: Ohio State University Extension, Bulletin 912, step 11 (verified).")
          .build();

  public static final Column RATE_BY_SPACING =
      Column.calculated(
              ZONES,
              "rate-by-spacing",
              "Rate by spacing",
              QuantityKind.RATE,
              Formula.when(HEAD_SPACING.given().and(ROW_SPACING.given()))
                  .then(EMITTER_FLOW.over(HEAD_SPACING.times(ROW_SPACING)))
                  .otherwise(
                      Formula.doesNotApply(
                          "no spacing", "Head spacing and row spacing are not both given.")))
          .band(APPLICATION)
          .means("Precipitation rate as one full-circle emitter's flow over its rectangle.")
          .source(
              "Precipitation rate = 96.25 × gpm of a full circle ÷ (head spacing × row spacing): university course slides, verified"
                  + " (secondary).")
          .build();

  public static final Column PLANT_COUNT =
      Column.input(ZONES, "plant-count", "Plants", QuantityKind.COUNT)
          .band(APPLICATION)
          .within(Bounds.from(1, 1_000_000, Units.ONE).wholeNumbers())
          .optional()
          .means("How many single plants the emitters serve. Needed only for a rate by canopy.")
          .build();

  public static final Column CANOPY =
      Column.input(ZONES, "canopy", "Canopy across", QuantityKind.LENGTH)
          .band(APPLICATION)
          .within(Bounds.above(0, 100, Units.FOOT))
          .optional()
          .means("Mean diameter of a plant's canopy. Needed only for a rate by canopy.")
          .build();

  public static final Column RATE_BY_CANOPY =
      Column.calculated(
              ZONES,
              "rate-by-canopy",
              "Rate by canopy",
              QuantityKind.RATE,
              Formula.when(PLANT_COUNT.given().and(CANOPY.given()))
                  .then(ZONE_FLOW.over(PLANT_COUNT.times(Math.PI / 4).times(CANOPY).times(CANOPY)))
                  .otherwise(
                      Formula.doesNotApply(
                          "no canopy", "Number of plants and canopy are not both given.")))
          .band(APPLICATION)
          .means(
              "Precipitation rate as the valve's flow over the ground under the canopies, so that single plants get their demand by"
                  + " volume.")
          .source(
              "Gallons a day = canopy ft² × in a day × 0.623: UC ANR micro-irrigation maintenance pages (verified); solved for the"
                  + " rate.")
          .build();

  public static final Column PRECIPITATION_RATE =
      Column.defaulted(
              ZONES,
              "precipitation-rate",
              "Precipitation rate",
              QuantityKind.RATE,
              Formula.when(RATE_METHOD.is(BY_SPACING))
                  .then(RATE_BY_SPACING)
                  .otherwise(
                      Formula.when(RATE_METHOD.is(BY_CANOPY))
                          .then(RATE_BY_CANOPY)
                          .otherwise(
                              Formula.when(RATE_METHOD.is(BY_TEST))
                                  .then(FieldTested.RATE_BY_TEST)
                                  .otherwise(RATE_BY_AREA))))
          .band(APPLICATION)
          .within(Bounds.above(0, 20, Units.INCH_PER_HOUR))
          .means(
              "Depth of water the valve would lay down in an hour, evenly spread. Where the rate is known, from a table of the"
                  + " nozzle or by measuring, it is typed over this.")
          .source("The method chosen for the zone; see there.")
          .build();

  /** Says that the rate is what reached the ground: no losses are to be taken off it. */
  public static final Condition RATE_IS_NET = RATE_METHOD.is(BY_TEST);

  public static final Column WETTED_WIDTH =
      Column.defaulted(
              ZONES,
              "wetted-width",
              "Wetted across",
              QuantityKind.LENGTH,
              Formula.amount(18, Units.INCH))
          .band(APPLICATION)
          .within(Bounds.above(0, 20, Units.FOOT))
          .means(
              "Of drip: how wide the ground is wet around an emitter, or along a line, at the end of a run. Dig and look: on sand it is"
                  + " narrower, on clay wider. Counts only for drip.")
          .source(
              "Common practice, no source: about 12 in on sand, 18 in on loam and 24 in on clay, as lines are laid apart.")
          .build();

  public static final Column DRIP_RATE =
      Column.calculated(
              ZONES,
              "drip-rate",
              "Rate where drip wets",
              QuantityKind.RATE,
              Formula.when(ROW_SPACING.given())
                  .then(PRECIPITATION_RATE.times(ROW_SPACING).over(WETTED_WIDTH))
                  .otherwise(
                      EMITTER_FLOW.over(
                          Formula.number(Math.PI / 4).times(WETTED_WIDTH).times(WETTED_WIDTH))))
          .band(APPLICATION)
          .means(
              "Depth an hour where drip falls: the water of a row on the strip it wets, where the row spacing is given, and else the flow of"
                  + " an emitter on the round it wets.")
          .source("Rate × row spacing ÷ strip; flow ÷ (π ÷ 4 × wetted across²): by definition.")
          .build();

  /** Drip lines and drip emitters: they may wet a part of the ground only. */
  private static final List<String> DRIP =
      KINDS.keys().stream().filter(kind -> kind.contains("drip")).toList();

  public static final Column WETTED_RATE =
      Column.calculated(
              ZONES,
              "wetted-rate",
              "Rate on wetted ground",
              QuantityKind.RATE,
              Formula.when(EMITTER.given())
                  .then(
                      Formula.when(EMITTER.is(DRIP))
                          .then(Formula.larger(PRECIPITATION_RATE, DRIP_RATE))
                          .otherwise(PRECIPITATION_RATE))
                  .otherwise(PRECIPITATION_RATE))
          .band(APPLICATION)
          .means(
              "Depth of water an hour where it falls, by which runoff, cycles and soaks are judged: of drip the rate on the wetted strip or"
                  + " round, and the mean over the bed where these meet; of all others the precipitation rate. How long the zone must run"
                  + " goes by the precipitation rate, for roots drink from the whole bed.")
          .source("The larger of the two: by definition.")
          .build();

  public static final Column DISTRIBUTION_UNIFORMITY =
      Column.defaulted(
              ZONES,
              "distribution-uniformity",
              "Distribution uniformity",
              QuantityKind.SHARE,
              Formula.when(FieldTested.TESTS_IN_USE.atLeast(1))
                  .then(FieldTested.TESTED_UNIFORMITY)
                  .otherwise(
                      KINDS.numbers("Distribution uniformity", QuantityKind.SHARE).of(EMITTER)))
          .band(APPLICATION)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "Lower-quarter distribution uniformity: what the driest quarter of the area gets, as a part of the mean. Follows from"
                  + " the catch-can test in use, or else from the kind of emitter.")
          .source("Field test in use; without one, table Emitters, by row.")
          .build();

  public static final Column IRRIGATION_EFFICIENCY =
      Column.defaulted(
              ZONES,
              "irrigation-efficiency",
              "Irrigation efficiency",
              QuantityKind.SHARE,
              KINDS.numbers("Irrigation efficiency", QuantityKind.SHARE).of(EMITTER))
          .band(APPLICATION)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "Part of the water applied that the plants can use. Counts only where the site finds gross depth by efficiency, and not where"
                  + " the rate comes from a catch-can test.")
          .source("Table Emitters, by row.")
          .build();

  /** Two rates that should agree and do not. */
  public static final Rule RATES_DIFFER =
      new Rule(
          "rates-differ",
          Severity.CHECK,
          ZONES,
          RATE_BY_AREA
              .above(Formula.number(1.1).times(RATE_BY_SPACING))
              .or(RATE_BY_SPACING.above(Formula.number(1.1).times(RATE_BY_AREA))),
          RATE_METHOD,
          "the rate by area ({0}) and by spacing ({1}) differ by more than 10 %",
          "measure area and spacing again; part circles and odd corners make the spacing rate the less sure of the two",
          List.of(RATE_BY_AREA, RATE_BY_SPACING));

  private Emitters() {}
}
