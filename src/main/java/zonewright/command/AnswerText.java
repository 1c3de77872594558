package zonewright.command;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import zonewright.design.AnswerWords;
import zonewright.design.Question;
import zonewright.design.TurnedQuestion;
import zonewright.formula.Outcome;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Working;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** An answer in words: the result, what it was made from, and each step. */
final class AnswerText {
  private static final int WORDS_SHOWN = 6;

  /** How many things to give are named at once. */
  private static final int FEW = 4;

  private final Question question;
  private final AnswerWords words;
  private final Column asked;
  private final UnitSystem system;
  private final ColumnFinder finder;

  AnswerText(ColumnFinder finder, Question question, AnswerWords words, UnitSystem system) {
    this.finder = finder;
    this.question = question;
    this.words = words;
    this.asked = words.asked();
    this.system = system;
  }

  /** Returns what was assumed, then the answer with its working, a line each. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    List<Working> assumed = question.assumed();
    if (!assumed.isEmpty()) {
      lines.add("Assumed, unless given");
      listed(lines, assumed);
      lines.add("");
    }
    lines.add(asked.name() + " = " + words.result());
    lines.addAll(words.further());
    if (question.outcome() instanceof Outcome.NotApplicable not) {
      lines.add(not.because());
    }
    List<Working> start = question.start();
    if (!start.isEmpty()) {
      lines.add("");
      lines.add("From");
      listed(lines, start);
    }
    List<Working> steps = question.calculated();
    Set<String> told = new HashSet<>();
    for (int i = 0; i < steps.size(); i++) {
      lines.add("");
      step(lines, i + 1, steps.get(i), told);
    }
    return lines;
  }

  /** Returns the words of the answer. */
  AnswerWords words() {
    return words;
  }

  /** Returns what each row comes to, as month by month, a line each. */
  List<String> byRow() {
    List<String> lines = new ArrayList<>();
    lines.add(asked.name() + ", each row");
    lines.addAll(words.rows(asked));
    lines.add("For the working of one of them write for example" + examples(question.missing()));
    return lines;
  }

  /** Returns what is wrong with a value, as one sentence. */
  static String sentence(Outcome.Refused problem) {
    String text = problem.where().column().name() + ": " + problem.because();
    return text.endsWith("?") ? text : text + ".";
  }

  private static String shown(Outcome outcome, String text) {
    return outcome instanceof Outcome.Refused refused ? "none: " + refused.because() : text;
  }

  private void listed(List<String> lines, List<Working> cells) {
    int width = cells.stream().mapToInt(each -> each.column().name().length()).max().orElse(0);
    for (Working each : cells) {
      String name = each.column().name();
      lines.add("  " + name + " ".repeat(width + 2 - name.length()) + question.shownAsGiven(each));
    }
  }

  /**
   * Adds a step.
   *
   * @param told the sources said already, which are not said again
   */
  private void step(List<String> lines, int number, Working step, Set<String> told) {
    boolean solved = TurnedQuestion.isSolved(step.column());
    String origin = solved ? "solved for it" : step.origin();
    String by = origin.equals("calculated") ? "" : " (" + origin + ")";
    lines.add(number + ". " + step.column().name() + by);
    List<String> equations = step.equations();
    equations.subList(0, equations.size() - 1).forEach(equation -> lines.add("   = " + equation));
    lines.add("   = " + shown(step.outcome(), step.shown()));
    List<String> rows = words.rows(step.column());
    if (!rows.isEmpty()) {
      lines.add("   for " + step.cell().row() + "; likewise");
      rows.forEach(row -> lines.add("   " + row));
    }
    step.notes().forEach(note -> lines.add("   " + note));
    step.rests().forEach(rest -> lines.add("   Rests on " + rest.told()));
    step.sources().stream().filter(told::add).forEach(source -> lines.add("   Source: " + source));
  }

  /** Returns what is still needed, a few things at most, with something to write for each. */
  String missing() {
    List<Column> needs = question.missing();
    List<Column> nearest = question.nearestMissing();
    if (needs.size() <= FEW || nearest.isEmpty() || nearest.size() > FEW) {
      String verb = needs.equals(List.of(asked)) ? " is typed, not calculated: give " : " needs ";
      String text = asked.name() + verb + names(needs) + ". Write for example:" + examples(needs);
      List<Column> instead = question.insteadOfMissing();
      return instead.isEmpty()
          ? text
          : text + line("Or give what they lead to, if you know it: " + names(instead) + ".");
    }
    return asked.name()
        + " follows from "
        + names(nearest)
        + ". Write for example:"
        + examples(nearest)
        + line("Or work it out from the beginning: " + names(needs) + ".");
  }

  private static String line(String text) {
    return System.lineSeparator() + text;
  }

  private String examples(List<Column> columns) {
    List<Column> shown = columns.subList(0, Math.min(FEW, columns.size()));
    List<String> examples =
        shown.stream()
            .map(column -> "  \"" + finder.shortestName(column) + "=" + example(column) + "\"")
            .toList();
    int width = examples.stream().mapToInt(String::length).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < examples.size(); i++) {
      String gap = " ".repeat(width - examples.get(i).length() + 2);
      text.append(line((examples.get(i) + gap + hint(shown.get(i))).stripTrailing()));
    }
    return text.toString();
  }

  private String names(List<Column> columns) {
    String few = String.join(", ", columns.stream().limit(FEW).map(finder::shortestName).toList());
    int more = columns.size() - FEW;
    return more > 0 ? few + " and %s more".formatted(more) : few;
  }

  private String hint(Column column) {
    List<String> words = question.choices(column);
    if (!words.isEmpty()) {
      List<String> first = words.subList(0, Math.min(WORDS_SHOWN, words.size()));
      String more = words.size() > first.size() ? " and others: see the command columns" : "";
      return "one of " + String.join(", ", first) + more;
    }
    return column.bounds().map(bounds -> bounds.inWords(column.kind(), system)).orElse("");
  }

  private String example(Column column) {
    if (column.content() != Column.Content.NUMBER) {
      return question.choices(column).stream().findFirst().orElse("a name");
    }
    String[] both = column.kind().example().split(" or ", 2);
    String example = both[system == UnitSystem.SI ? both.length - 1 : 0];
    return column.bounds().filter(bounds -> !fits(example, column, bounds)).isPresent()
        ? end(column, column.bounds().orElseThrow())
        : example;
  }

  private boolean fits(String example, Column column, Bounds bounds) {
    return QuantityText.read(example, column.kind(), system) instanceof QuantityText.Read read
        && bounds.problem(read.value(), column.kind(), system).isEmpty();
  }

  private String end(Column column, Bounds bounds) {
    String symbol = column.kind().unit(system).symbol();
    double high = bounds.high(column.kind(), system);
    String number = QuantityText.typed(high, column.kind());
    return symbol.isEmpty() ? number : number + " " + symbol;
  }
}
