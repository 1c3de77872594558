package zonewright.fieldwork;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.FIELD_TEST;
import static zonewright.trade.Sheets.SPREAD;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.UNIFORMITY;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.formula.Comparator;
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

/** Columns of the catch-can tests: how each was made and what it found. */
public final class CatchTests {
  public static final String YES = "yes";
  public static final String NO = "no";

  private static final String PRACTICE = "Common practice of irrigation audits, no single source.";

  public static final Column NAME =
      Column.words(TESTS, "test", "Test")
          .band(FIELD_TEST)
          .means("What the test is called, such as 1 or North lawn, May.")
          .build();

  public static final Column ZONE =
      Column.choice(TESTS, "zone", "Zone", new WordList.RowsOf(ZONES))
          .band(FIELD_TEST)
          .means("The zone that was tested.")
          .build();

  public static final Column DATE =
      Column.input(TESTS, "date", "Date", QuantityKind.DATE)
          .band(FIELD_TEST)
          .within(FieldDates.ANY)
          .optional()
          .means("The day of the test.")
          .build();

  public static final Column OPENING_ACROSS =
      Column.input(TESTS, "opening-across", "Can across", QuantityKind.DEPTH)
          .band(FIELD_TEST)
          .within(Bounds.above(0, 40, Units.INCH))
          .decimals(3, 1)
          .optional()
          .means(
              "Width of a round can at its rim, inside. Needed where volumes are measured; all cans of a test must be alike.")
          .build();

  public static final Column OPENING =
      Column.defaulted(
              TESTS,
              "opening",
              "Can opening",
              QuantityKind.OPENING,
              number(Math.PI / 4).times(OPENING_ACROSS).times(OPENING_ACROSS))
          .band(FIELD_TEST)
          .within(Bounds.above(0, 1000, Units.SQUARE_INCH))
          .means("Area of a can's mouth; type it where the can is not round.")
          .source("Area of a circle.")
          .build();

  public static final Column MINUTES =
      Column.input(TESTS, "minutes", "Minutes run", QuantityKind.MINUTES)
          .band(FIELD_TEST)
          .within(Bounds.above(0, 1440, Units.MINUTE))
          .means(
              "How long the zone ran. Where neighbouring zones reach into the area, run each for the same time, one after another,"
                  + " and type the time of one.")
          .build();

  public static final Column SPACING_ACROSS =
      spacing("spacing-across", "Can spacing", "Distance between cans of one row of a grid.");

  public static final Column SPACING_UP =
      spacing("spacing-up", "Row spacing of cans", "Distance between the rows of a grid of cans.");

  public static final Column IN_USE =
      Column.choice(TESTS, "in-use", "In use", new WordList.Fixed(List.of(NO, YES)), NO)
          .band(FIELD_TEST)
          .means(
              "Whether this test is the zone's source of precipitation rate and uniformity. The rate counts where the zone's rate"
                  + " method is by field test.")
          .build();

  public static final Column NOTE =
      Column.words(TESTS, "note", "Note")
          .band(FIELD_TEST)
          .optional()
          .means("Wind, pressure, who was there.")
          .build();

  /** Declared with the cans. */
  private static final Reference CAN_DEPTH =
      new Reference(CANS, "depth", "Depth", QuantityKind.DEPTH);

  private static final Reference CAN_TEST =
      new Reference(CANS, "test", "Test", QuantityKind.CHOICE);

  static final Matching ITS_CANS = Matching.rows(CAN_TEST, NAME);

  public static final Column COUNT =
      Column.calculated(TESTS, "cans", "Cans", QuantityKind.COUNT, ITS_CANS.count())
          .band(UNIFORMITY)
          .means(
              "How many cans the test has. Twenty-four or more, and a multiple of four, make a fair test.")
          .source(
              "24 to 40 cans, divisible by 4: University of California, Davis, landscape irrigation pages (verified).")
          .build();

  public static final Column MEAN =
      Column.calculated(
              TESTS,
              "mean-depth",
              "Mean depth",
              QuantityKind.DEPTH,
              withCans(ITS_CANS.sum(CAN_DEPTH).over(COUNT)))
          .band(UNIFORMITY)
          .decimals(3, 2)
          .means("Mean depth of water in the cans.")
          .source("By definition.")
          .build();

  public static final Column RATE =
      Column.calculated(
              TESTS, "net-rate", "Net precipitation rate", QuantityKind.RATE, MEAN.over(MINUTES))
          .band(UNIFORMITY)
          .means("Depth an hour that reached the ground.")
          .source(
              "Rate = 3.66 × mL ÷ (min × in²), from memory; agrees with a published test within 0.1 %. The factor follows from the"
                  + " units here.")
          .build();

