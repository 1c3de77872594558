package zonewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * The statistics of a test against the same done straight from the sorted catches, and its laws.
 */
class CatchTestLawsTest {
  private static final double LAST_BITS = 1e-12;

  /** A design with one test of cans that caught so many millilitres. */
  private static Design test(List<Integer> catches) {
    Design design = Design.blank(UnitSystem.SI);
    design.book().start(design.edits().inserted(Sheets.ZONES, 0, 1));
    design.book().start(design.edits().inserted(Sheets.TESTS, 0, 2));
    design.book().start(design.edits().inserted(Sheets.CANS, 0, catches.size() + 1));
    type(design, CatchTests.ZONE, 0, "1");
    type(design, CatchTests.OPENING, 0, "50 cm2");
    type(design, CatchTests.MINUTES, 0, "20");
    for (int i = 0; i < catches.size(); i++) {
      type(design, Cans.TEST, i, "1");
      type(design, Cans.VOLUME, i, catches.get(i) + " mL");
    }
    // A can of another test must not count.
    type(design, Cans.TEST, catches.size(), "2");
    type(design, Cans.DEPTH, catches.size(), "99 mm");
    return design;
  }

  private static void type(Design design, Column column, int row, String text) {
    design.book().start(design.edits().typed(column.reference(), row, text));
  }

  private static double of(Design design, Column column) {
    return design.book().number(column.reference(), 0);
  }

  @Property(tries = 60)
  void agreesWithTheSameDoneFromSortedCatches(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 0, max = 12) Integer> catches) {
    Design design = test(catches);
    double[] sorted = catches.stream().mapToDouble(each -> each * 10.0 / 50).sorted().toArray();
    double mean = Arrays.stream(sorted).average().orElseThrow();
    int quarter = Math.max(1, (int) Math.round(sorted.length / 4.0));
    int half = (int) Math.round(sorted.length / 2.0);
    assertThat(of(design, CatchTests.COUNT)).isEqualTo(sorted.length);
    assertThat(of(design, CatchTests.MEAN)).isCloseTo(mean, within(LAST_BITS * 10));
    assertThat(of(design, CatchTests.RATE)).isCloseTo(mean * 3, within(LAST_BITS * 100));
    assertThat(of(design, CatchTests.QUARTER_COUNT)).isEqualTo(quarter);
    if (mean == 0 || sorted.length == 1) {
      assertThat(of(design, CatchTests.LOW_QUARTER)).isNaN();
      return;
    }
    double low = Arrays.stream(sorted).limit(quarter).average().orElseThrow() / mean;
    double lower = Arrays.stream(sorted).limit(half).average().orElseThrow() / mean;
    double off = Arrays.stream(sorted).map(each -> Math.abs(each - mean)).sum();
    assertThat(of(design, CatchTests.LOW_QUARTER)).isCloseTo(low, within(LAST_BITS * 10));
    assertThat(of(design, CatchTests.LOW_HALF)).isCloseTo(lower, within(LAST_BITS * 10));
    assertThat(of(design, CatchTests.CHRISTIANSEN))
        .isCloseTo(1 - off / (sorted.length * mean), within(LAST_BITS * 10));
    int place = (int) Math.ceil(sorted.length / 4.0);
    double first = sorted[place - 1];
    double third = sorted[sorted.length - place];
    double reach = 1.5 * (third - first);
    long outliers =
        Arrays.stream(sorted)
            .filter(each -> each < first - reach - 1e-9 || each > third + reach + 1e-9)
            .count();
    assertThat(of(design, CatchTests.OUTLIERS)).isEqualTo((double) outliers);
  }

  @Test
  void ofOneCanNothingIsUniform() {
    Design design = test(List.of(30));
    type(design, CatchTests.IN_USE, 0, CatchTests.YES);
    for (Column column :
        List.of(
            CatchTests.LOW_QUARTER,
            CatchTests.LOW_HALF,
            CatchTests.CHRISTIANSEN,
            CatchTests.MULTIPLIER,
            Emitters.DISTRIBUTION_UNIFORMITY)) {
      assertThat(design.book().outcome(column.reference(), 0).sentence())
          .as("%s", column)
          .contains("takes two or more");
    }
    assertThat(of(design, CatchTests.RATE)).as("a depth it has").isCloseTo(18, within(1e-9));
  }

  @Property(tries = 12)
  void orderDoesNotMatterAndEvenWaterIsPerfect(
      @ForAll @Size(min = 4, max = 24) List<@IntRange(min = 1, max = 60) Integer> catches,
      @ForAll long seed) {
    List<Integer> shuffled = new ArrayList<>(catches);
    Collections.shuffle(shuffled, new Random(seed));
    for (Column column :
        List.of(CatchTests.LOW_QUARTER, CatchTests.LOW_HALF, CatchTests.CHRISTIANSEN)) {
      assertThat(of(test(shuffled), column)).isCloseTo(of(test(catches), column), within(1e-12));
      Design even = test(Collections.nCopies(catches.size(), catches.get(0)));
      assertThat(of(even, column)).isCloseTo(1, within(1e-12));
    }
    Design design = test(catches);
    assertThat(of(design, CatchTests.LOW_QUARTER))
        .isLessThanOrEqualTo(of(design, CatchTests.LOW_HALF) + 1e-12);
    assertThat(of(design, CatchTests.MULTIPLIER)).isGreaterThanOrEqualTo(1 - 1e-12);
  }

  @Test
  void aCanWithoutACatchIsAskedForAndNotTakenForZero() {
    Design design = test(List.of(4, 5, 6, 7));
    type(design, Cans.VOLUME, 2, "");
    Outcome outcome = design.book().outcome(CatchTests.LOW_QUARTER.reference(), 0);
    assertThat(outcome.sentence()).contains("can 3");
    type(design, Cans.VOLUME, 2, "0");
    assertThat(of(design, CatchTests.LOW_QUARTER)).isZero();
  }

  @Test
  void marksTheCansThatLieFarFromTheRest() {
    Design design = test(List.of(10, 11, 10, 12, 11, 10, 40, 1));
    assertThat(standing(design, 6)).isEqualTo(Cans.FAR_ABOVE);
    assertThat(standing(design, 7)).isEqualTo(Cans.FAR_BELOW);
    assertThat(standing(design, 0)).isEqualTo(Cans.AS_THE_REST);
    assertThat(design.findings())
        .anyMatch(finding -> finding.line().contains("has 2 of 8 cans far from the rest"));
  }

  private static String standing(Design design, int can) {
    return ((Outcome.Words) design.book().outcome(Cans.STANDING.reference(), can)).text();
  }
}
