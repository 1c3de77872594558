package zonewright.design;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.formula.Rearranged;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Schema;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/**
 * A question asked the other way round: what follows from the column asked for is given. Where
 * equations can be solved for it they are, and the answer is worked out by them; else a number is
 * searched that gives what was given.
 */
public final class TurnedQuestion {
  private static final String SOLVED = "Solved from the equation of ";

  /** How exactly the answer must give back what was given. */
  private static final double EXACT = 1e-6;

  /** Into how many parts the range is cut, each so many times the one before, to search it. */
  private static final int PARTS = 24;

  /**
   * How many equations are solved in a row, and how many ways tried, before a search is shorter.
   */
  private static final int MOST_STEPS = 6;

  private static final int MOST_TRIES = 12;
  private static final int DIGITS = 4;

  /** By what share a number is moved to see whether others give the same. */
  private static final double NEARBY = 0.001;

  /** The range that is searched of what has no end, or begins with nothing. */
  private static final double LEAST = 1e-4;

  private static final double MOST = 1e6;

  private final Column asked;
  private final Column known;
  private final Map<Column, String> given;
  private final Map<Column, String> others;
  private final UnitSystem system;
  private final Schema schema;
  private final double wanted;
  private int tries;

  private TurnedQuestion(
      Column asked,
      Column known,
      Map<Column, String> given,
      double wanted,
      UnitSystem system,
      Schema schema) {
    this.schema = schema;
    this.asked = asked;
    this.known = known;
    this.wanted = wanted;
    this.system = system;
    this.given = given;
    this.others = new LinkedHashMap<>(given);
    others.remove(known);
  }

  /**
   * An answer.
   *
   * @param question the question that has it, with its steps: that of the column asked for, or
   *     where a number was searched that of the column that was given
   * @param found the number that was searched, with its unit; none where equations were solved
   * @param from the column that was given
   */
  public record Answer(Question question, Optional<String> found, Column from) {}

  /**
   * Returns the answer that follows the other way round; nothing where no value given follows from
   * the column asked for, or no number gives it.
   *
   * @param given values as a person writes them
   * @param schema the columns there are
   */
  public static Optional<Answer> answer(
      Column asked, Map<Column, String> given, UnitSystem system, Schema schema) {
    if (asked.content() != Column.Content.NUMBER || given.containsKey(asked)) {
      return Optional.empty();
    }
    for (Map.Entry<Column, String> each : given.entrySet()) {
      Column known = each.getKey();
      boolean calculated = known.formula().isPresent();
      if (calculated
          && QuantityText.read(each.getValue(), known.kind(), system)
              instanceof QuantityText.Read read) {
        TurnedQuestion turned =
            new TurnedQuestion(asked, known, given, read.value(), system, schema);
        if (turned.leads(known.reference(), new HashMap<>())) {
          Optional<Answer> answer = turned.solved(known, Map.of(), Map.of()).or(turned::searched);
          if (answer.isPresent()) {
            return answer;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Says whether the equation of a column in an answer was solved for it. */
  public static boolean isSolved(Column column) {
    return column.source().startsWith(SOLVED);
  }

  /** Says whether the column asked for counts in another; what is given stands for itself. */
  private boolean leads(Reference from, Map<Reference, Boolean> seen) {
    if (from.equals(asked.reference())) {
      return true;
    }
    if (!from.equals(known.reference()) && isGiven(from)) {
      return false;
    }
    Boolean before = seen.putIfAbsent(from, false);
    if (before != null) {
      return before;
    }
    boolean leads =
        schema.dependencies(schema.column(from)).stream()
            .flatMap(needs -> Stream.concat(needs.cells().stream(), needs.columns().stream()))
            .anyMatch(need -> leads(need, seen));
    seen.put(from, leads);
    return leads;
  }

  private boolean isGiven(Reference reference) {
    return others.keySet().stream().anyMatch(column -> column.reference().equals(reference));
  }

  /**
   * Solves one equation after the other, from what was given down to what is asked for, and tries
   * every way until one gives back what was given.
   */
  private Optional<Answer> solved(
      Column left, Map<Reference, Formula> equations, Map<Reference, String> said) {
    if (left.reference().equals(asked.reference())) {
      return workedOut(equations, said);
    }
    for (Reference unknown : ways(left)) {
      boolean again = equations.containsKey(unknown) || unknown.equals(known.reference());
      if (again || tries >= MOST_TRIES || equations.size() >= MOST_STEPS) {
        continue;
      }
      Formula there = new Formula.Cell(left.reference());
      for (Formula solution : Rearranged.of(left.formula().orElseThrow(), unknown, there)) {
        Map<Reference, Formula> further = new LinkedHashMap<>(equations);
        Map<Reference, String> told = new HashMap<>(said);
        further.put(unknown, solution);
        told.put(unknown, SOLVED + left.name() + ". " + left.source());
        Optional<Answer> answer = solved(schema.column(unknown), further, told);
        if (answer.isPresent()) {
          return answer;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Answer> workedOut(
      Map<Reference, Formula> equations, Map<Reference, String> said) {
    tries++;
    try {
      Schema turned = schema.turned(known.reference(), equations, said);
      Question question = new Question(asked, given, system, turned);
      return question.outcome() instanceof Outcome.Amount amount && gives(amount.value())
          ? Optional.of(new Answer(question, Optional.empty(), known))
          : Optional.empty();
    } catch (IllegalArgumentException circle) {
      // Solved for it, an equation may need what follows from it; then a number is searched.
      return Optional.empty();
    }
  }

  /** Returns the cells of an equation in which the column asked for counts. */
  private List<Reference> ways(Column left) {
    return schema.dependencies(left).stream()
        .flatMap(needs -> needs.cells().stream())
        .filter(cell -> leads(cell, new HashMap<>()))
        .toList();
  }

  private boolean gives(double value) {
    return Math.abs(comes(value) - wanted) <= EXACT * Math.abs(wanted);
  }

  private Question forward(double value) {
    Map<Column, String> figures = new LinkedHashMap<>(others);
    figures.put(asked, QuantityText.typed(value, asked.kind()));
    return new Question(known, figures, system, schema);
  }

  private double comes(double value) {
    Question forward = forward(value);
    return forward.problems().isEmpty() ? forward.outcome().number() : Double.NaN;
  }

  private Optional<Answer> searched() {
    Optional<Bounds> bounds = asked.bounds();
    double low = Math.max(LEAST, bounds.map(each -> each.low(asked.kind(), system)).orElse(LEAST));
    double high = Math.min(MOST, bounds.map(each -> each.high(asked.kind(), system)).orElse(MOST));
    return new NumberSearch(this::comes, NumberSearch.Goal.EQUAL, wanted, false)
        .first(NumberSearch.byFactors(low, high, PARTS))
        .map(span -> found(span.single() ? (span.from() + span.to()) / 2 : span.from()));
  }

  private Answer found(double value) {
    boolean percent = asked.kind().percent();
    String number = QuantityText.significant(percent ? value * 100 : value, DIGITS);
    String symbol = percent ? "%" : asked.kind().unit(system).symbol();
    String one = gives(value * (1 + NEARBY)) || gives(value * (1 - NEARBY)) ? ", one of many" : "";
    String found = (number + " " + symbol).strip() + one;
    return new Answer(forward(value), Optional.of(found), known);
  }
}
