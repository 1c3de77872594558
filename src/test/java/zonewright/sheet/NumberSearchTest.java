package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import zonewright.sheet.NumberSearch.Goal;
import zonewright.sheet.NumberSearch.Span;

/** Where functions whose solutions are known by algebra are as wanted. */
class NumberSearchTest {
  private static final double[] TO_TEN =
      IntStream.rangeClosed(0, 100).mapToDouble(i -> i / 10.0).toArray();

  private static List<Span> spans(
      DoubleUnaryOperator comes, Goal goal, double wanted, boolean whole, double... points) {
    NumberSearch search = new NumberSearch(comes, goal, wanted, whole);
    return search.spans(whole ? points : search.withTurns(points));
  }

  private static List<Span> spans(DoubleUnaryOperator comes, Goal goal, double wanted) {
    return spans(comes, goal, wanted, false, TO_TEN);
  }

  @Test
  void everyCrossingIsFound() {
    List<Span> found = spans(Math::sin, Goal.EQUAL, 0.5);

    assertThat(found).hasSize(4).allMatch(Span::single);
    double[] byAlgebra = {Math.PI / 6, 5 * Math.PI / 6, 13 * Math.PI / 6, 17 * Math.PI / 6};
    for (int i = 0; i < byAlgebra.length; i++) {
      assertThat(found.get(i).from()).isCloseTo(byAlgebra[i], offset(1e-5));
    }
  }

  @Test
  void nothingIsMetWhereTheSignTurns() {
    assertThat(spans(x -> x * x - 2, Goal.EQUAL, 0))
        .singleElement()
        .satisfies(span -> assertThat(span.from()).isCloseTo(Math.sqrt(2), offset(1e-6)));
  }

  @Test
  void twoCrossingsBetweenTwoPointsAreNotPassedBy() {
    List<Span> found = spans(x -> (x - 4.03) * (x - 4.05) + 1, Goal.EQUAL, 1);

    assertThat(found).hasSize(2);
    assertThat(found.get(0).from()).isCloseTo(4.03, offset(1e-4));
    assertThat(found.get(1).to()).isCloseTo(4.05, offset(1e-4));
  }

  @Test
  void whatOnlyTouchesIsFound() {
    assertThat(spans(x -> 3 + (x - 2.345) * (x - 2.345), Goal.EQUAL, 3))
        .singleElement()
        .satisfies(
            span -> assertThat((span.from() + span.to()) / 2).isCloseTo(2.345, offset(1e-3)));
    assertThat(spans(x -> 3 + (x - 2.345) * (x - 2.345), Goal.EQUAL, 2.99)).isEmpty();
  }

  @Test
  void aLimitHoldsOnBothSidesOfAHill() {
    List<Span> found = spans(x -> x * (10 - x), Goal.AT_MOST, 16);

    assertThat(found).hasSize(2);
    assertThat(found.get(0).from()).isZero();
    assertThat(found.get(0).to()).isCloseTo(2, offset(1e-8));
    assertThat(found.get(1).from()).isCloseTo(8, offset(1e-8));
    assertThat(found.get(1).to()).isEqualTo(10);
  }

  @Test
  void ofWholeAnswersTheWholeRangeIsFound() {
    List<Span> found = spans(x -> Math.ceil(x), Goal.EQUAL, 3);

    assertThat(found).hasSize(1);
    assertThat(found.get(0).from()).isGreaterThan(2).isCloseTo(2, offset(1e-9));
    assertThat(found.get(0).to()).isEqualTo(3);
  }

  @Test
  void aNarrowStepBetweenTwoPointsIsFound() {
    DoubleUnaryOperator steps = x -> x < 5.031 ? 2 : x < 5.044 ? 3 : 4;

    assertThat(spans(steps, Goal.EQUAL, 3))
        .singleElement()
        .satisfies(
            span -> {
              assertThat(span.from()).isCloseTo(5.031, offset(1e-9));
              assertThat(span.to()).isCloseTo(5.044, offset(1e-9));
            });
  }

  @Test
  void whatIsJumpedOverIsNotFound() {
    assertThat(spans(x -> x < 5.03 ? 2 : 4, Goal.EQUAL, 3)).isEmpty();
  }

  @Test
  void whereNothingFollowsNothingIsFound() {
    assertThat(spans(x -> x < 3 ? Double.NaN : x, Goal.AT_MOST, 4))
        .singleElement()
        .satisfies(span -> assertThat(span.from()).isCloseTo(3, offset(1e-9)));
    assertThat(spans(x -> x > 3.02 && x < 3.08 ? x : Double.NaN, Goal.EQUAL, 3.05)).isEmpty();
    assertThat(spans(x -> x < 3.02 ? Double.NaN : x, Goal.EQUAL, 3.05)).hasSize(1);
  }

  @Test
  void ofWholeInputsOnlyWholeNumbersAreFound() {
    List<Span> found = spans(x -> 100 / x, Goal.AT_MOST, 7, true, 1, 3, 10, 40, 100);

    assertThat(found).containsExactly(new Span(15, 100));
  }

  @Property(tries = 200)
  void whatIsFoundHoldsAndWhatLiesOutsideDoesNot(
      @ForAll @DoubleRange(min = 0.1, max = 9.9) double first,
      @ForAll @DoubleRange(min = 0.1, max = 9.9) double second,
      @ForAll @DoubleRange(min = -50, max = 50) double wanted) {
    // a turn between two points that give the very same is not looked for
    Assume.that(Arrays.stream(TO_TEN).noneMatch(x -> x == first || x == second));
    DoubleUnaryOperator cubic = x -> (x - first) * (x - second) * (x - 5);
    NumberSearch search = new NumberSearch(cubic, Goal.AT_LEAST, wanted, false);
    List<Span> found = search.spans(search.withTurns(TO_TEN));

    for (double x = 0.003; x < 10; x += 0.0501) {
      double at = x;
      boolean in = found.stream().anyMatch(span -> at >= span.from() && at <= span.to());
      if (Math.abs(cubic.applyAsDouble(x) - wanted) > 1e-6) {
        assertThat(in).as("%s, %s, %s at %s", first, second, wanted, x).isEqualTo(search.holds(x));
      }
    }
  }
}
