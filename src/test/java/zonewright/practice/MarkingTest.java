package zonewright.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.units.UnitSystem;

/**
 * Answers worked out here by hand, right ones and wrong ones. 96.25 is gallons a minute over square
 * feet as inches an hour: Ohio State University Extension, Bulletin 912. The other equations are
 * those of any handbook of irrigation, from memory.
 */
class MarkingTest {
  private static final int RATE = 1;
  private static final int SPACING = 2;
  private static final int NEED = 3;
  private static final int GROSS = 5;
  private static final int RUN = 6;
  private static final int DEPLETION = 7;
  private static final int VELOCITY = 10;
  private static final int WORST = 12;

  private static Exercise exercise(int topic, UnitSystem system) {
    return Exercise.of(11, topic, Optional.of(Topic.all().get(topic - 1)), system);
  }

  /** The figures given, in their order and the units they are shown in; shares as shares. */
  private static double[] figures(Exercise exercise) {
    return exercise.given().values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Arguments wrong(
      int topic, String unit, Marking.Kind kind, String words, ToDoubleFunction<double[]> by) {
    return Arguments.of(topic, unit, kind, words, by);
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        wrong(RATE, "in/h", Marking.Kind.CONSTANT, "96.25", g -> g[0] / g[1]),
        wrong(RATE, "in/h", Marking.Kind.UPSIDE_DOWN, "upside down", g -> g[1] / g[0]),
        wrong(RATE, "in/h", Marking.Kind.ANSWER_UNIT, "mm/h", g -> 25.4 * 96.25 * g[0] / g[1]),
        wrong(RATE, "in/h", Marking.Kind.GIVEN_UNIT, "gph", g -> 96.25 * g[0] / 60 / g[1]),
        wrong(RATE, "in/h", Marking.Kind.DECIMAL_POINT, "point", g -> 962.5 * g[0] / g[1]),
        wrong(RATE, "in/h", Marking.Kind.ROUNDING, "Nearly", g -> 99 * g[0] / g[1]),
        wrong(
            SPACING,
            "in/h",
            Marking.Kind.OTHER_WAY,
            "multiplies by Row spacing",
            g -> 96.25 * g[0] / g[1] * g[2]),
        wrong(NEED, "in/day", Marking.Kind.SIGN, "added", g -> g[0] * g[1] + g[2]),
        wrong(NEED, "in/day", Marking.Kind.FORGOTTEN, "effective rain", g -> g[0] * g[1]),
        wrong(GROSS, "in/day", Marking.Kind.FORGOTTEN, "Irrigation efficiency", g -> g[0]),
        wrong(GROSS, "in/day", Marking.Kind.OTHER_WAY, "divide", g -> g[0] * g[1]),
        wrong(GROSS, "in/day", Marking.Kind.PERCENT, "percent", g -> g[0] / (g[1] * 100)),
        wrong(RUN, "min", Marking.Kind.WEEK, "times 7", g -> 60 * g[0] / g[1]),
        wrong(RUN, "min", Marking.Kind.ANSWER_UNIT, "in h", g -> 7 * g[0] / g[1]),
        wrong(DEPLETION, "in", Marking.Kind.STOPPED_EARLY, "Water held", g -> g[0] / 12 * g[1]),
        wrong(
            VELOCITY,
            "ft/s",
            Marking.Kind.RADIUS,
            "Half of Main inside diameter",
            g -> 0.4085 * g[0] / (g[1] / 2 * g[1] / 2)),
        wrong(WORST, "psi", Marking.Kind.SIGN, "added", g -> g[0] + g[1] - g[3]),
        wrong(RATE, "in/h", Marking.Kind.UNKNOWN, "cannot be told", g -> 3.7 * g[0] / g[1]));
  }

  @ParameterizedTest(name = "{2} {3}")
  @MethodSource("mistakes")
  void howAWrongAnswerCameAboutIsSaid(
      int topic, String unit, Marking.Kind kind, String words, ToDoubleFunction<double[]> by) {
    Exercise exercise = exercise(topic, UnitSystem.US);
    Marking marking = new Marking(exercise, by.applyAsDouble(figures(exercise)) + " " + unit);

    assertThat(marking.verdict()).isEqualTo(Marking.Verdict.WRONG);
    assertThat(marking.kind()).isEqualTo(kind);
    assertThat(marking.lines().get(0)).contains(words);
    assertThat(marking.lines().get(1)).startsWith("Look at this step: ");
  }

  @Test
  void aRightAnswerIsRightWhereverItWasRounded() {
    Exercise exercise = exercise(RATE, UnitSystem.US);
    double[] g = figures(exercise);
    double rate = 96.25 * g[0] / g[1];
    for (String answer : List.of("%.3f in/h", "%.4f inches per hour", "%.5f in/h")) {
      assertThat(new Marking(exercise, answer.formatted(rate).replace("inches per hour", "in/hr")))
          .extracting(Marking::verdict)
          .isEqualTo(Marking.Verdict.RIGHT);
    }
    assertThat(new Marking(exercise, (rate * 25.4) + " mm/h").kind()).isEqualTo(Marking.Kind.NONE);
    assertThat(new Marking(exercise, String.valueOf(rate)).lines().get(0)).contains("in/h");
    assertThat(new Marking(exercise, "fast").verdict()).isEqualTo(Marking.Verdict.UNREADABLE);
    assertThat(new Marking(exercise, "12 gpm").verdict()).isEqualTo(Marking.Verdict.UNREADABLE);
  }

  @Test
  void everyTopicHasAnExerciseInBothUnitsWhoseOwnAnswerIsRight() {
    assertThat(Topic.all()).hasSize(12);
    for (int topic = 1; topic <= Topic.all().size(); topic++) {
      for (UnitSystem system : UnitSystem.values()) {
        Exercise exercise = exercise(topic, system);
        assertThat(exercise.working()).as(exercise.topic().title()).isNotEmpty();
        assertThat(new Marking(exercise, exercise.answer()).verdict())
            .as(exercise.topic().title() + " " + exercise.answer())
            .isEqualTo(Marking.Verdict.RIGHT);
      }
    }
  }

  @Test
  void theSameSeedSetsTheSameExerciseAndAnotherSeedAnother() {
    Optional<Topic> any = Optional.empty();
    assertThat(Exercise.of(7, 3, any, UnitSystem.US).task())
        .isEqualTo(Exercise.of(7, 3, any, UnitSystem.US).task())
        .isNotEqualTo(Exercise.of(8, 3, any, UnitSystem.US).task())
        .isNotEqualTo(Exercise.of(7, 15, any, UnitSystem.US).task());
  }
}
