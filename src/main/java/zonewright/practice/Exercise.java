package zonewright.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import zonewright.design.Question;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.sheet.Working;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** A topic with figures: invented, the same for the same seed and number. */
public final class Exercise {
  private static final int DIGITS = 2;

  /** Keeps the figures of neighbouring numbers apart. */
  private static final long APART = 7919;

  private final Topic topic;
  private final UnitSystem system;
  private final Map<Column, Double> given = new LinkedHashMap<>();
  private final Question question;

  private Exercise(Topic topic, long seed, UnitSystem system) {
    this.topic = topic;
    this.system = system;
    Random random = new Random(seed);
    for (Topic.Drawn each : topic.drawn()) {
      double drawn = each.least() + random.nextDouble() * (each.greatest() - each.least());
      given.put(each.column(), figure(each, drawn));
    }
    question = with(given);
  }

  /**
   * Returns an exercise of a set.
   *
   * @param seed a set has one; any whole number
   * @param number its place in the set, counted from 1
   * @param topic what it is about; one after the other where none is named
   */
  public static Exercise of(long seed, int number, Optional<Topic> topic, UnitSystem system) {
    List<Topic> all = Topic.all();
    return new Exercise(
        topic.orElseGet(() -> all.get((number - 1) % all.size())), seed * APART + number, system);
  }

  /** Returns a figure of few digits in the units of the exercise. */
  private double figure(Topic.Drawn each, double drawn) {
    double kept = read(each.column(), few(drawn) + " " + each.unit(), UnitSystem.US);
    double here =
        each.column().kind().unit(UnitSystem.US).convert(kept, each.column().kind().unit(system));
    return each.column().kind().percent() ? kept : Double.parseDouble(few(here));
  }

  private static String few(double value) {
    return QuantityText.significant(value, DIGITS).replace(",", "");
  }

  private static double read(Column column, String text, UnitSystem system) {
    return ((QuantityText.Read) QuantityText.read(text.strip(), column.kind(), system)).value();
  }

  private Question with(Map<Column, Double> figures) {
    Map<Column, String> known = new LinkedHashMap<>(topic.fixed());
    figures.forEach((column, value) -> known.put(column, written(column, value)));
    return new Question(topic.asked(), known, system);
  }

  private static String written(Column column, double value) {
    return QuantityText.typed(value, column.kind());
  }

  /** Returns what it is about. */
  public Topic topic() {
    return topic;
  }

  /** Returns the units it is set in. */
  public UnitSystem system() {
    return system;
  }

  /** Returns the figures given, in the units numbers are kept in. */
  Map<Column, Double> given() {
    return given;
  }

  /** Returns what comes of other figures; nothing where they cannot be used. */
  OptionalDouble workedOut(Map<Column, Double> figures) {
    Question other = with(figures);
    return other.problems().isEmpty() && other.outcome() instanceof Outcome.Amount amount
        ? OptionalDouble.of(amount.value())
        : OptionalDouble.empty();
  }

  /** Returns the right answer, in the unit numbers are kept in. */
  public double right() {
    return ((Outcome.Amount) question.outcome()).value();
  }

  /** Returns the exercise in words: what is given, a line each, and what is asked. */
  public List<String> task() {
    List<String> lines = new ArrayList<>();
    topic.fixed().forEach((column, word) -> lines.add(column.name() + ": " + word));
    given.forEach((column, value) -> lines.add(column.name() + " = " + shown(column, value)));
    String in = unit().isEmpty() ? "" : " (" + unit() + ")";
    lines.add("Find %s%s.".formatted(topic.asked().name(), in));
    return lines;
  }

  /** Returns the unit the answer is asked in; empty where it has none. */
  public String unit() {
    return topic.asked().kind().unit(system).symbol();
  }

  String shown(Column column, double value) {
    String number = QuantityText.typed(value, column.kind());
    String symbol = column.kind().unit(system).symbol();
    return symbol.isEmpty() || number.endsWith(symbol) ? number : number + " " + symbol;
  }

  /** Returns the right answer with its unit, as the program shows it. */
  public String answer() {
    return question.shown();
  }

  /** Returns the working, step by step, a line each. */
  public List<String> working() {
    List<String> lines = new ArrayList<>();
    for (Working step : steps()) {
      lines.add(step.column().name());
      step.equations().forEach(equation -> lines.add("   = " + equation));
      step.notes().forEach(note -> lines.add("   " + note));
    }
    return lines;
  }

  /** Returns the steps that are calculated, the last one the answer. */
  List<Working> steps() {
    return question.calculated();
  }
}