  public static final Column QUARTER_COUNT =
      Column.calculated(
              TESTS,
              "quarter-count",
              "Cans in the lowest quarter",
              QuantityKind.COUNT,
              withCans(Formula.larger(number(1), number(0.25).times(COUNT).roundedTo(Units.ONE))))
          .band(UNIFORMITY)
          .means(
              "The nearest whole number of cans to a quarter of them, at least one. With a multiple of four there is nothing to"
                  + " round.")
          .source(
              "Nearest whole number, as published worked tests have it: 4 of 15 and 12 of 46 (verified).")
          .build();

  public static final Column LOW_QUARTER =
      Column.calculated(
              TESTS,
              "low-quarter",
              "Low-quarter uniformity",
              QuantityKind.SHARE,
              compared(
                  ITS_CANS
                      .sum(
                          new Reference(
                              CANS, "quarter-depth", "Low-quarter depth", QuantityKind.DEPTH))
                      .over(QUARTER_COUNT)
                      .over(MEAN)))
          .band(UNIFORMITY)
          .decimals(1, 1)
          .means(
              "Lower-quarter distribution uniformity: what the driest quarter of the cans caught, as a part of the mean.")
          .source(
              "Mean of the lowest quarter ÷ mean of all: University of California, Davis, and Merriam and Keller (1978), verified.")
          .build();

  public static final Column HALF_COUNT =
      Column.calculated(
              TESTS,
              "half-count",
              "Cans in the lower half",
              QuantityKind.COUNT,
              withCans(number(0.5).times(COUNT).roundedTo(Units.ONE)))
          .band(UNIFORMITY)
          .means("The nearest whole number of cans to a half of them.")
          .source("As for the lowest quarter.")
          .build();

  public static final Column LOW_HALF =
      Column.calculated(
              TESTS,
              "low-half",
              "Low-half uniformity",
              QuantityKind.SHARE,
              compared(
                  ITS_CANS
                      .sum(new Reference(CANS, "half-depth", "Low-half depth", QuantityKind.DEPTH))
                      .over(HALF_COUNT)
                      .over(MEAN)))
          .band(UNIFORMITY)
          .decimals(1, 1)
          .means(
              "Lower-half distribution uniformity: what the drier half of the cans caught, as a part of the mean.")
          .source("Mean of the lower half ÷ mean of all (verified).")
          .build();

  public static final Column CHRISTIANSEN =
      Column.calculated(
              TESTS,
              "christiansen",
              "Christiansen coefficient",
              QuantityKind.SHARE,
              compared(
                  number(1)
                      .minus(
                          ITS_CANS
                              .sum(
                                  new Reference(
                                      CANS, "deviation", "Off the mean", QuantityKind.DEPTH))
                              .over(COUNT.times(MEAN)))))
          .band(UNIFORMITY)
          .decimals(1, 1)
          .means(
              "Christiansen's coefficient of uniformity. It runs higher than the low-quarter uniformity; never take one for the other.")
          .source("1 − Σ|depth − mean| ÷ (number × mean): Christiansen 1942 (verified, secondary).")
          .build();

  public static final Column MULTIPLIER =
      Column.calculated(
              TESTS,
              "multiplier",
              "Run-time multiplier",
              QuantityKind.FACTOR,
              number(1).over(number(0.4).plus(number(0.6).times(LOW_QUARTER))))
          .band(UNIFORMITY)
          .means(
              "How much longer a zone of this uniformity runs so that its drier parts get enough.")
          .source("1 ÷ (0.4 + 0.6 × low-quarter uniformity), verified (secondary).")
          .build();

  /** Place, counted from the lowest, of the can that marks the lower quarter. */
  private static final Formula QUARTER_PLACE = number(0.25).times(COUNT).roundedUpTo(Units.ONE);

  private static final Column LOWER_QUARTILE =
      Column.calculated(
              TESTS,
              "lower-quartile",
              "Lower quartile",
              QuantityKind.DEPTH,
              withCans(
                  ITS_CANS
                      .with(
                          new Reference(CANS, "last-place", "Last place", QuantityKind.COUNT),
                          Comparator.AT_LEAST,
                          QUARTER_PLACE)
                      .smallest(CAN_DEPTH)))
          .band(SPREAD)
          .decimals(3, 2)
          .means("Depth of the can at a quarter of the way from the lowest.")
          .source("By place: a quarter of the number of cans, rounded up.")
          .build();

  private static final Column UPPER_QUARTILE =
      Column.calculated(
              TESTS,
              "upper-quartile",
              "Upper quartile",
              QuantityKind.DEPTH,
              withCans(
                  ITS_CANS
                      .with(
                          new Reference(CANS, "place", "Place", QuantityKind.COUNT),
                          Comparator.AT_MOST,
                          COUNT.plus(1).minus(QUARTER_PLACE))
                      .largest(CAN_DEPTH)))
          .band(SPREAD)
          .decimals(3, 2)
          .means("Depth of the can at a quarter of the way from the highest.")
          .source("By place, as the lower quartile.")
          .build();

