package zonewright.fieldwork;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.FIELD_TEST;
import static zonewright.trade.Sheets.SPREAD;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.UNIFORMITY;

import java.util.List;
import zonewright.formula.Comparator;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Matching;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the cans of all tests: where each stood and what it caught. */
public final class Cans {
  public static final String AS_THE_REST = "as the rest";
  public static final String FAR_BELOW = "far below";
  public static final String FAR_ABOVE = "far above";

  public static final Column CAN =
      Column.words(CANS, "can", "Can")
          .band(FIELD_TEST)
          .means("Number or name of the can, once in the sheet.")
          .build();

  public static final Column TEST =
      Column.choice(CANS, "test", "Test", new WordList.RowsOf(TESTS))
          .band(FIELD_TEST)
          .means("The test it belongs to.")
          .build();

  public static final Column ACROSS =
      Column.input(CANS, "across", "Across", QuantityKind.LENGTH)
          .band(FIELD_TEST)
          .within(Bounds.from(0, 5000, Units.FOOT))
          .optional()
          .means(
              "How far the can stood from the left edge of the plan. Needed for the picture only.")
          .build();

  public static final Column UP =
      Column.input(CANS, "up", "Up", QuantityKind.LENGTH)
          .band(FIELD_TEST)
          .within(Bounds.from(0, 5000, Units.FOOT))
          .optional()
          .means(
              "How far the can stood from the lower edge of the plan. Needed for the picture only.")
          .build();

  public static final Column VOLUME =
      Column.input(CANS, "volume", "Volume", QuantityKind.CATCH)
          .band(FIELD_TEST)
          .within(Bounds.from(0, 100_000, Units.MILLILITRE))
          .optional()
          .means(
              "What the can caught. A can that stood on the area and caught nothing is 0, not blank; one outside does not belong"
                  + " here.")
          .build();

  public static final Column DEPTH =
      Column.defaulted(
              CANS,
              "depth",
              "Depth",
              QuantityKind.DEPTH,
              VOLUME.over(CatchTests.OPENING.inRowOf(TEST)))
          .band(FIELD_TEST)
          .within(Bounds.from(0, 100, Units.INCH))
          .decimals(3, 2)
          .means(
              "Depth of water caught. Follows from volume and opening; type it where the depth itself was read.")
          .source("Volume ÷ opening.")
          .build();

  private static final Matching OF_ITS_TEST = Matching.rows(TEST, TEST);

  public static final Column PLACE =
      Column.calculated(
              CANS,
              "place",
              "Place",
              QuantityKind.COUNT,
              OF_ITS_TEST.with(DEPTH.reference(), Comparator.BELOW, DEPTH).count().plus(1))
          .band(UNIFORMITY)
          .means(
              "Its place in the test, counted from the driest; equal cans share the first place.")
          .source("By counting.")
          .build();

  public static final Column LAST_PLACE =
      Column.calculated(
              CANS,
              "last-place",
              "Last place",
              QuantityKind.COUNT,
              OF_ITS_TEST.with(DEPTH.reference(), Comparator.AT_MOST, DEPTH).count())
          .band(UNIFORMITY)
          .means("The last place of those it shares with equal cans.")
          .source("By counting.")
          .build();

  public static final Column QUARTER_PART =
      Column.calculated(
              CANS,
              "quarter-part",
              "Part in the lowest quarter",
              QuantityKind.FACTOR,
              partOf(CatchTests.QUARTER_COUNT))
          .band(UNIFORMITY)
          .means(
              "1 where the can is in the lowest quarter, 0 where not; equal cans at its edge share what room is left.")
          .source("By definition; the sharing makes no difference to the mean of the quarter.")
          .build();

  public static final Column HALF_PART =
      Column.calculated(
              CANS,
              "half-part",
              "Part in the lower half",
              QuantityKind.FACTOR,
              partOf(CatchTests.HALF_COUNT))
          .band(UNIFORMITY)
          .means("1 where the can is in the lower half, 0 where not; equal cans share the edge.")
          .source("As for the lowest quarter.")
          .build();

  public static final Column QUARTER_DEPTH =
      Column.calculated(
              CANS,
              "quarter-depth",
              "Low-quarter depth",
              QuantityKind.DEPTH,
              DEPTH.times(QUARTER_PART))
          .band(UNIFORMITY)
          .decimals(3, 2)
          .means("What the can adds to the lowest quarter.")
          .source("By definition.")
          .build();

  public static final Column HALF_DEPTH =
      Column.calculated(
              CANS, "half-depth", "Low-half depth", QuantityKind.DEPTH, DEPTH.times(HALF_PART))
          .band(UNIFORMITY)
          .decimals(3, 2)
          .means("What the can adds to the lower half.")
          .source("By definition.")
          .build();

  public static final Column DRIEST_PART =
      Column.calculated(
              CANS,
              "driest-part",
              "Part in the driest twentieth",
              QuantityKind.FACTOR,
              partOf(LowQuarter.DRIEST_COUNT))
          .band(UNIFORMITY)
          .means("1 where the can is in the driest 5 %, 0 where not; equal cans share the edge.")
          .source("As for the lowest quarter.")
          .build();

  public static final Column DRIEST_DEPTH =
      Column.calculated(
              CANS, "driest-depth", "Driest depth", QuantityKind.DEPTH, DEPTH.times(DRIEST_PART))
          .band(UNIFORMITY)
          .decimals(3, 2)
          .means("What the can adds to the driest twentieth.")
          .source("By definition.")
          .build();

  public static final Column DEVIATION =
      Column.calculated(
              CANS,
              "deviation",
              "Off the mean",
              QuantityKind.DEPTH,
              DEPTH.minus(ofTest(CatchTests.MEAN)).apply(FunctionKind.ABSOLUTE))
          .band(SPREAD)
          .decimals(3, 2)
          .means("How far its depth is from the mean of the test, either way.")
          .source("By definition.")
          .build();

  public static final Column STANDING =
      Column.calculatedWord(
              CANS,
              "standing",
              "Beside the rest",
              new WordList.Fixed(List.of(AS_THE_REST, FAR_BELOW, FAR_ABOVE)),
              Formula.when(DEPTH.below(ofTest(CatchTests.FENCE_BELOW)))
                  .then(1)
                  .otherwise(
                      Formula.when(DEPTH.above(ofTest(CatchTests.FENCE_ABOVE)))
                          .then(2)
                          .otherwise(0)))
          .band(SPREAD)
          .means(
              "Whether the can lies far from the rest of its test: look there for a tilted head, a knocked can, a leak. It counts"
                  + " all the same.")
          .source("See the fences in the sheet Tests.")
          .build();

  /** All columns in their usual order. */
  public static final List<Column> ALL =
      List.of(
          CAN,
          TEST,
          ACROSS,
          UP,
          VOLUME,
          DEPTH,
          PLACE,
          LAST_PLACE,
          QUARTER_PART,
          QUARTER_DEPTH,
          HALF_PART,
          HALF_DEPTH,
          DRIEST_PART,
          DRIEST_DEPTH,
          DEVIATION,
          STANDING);

  private Cans() {}

  private static Formula ofTest(Column column) {
    return column.inRowOf(TEST);
  }

  /** The room that is left for the cans of this depth among the lowest, shared by them. */
  private static Formula partOf(Column howMany) {
    Formula before = PLACE.minus(1);
    Formula alike = LAST_PLACE.minus(before);
    Formula room = ofTest(howMany).minus(before).over(alike);
    return Formula.larger(number(0), Formula.smaller(number(1), room));
  }
}
