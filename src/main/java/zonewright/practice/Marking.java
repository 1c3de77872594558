package zonewright.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.sheet.Working;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * Marks an answer. What is wrong is found by working the exercise out with a mistake made on
 * purpose, one after the other, until one gives the answer that was written.
 */
public final class Marking {
  /** By what share an answer may differ and be right: figures are rounded to three digits. */
  public static final double TOLERANCE = 0.01;

  /** By what share an answer rounded too early may differ. */
  private static final double NEARLY = 0.05;

  private static final double STEP = 0.01;
  private static final double DAYS_A_WEEK = 7;

  /** What an answer is worth. */
  public enum Verdict {
    RIGHT,
    WRONG,
    UNREADABLE
  }

  /** Which mistake gives the answer that was written. */
  public enum Kind {
    NONE,
    NO_UNIT,
    STOPPED_EARLY,
    FORGOTTEN,
    OTHER_WAY,
    PERCENT,
    ANSWER_UNIT,
    CONSTANT,
    UPSIDE_DOWN,
    SIGN,
    RADIUS,
    GIVEN_UNIT,
    WEEK,
    DECIMAL_POINT,
    ROUNDING,
    UNKNOWN
  }

  /** What one mistake would give. */
  private record Mistake(Kind kind, double value, String sentence, Optional<Column> about) {}

  private final Exercise exercise;
  private final double right;
  private final Column asked;
  private final List<Mistake> mistakes = new ArrayList<>();

  private Verdict verdict = Verdict.WRONG;
  private Kind kind = Kind.UNKNOWN;
  private String sentence;
  private Optional<Column> about = Optional.empty();

  /** Marks an answer as a person writes it, with its unit. */
  public Marking(Exercise exercise, String answer) {
    this.exercise = exercise;
    this.right = exercise.right();
    this.asked = exercise.topic().asked();
    QuantityText.Reading reading = QuantityText.read(answer, asked.kind(), exercise.system());
    if (reading instanceof QuantityText.Read read) {
      mark(read.value(), answer);
    } else {
      verdict = Verdict.UNREADABLE;
      sentence = ((QuantityText.Unreadable) reading).sentence() + ".";
    }
  }

  private void mark(double value, String answer) {
    boolean bare = answer.strip().matches("[-\\d.,\\s]+");
    boolean without = bare && !unit().symbol().isEmpty();
    if (near(value, right, TOLERANCE)) {
      verdict = Verdict.RIGHT;
      kind = without ? Kind.NO_UNIT : Kind.NONE;
      sentence = without ? "Right; write the unit too: " + unit().symbol() + "." : "Right.";
      return;
    }
    collect(value);
    Optional<Mistake> made =
        mistakes.stream()
            .filter(each -> !near(each.value(), right, TOLERANCE))
            .filter(each -> near(value, each.value(), TOLERANCE))
            .findFirst();
    if (made.isPresent()) {
      kind = made.get().kind();
      about = made.get().about();
      sentence = "Not right. " + made.get().sentence();
    } else if (near(value, right, NEARLY)) {
      kind = Kind.ROUNDING;
      sentence = "Nearly. Figures were rounded on the way, or the answer not as the step says.";
    } else {
      sentence = "Not right, and it cannot be told how it came about; follow the steps.";
    }
  }

  private static boolean near(double one, double other, double share) {
    return Math.abs(one - other) <= share * Math.abs(other);
  }

  private Unit unit() {
    return asked.kind().unit(exercise.system());
  }

  private void collect(double written) {
    stoppedEarly();
    Map<Column, Double> powers = powers();
    if (powers.isEmpty()) {
      sums();
    } else {
      products(powers);
    }
    if (asked.kind().unit(exercise.system()).dimension().equals(Units.MINUTE.dimension())) {
      made(Kind.WEEK, right / DAYS_A_WEEK, "It is that of a day, not of a week: times 7.");
      made(Kind.WEEK, right * DAYS_A_WEEK, "A week was counted twice: no more times 7.");
    }
    otherUnits(written);
    for (double by : new double[] {10, 0.1, 100, 0.01, 1000, 0.001}) {
      made(Kind.DECIMAL_POINT, right * by, "The figures are right, the decimal point is not.");
    }
  }

  private void made(Kind which, double value, String words) {
    mistakes.add(new Mistake(which, value, words, Optional.empty()));
  }

  private void made(Kind which, double value, String words, Column column) {
    mistakes.add(new Mistake(which, value, words.formatted(column.name()), Optional.of(column)));
  }

  private void stoppedEarly() {
    List<Working> steps = exercise.steps();
    for (Working step : steps.subList(0, steps.size() - 1)) {
      if (step.outcome() instanceof Outcome.Amount amount
          && step.column().kind().dimension().equals(asked.kind().dimension())) {
        made(
            Kind.STOPPED_EARLY,
            amount.value(),
            "That is %s, a step on the way; go on from there.",
            step.column());
      }
    }
  }

  private OptionalDouble with(Column column, double value) {
    Map<Column, Double> figures = new HashMap<>(exercise.given());
    figures.put(column, value);
    return exercise.workedOut(figures);
  }