  private static final Formula REACH = number(1.5).times(UPPER_QUARTILE.minus(LOWER_QUARTILE));

  private static final String FENCES =
      "One and a half times the distance between the quartiles beyond them: Tukey, Exploratory Data Analysis (1977), from memory.";

  public static final Column FENCE_BELOW =
      Column.calculated(
              TESTS,
              "fence-below",
              "Far below under",
              QuantityKind.DEPTH,
              LOWER_QUARTILE.minus(REACH))
          .band(SPREAD)
          .decimals(3, 2)
          .means("A can with less than this lies far from the rest; below zero no can does.")
          .source(FENCES)
          .build();

  public static final Column FENCE_ABOVE =
      Column.calculated(
              TESTS,
              "fence-above",
              "Far above over",
              QuantityKind.DEPTH,
              UPPER_QUARTILE.plus(REACH))
          .band(SPREAD)
          .decimals(3, 2)
          .means("A can with more than this lies far from the rest.")
          .source(FENCES)
          .build();

  public static final Column OUTLIERS =
      Column.calculated(
              TESTS,
              "outliers",
              "Outliers",
              QuantityKind.COUNT,
              withCans(
                  ITS_CANS
                      .with(CAN_DEPTH, Comparator.BELOW, FENCE_BELOW)
                      .count()
                      .plus(ITS_CANS.with(CAN_DEPTH, Comparator.ABOVE, FENCE_ABOVE).count())))
          .band(SPREAD)
          .means("How many cans lie far from the rest. They count all the same.")
          .source(FENCES)
          .build();

  private static final Condition USED = IN_USE.is(YES);

  public static final Column COUNTED =
      Column.calculated(
              TESTS, "counted", "Counted", QuantityKind.COUNT, ifUsed(number(1), number(0)))
          .band(SPREAD)
          .means("1 where the test is in use, 0 otherwise.")
          .source("By definition.")
          .build();

  public static final Column COUNTED_RATE =
      Column.calculated(
              TESTS,
              "counted-rate",
              "Rate counted",
              QuantityKind.RATE,
              ifUsed(RATE, Formula.zero(QuantityKind.RATE)))
          .band(SPREAD)
          .means("The net precipitation rate where the test is in use, 0 otherwise.")
          .source("By definition.")
          .build();

  public static final Column COUNTED_UNIFORMITY =
      Column.calculated(
              TESTS,
              "counted-uniformity",
              "Uniformity counted",
              QuantityKind.SHARE,
              ifUsed(LOW_QUARTER, number(0)))
          .band(SPREAD)
          .means("The low-quarter uniformity where the test is in use, 0 otherwise.")
          .source("By definition.")
          .build();

  /** All columns in their usual order. */
  public static final List<Column> ALL =
      List.of(
          NAME,
          ZONE,
          DATE,
          OPENING_ACROSS,
          OPENING,
          MINUTES,
          SPACING_ACROSS,
          SPACING_UP,
          IN_USE,
          NOTE,
          COUNT,
          MEAN,
          RATE,
          QUARTER_COUNT,
          LOW_QUARTER,
          HALF_COUNT,
          LOW_HALF,
          CHRISTIANSEN,
          MULTIPLIER,
          LOWER_QUARTILE,
          UPPER_QUARTILE,
          FENCE_BELOW,
          FENCE_ABOVE,
          OUTLIERS,
          COUNTED,
          COUNTED_RATE,
          COUNTED_UNIFORMITY);

  private CatchTests() {}

  private static Column spacing(String id, String name, String meaning) {
    return Column.defaulted(TESTS, id, name, QuantityKind.LENGTH, Formula.amount(10, Units.FOOT))
        .band(FIELD_TEST)
        .within(Bounds.above(0, 300, Units.FOOT))
        .means(meaning + " It places cans that are pasted as a grid; the picture needs it only.")
        .source(PRACTICE)
        .build();
  }

  private static Formula withCans(Term formula) {
    return Formula.when(COUNT.atLeast(1))
        .then(formula)
        .otherwise(
            Formula.doesNotApply("no cans", "No can of the sheet Cans names this test yet."));
  }

  /** A measure of how alike the cans are: of one can it would always be 100 %. */
  private static Formula compared(Term formula) {
    return Formula.when(COUNT.atLeast(2).and(MEAN.above(Formula.zero(QuantityKind.DEPTH))))
        .then(formula)
        .otherwise(
            Formula.doesNotApply(
                "nothing to compare",
                "Uniformity compares cans with each other: it takes two or more of them, and water in them."));
  }

  private static Formula ifUsed(Term formula, Term otherwise) {
    return Formula.when(USED).then(formula).otherwise(otherwise);
  }
}
