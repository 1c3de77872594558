package zonewright.emitters;

import static zonewright.trade.Sheets.APPLICATION;
import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** What the catch-can tests in use say of a zone. */
public final class FieldTested {
  /** Declared with the facts of a design. */
  private static final Reference ZONE_NAME =
      new Reference(ZONES, "zone", "Zone", QuantityKind.CHOICE);

  /** Declared with the tests. */
  private static final Reference TESTED_ZONE =
      new Reference(TESTS, "zone", "Zone", QuantityKind.CHOICE);

  private static final Matching OF_THE_ZONE = Matching.rows(TESTED_ZONE, ZONE_NAME);

  public static final Column TESTS_IN_USE =
      Column.calculated(
              ZONES,
              "tests-in-use",
              "Field tests in use",
              QuantityKind.COUNT,
              Formula.when(ZONE_NAME.given())
                  .then(OF_THE_ZONE.sum(declared("counted", "Counted", QuantityKind.COUNT)))
                  .otherwise(0))
          .band(APPLICATION)
          .means("How many catch-can tests are the zone's source of rate and uniformity.")
          .source("By counting the tests of the zone that are in use.")
          .build();

  public static final Column RATE_BY_TEST =
      Column.calculated(
              ZONES,
              "rate-by-test",
              "Rate by field test",
              QuantityKind.RATE,
              inUse(
                  OF_THE_ZONE
                      .sum(declared("counted-rate", "Rate counted", QuantityKind.RATE))
                      .over(TESTS_IN_USE)))
          .band(APPLICATION)
          .means(
              "Net precipitation rate that the catch-can test in use found; the mean of several. What cans catch is what the ground"
                  + " gets: wind and evaporation are off it already.")
          .source("Mean depth caught ÷ minutes run: see the sheet Tests.")
          .build();

  public static final Column TESTED_UNIFORMITY =
      Column.calculated(
              ZONES,
              "tested-uniformity",
              "Uniformity by field test",
              QuantityKind.SHARE,
              inUse(
                  OF_THE_ZONE
                      .sum(declared("counted-uniformity", "Uniformity counted", QuantityKind.SHARE))
                      .over(TESTS_IN_USE)))
          .band(APPLICATION)
          .means(
              "Lower-quarter distribution uniformity that the catch-can test in use found; the mean of several.")
          .source("Mean of the lowest quarter of cans ÷ mean of all: see the sheet Tests.")
          .build();

  private FieldTested() {}

  private static Reference declared(String id, String name, QuantityKind kind) {
    return new Reference(TESTS, id, name, kind);
  }

  /** Returns a formula where a test is in use, and no number where none is. */
  private static Formula inUse(Term formula) {
    return Formula.when(TESTS_IN_USE.atLeast(1))
        .then(formula)
        .otherwise(Formula.doesNotApply("no test", "No catch-can test of the zone is in use."));
  }
}
