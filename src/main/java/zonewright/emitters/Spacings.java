package zonewright.emitters;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.APPLICATION;
import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import java.util.Locale;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of how far apart heads may stand: by their throw, their pattern and the wind. */
public final class Spacings {
  /** How much of the diameter of throw heads may stand apart, by the wind. */
  public static final ReferenceTable SHARES =
      ReferenceTable.read(Spacings.class, "spacings.csv", "Spacings");

  static final String SQUARE = "square";
  static final String TRIANGULAR = "triangular";

  /** Rows of equilateral triangles stand this part of the head spacing apart: half of √3. */
  private static final double ROWS_OF_TRIANGLES = 0.866;

  private static final Formula NO_THROW =
      Formula.doesNotApply("no throw", "The throw of the heads is not given.");

  public static final Column WIND =
      Column.choice(
              SITE,
              "spacing-wind",
              "Wind while watering",
              new WordList.Fixed(SHARES.keys()),
              SHARES.keys().get(0))
          .band(CLIMATE)
          .means(
              "The wind in the hours of watering, for how far apart heads may stand. In more wind than these it is better not watered.")
          .build();

  public static final Column THROW =
      Column.input(ZONES, "throw", "Throw", QuantityKind.LENGTH)
          .band(APPLICATION)
          .within(Bounds.above(0, 300, Units.FOOT))
          .optional()
          .means(
              "How far a head throws at its pressure: the radius. Needed only for the largest spacing.")
          .build();

  public static final Column PATTERN =
      Column.choice(
              ZONES, "head-pattern", "Pattern", new WordList.Fixed(List.of(SQUARE, TRIANGULAR)))
          .band(APPLICATION)
          .optional()
          .means(
              "Whether the heads stand in squares or in equilateral triangles. Needed only for the largest spacing.")
          .build();

  public static final Column SHARE =
      Column.calculated(
              ZONES,
              "spacing-share",
              "Spacing by diameter",
              QuantityKind.SHARE,
              Formula.when(THROW.given().negated())
                  .then(NO_THROW)
                  .otherwise(
                      Formula.when(PATTERN.is(TRIANGULAR))
                          .then(share("Triangular"))
                          .otherwise(share("Square"))))
          .band(APPLICATION)
          .means(
              "How much of the diameter of throw heads may stand apart in this pattern and wind.")
          .source("Table Spacings, by row.")
          .build();

  public static final Column LARGEST_SPACING =
      largest(
          "largest-spacing",
          "Largest head spacing",
          number(2).times(THROW).times(SHARE),
          "How far apart heads may stand in a row.",
          "Diameter of throw × share of it: the overlap head to head, less in wind.");

  private static final Formula ROWS =
      Formula.when(PATTERN.is(TRIANGULAR)).then(ROWS_OF_TRIANGLES).otherwise(1);

  public static final Column LARGEST_ROWS =
      largest(
          "largest-rows",
          "Largest row spacing",
          LARGEST_SPACING.times(ROWS),
          "How far apart rows may stand.",
          "Equilateral triangle: 0.866 of the head spacing: New Mexico State University, Soils 456, answers (verified).");

  public static final Rule TOO_FAR =
      tooFar("heads-too-far", Emitters.HEAD_SPACING, LARGEST_SPACING);

  public static final Rule ROWS_TOO_FAR =
      tooFar("rows-too-far", Emitters.ROW_SPACING, LARGEST_ROWS);

  private Spacings() {}

  private static Formula share(String pattern) {
    return SHARES.numbers(pattern, QuantityKind.SHARE).of(WIND);
  }

  private static Column largest(String id, String name, Term spacing, String means, String source) {
    return Column.calculated(
            ZONES,
            id,
            name,
            QuantityKind.LENGTH,
            Formula.when(THROW.given()).then(spacing).otherwise(NO_THROW))
        .band(APPLICATION)
        .means(means)
        .source(source)
        .build();
  }

  private static Rule tooFar(String id, Column spacing, Column largest) {
    return new Rule(
        id,
        Severity.CHECK,
        ZONES,
        spacing.given().and(spacing.above(largest)),
        spacing,
        "has a "
            + spacing.name().toLowerCase(Locale.ROOT)
            + " of {0}, and {1} is the most for the throw, pattern and wind",
        "bring them closer, choose heads that throw farther, or water when it is calm",
        List.of(spacing, largest));
  }
}
