package zonewright.fieldwork;

import static zonewright.trade.Sheets.INSPECTION;
import static zonewright.trade.Sheets.READINGS;
import static zonewright.trade.Sheets.SEEN;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of what was seen and read on a walk through the site. */
public final class Inspection {
  public static final String URGENT = "urgent";
  public static final String SOON = "soon";
  public static final String AT_LEISURE = "when there is time";

  private static final String FLOW_WORD = "flow reading";
  private static final String PRESSURE_WORD = "pressure reading";

  public static final Column ITEM =
      Column.words(INSPECTION, "item", "Item").band(SEEN).means("Number of the entry.").build();

  public static final Column DATE =
      Column.input(INSPECTION, "date", "Date", QuantityKind.DATE)
          .band(SEEN)
          .within(FieldDates.ANY)
          .optional()
          .means("The day it was seen.")
          .build();

  public static final Column ZONE =
      Column.choice(INSPECTION, "zone", "Zone", new WordList.RowsOf(ZONES))
          .band(SEEN)
          .optional()
          .means("The zone it belongs to; blank where it is the main, the meter or the controller.")
          .build();

  public static final Column WHAT =
      Column.choice(
              INSPECTION,
              "what",
              "What",
              new WordList.Fixed(
                  List.of(
                      "leak",
                      "tilted head",
                      "sunken head",
                      "blocked nozzle",
                      "wrong nozzle",
                      "spray on paving",
                      "broken part",
                      "valve does not close",
                      PRESSURE_WORD,
                      FLOW_WORD,
                      "other")))
          .band(SEEN)
          .means("What was found or read.")
          .build();

  public static final Column WHERE =
      Column.words(INSPECTION, "where", "Where")
          .band(SEEN)
          .optional()
          .means("Where to look, in words a stranger can follow.")
          .build();

  public static final Column PRESSURE =
      Column.input(INSPECTION, "pressure", "Pressure read", QuantityKind.PRESSURE)
          .band(READINGS)
          .within(Bounds.from(0, 300, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means(
              "Pressure read while the zone ran. Let pressure off before opening anything: pipes under pressure can injure.")
          .build();

  public static final Column FLOW =
      Column.input(INSPECTION, "flow", "Flow read", QuantityKind.FLOW)
          .band(READINGS)
          .within(Bounds.from(0, 5000, Units.GALLON_PER_MINUTE))
          .optional()
          .means("Flow of the zone, by the water meter or a flow meter, nothing else running.")
          .build();

  public static final Column FLOW_EXPECTED =
      Column.calculated(
              INSPECTION,
              "flow-expected",
              "Flow expected",
              QuantityKind.FLOW,
              Formula.when(ZONE.given())
                  .then(Emitters.ZONE_FLOW.inRowOf(ZONE))
                  .otherwise(Formula.doesNotApply("no zone", "The entry names no zone.")))
          .band(READINGS)
          .means("What the zone takes by the design.")
          .source("Zone flow of the sheet Zones.")
          .build();

  public static final Column FLOW_RATIO =
      Column.calculated(
              INSPECTION,
              "flow-ratio",
              "Flow read of expected",
              QuantityKind.SHARE,
              Formula.when(FLOW.given().and(ZONE.given()))
                  .then(FLOW.over(FLOW_EXPECTED))
                  .otherwise(Formula.doesNotApply("no reading", "No flow of a zone was read.")))
          .band(READINGS)
          .means("The flow read as a part of the flow the design expects.")
          .source("By definition.")
          .build();

  public static final Column PHOTO =
      Column.words(INSPECTION, "photo", "Photo")
          .band(SEEN)
          .optional()
          .means("Where the picture lies: a file's path beside the design, or an address.")
          .build();

  public static final Column PRIORITY =
      Column.choice(
              INSPECTION,
              "priority",
              "Priority",
              new WordList.Fixed(List.of(URGENT, SOON, AT_LEISURE)),
              SOON)
          .band(SEEN)
          .means("How soon it wants doing. What wastes water or endangers someone is urgent.")
          .build();

  public static final Column DONE =
      Column.choice(
              INSPECTION,
              "done",
              "Done",
              new WordList.Fixed(List.of(CatchTests.NO, CatchTests.YES)),
              CatchTests.NO)
          .band(SEEN)
          .means("Whether it has been put right.")
          .build();

  public static final Column NOTE =
      Column.words(INSPECTION, "note", "Note")
          .band(SEEN)
          .optional()
          .means("Anything else, such as who will see to it.")
          .build();

  /** All columns in their usual order. */
  public static final List<Column> ALL =
      List.of(
          ITEM,
          DATE,
          ZONE,
          WHAT,
          WHERE,
          PRIORITY,
          DONE,
          PHOTO,
          NOTE,
          PRESSURE,
          FLOW,
          FLOW_EXPECTED,
          FLOW_RATIO);

  private static final Condition OPEN = DONE.is(CatchTests.NO);

  /** What is urgent and not yet done. */
  public static final Rule URGENT_AND_OPEN =
      new Rule(
          "urgent-and-open",
          Severity.CHECK,
          INSPECTION,
          PRIORITY.is(URGENT).and(OPEN),
          PRIORITY,
          "{0} is urgent and not done",
          "have it put right, then choose yes under Done",
          List.of(WHAT));

  /** A flow far above the design's. */
  public static final Rule TOO_MUCH_FLOW =
      new Rule(
          "too-much-flow-read",
          Severity.CHECK,
          INSPECTION,
          FLOW_RATIO.above(1.1).and(OPEN),
          FLOW,
          "takes {0}, more than the {1} expected",
          "look for a leak, a broken head or nozzles larger than designed; or correct the zone's flow",
          List.of(FLOW, FLOW_EXPECTED));

  /** A flow far below the design's. */
  public static final Rule TOO_LITTLE_FLOW =
      new Rule(
          "too-little-flow-read",
          Severity.CHECK,
          INSPECTION,
          FLOW_RATIO.below(0.9).and(OPEN),
          FLOW,
          "takes {0}, less than the {1} expected",
          "look for low pressure, blocked nozzles, a dirty filter or a valve not fully open; or correct the zone's flow",
          List.of(FLOW, FLOW_EXPECTED));

  private Inspection() {}
}