  /**
   * Returns the power with which each figure counts, where the answer is a product of powers times
   * a constant; nothing where it is not.
   */
  private Map<Column, Double> powers() {
    Map<Column, Double> powers = new HashMap<>();
    for (Map.Entry<Column, Double> each : exercise.given().entrySet()) {
      OptionalDouble more = with(each.getKey(), each.getValue() * (1 + STEP));
      OptionalDouble less = with(each.getKey(), each.getValue() * (1 - STEP));
      if (more.isEmpty() || less.isEmpty()) {
        return Map.of();
      }
      double up = Math.log(more.getAsDouble() / right) / Math.log(1 + STEP);
      double down = Math.log(less.getAsDouble() / right) / Math.log(1 - STEP);
      if (!(Math.abs(up - down) < 1e-6) || Math.abs(up) < 1e-6) {
        return Map.of();
      }
      powers.put(each.getKey(), up);
    }
    return powers;
  }

  private void products(Map<Column, Double> powers) {
    double plain = 1;
    for (Map.Entry<Column, Double> each : powers.entrySet()) {
      plain *= Math.pow(exercise.given().get(each.getKey()), each.getValue());
    }
    double constant = right / plain;
    powers.forEach(
        (column, power) -> {
          double figure = exercise.given().get(column);
          double part = Math.pow(figure, power);
          if (column.kind().percent() || column.kind().unit(exercise.system()).symbol().isEmpty()) {
            made(Kind.FORGOTTEN, right / part, "It comes out so where %s is left out.", column);
          }
          String other =
              power < 0
                  ? "It comes out so where one multiplies by %s; divide."
                  : "It comes out so where one divides by %s; multiply.";
          made(Kind.OTHER_WAY, right / part / part, other, column);
          if (column.kind().percent()) {
            made(
                Kind.PERCENT,
                right * Math.pow(100, power),
                "%s was taken as a number of percent; 65 %% is 0.65.",
                column);
          }
          if (column.name().contains("diameter")) {
            made(Kind.RADIUS, right * Math.pow(2, power), "%s was taken twice.", column);
            made(Kind.RADIUS, right / Math.pow(2, power), "Half of %s was taken.", column);
          }
        });
    if (!near(constant, 1, TOLERANCE)) {
      String number = QuantityText.significant(constant, 4);
      made(Kind.CONSTANT, plain, "The factor of the units is missing: %s.".formatted(number));
      made(
          Kind.CONSTANT,
          plain / constant,
          "The factor of the units, %s, was divided by; multiply.".formatted(number));
    }
    String upside = "The quotient stands upside down.";
    made(Kind.UPSIDE_DOWN, constant / plain, upside);
    made(Kind.UPSIDE_DOWN, 1 / plain, upside + " The factor of the units is missing as well.");
    made(Kind.UPSIDE_DOWN, 1 / right, upside);
  }

  /** Where figures are added, one may be left out, or go the other way. */
  private void sums() {
    exercise
        .given()
        .forEach(
            (column, figure) -> {
              OptionalDouble more = with(column, figure * (1 + STEP));
              OptionalDouble less = with(column, figure * (1 - STEP));
              if (more.isEmpty() || less.isEmpty()) {
                return;
              }
              double part = (more.getAsDouble() - less.getAsDouble()) / (2 * STEP);
              boolean straight =
                  Math.abs(more.getAsDouble() + less.getAsDouble() - 2 * right)
                      < 1e-9 * Math.abs(right);
              if (straight && part != 0) {
                made(Kind.FORGOTTEN, right - part, "It comes out so where %s is left out.", column);
                String words =
                    part < 0
                        ? "%s was added; it is to be taken off."
                        : "%s was taken off; it is to be added.";
                made(Kind.SIGN, right - 2 * part, words, column);
              }
              with(column, 1)
                  .ifPresent(
                      value ->
                          made(
                              Kind.FORGOTTEN,
                              value,
                              "It comes out so where %s is left out.",
                              column));
            });
  }

  private void otherUnits(double written) {
    for (Unit other : Units.all()) {
      if (other.dimension().equals(asked.kind().dimension()) && !other.symbol().isEmpty()) {
        double meant = other.convert(written, unit());
        if (near(meant, right, TOLERANCE)) {
          made(
              Kind.ANSWER_UNIT,
              written,
              "The number is right in %s, not in %s.".formatted(other.symbol(), unit().symbol()));
        }
      }
      exercise.given().forEach((column, figure) -> otherUnit(column, figure, other));
    }
  }

  private void otherUnit(Column column, double figure, Unit other) {
    Unit own = column.kind().unit(exercise.system());
    if (other.dimension().equals(own.dimension()) && !own.symbol().isEmpty()) {
      with(column, other.convert(figure, own))
          .ifPresent(
              value ->
                  made(
                      Kind.GIVEN_UNIT,
                      value,
                      "%s was taken as if it were in " + other.symbol().replace("%", "%%") + ".",
                      column));
    }
  }

  /** Returns what the answer is worth. */
  public Verdict verdict() {
    return verdict;
  }

  /** Returns the mistake that was found. */
  public Kind kind() {
    return kind;
  }

  /** Returns the verdict in words, and where it went wrong: the step with its numbers. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(sentence));
    if (verdict == Verdict.WRONG) {
      List<Working> steps = exercise.steps();
      Working step =
          steps.stream()
              .filter(each -> about.filter(column -> uses(each, column)).isPresent())
              .findFirst()
              .orElse(steps.get(steps.size() - 1));
      lines.add("Look at this step: " + step.column().name());
      step.equations().forEach(equation -> lines.add("   = " + equation));
    }
    return List.copyOf(lines);
  }

  private static boolean uses(Working step, Column column) {
    return step.inputs().stream()
        .anyMatch(in -> in.used() && in.column().reference().equals(column.reference()));
  }
}
