package zonewright.command;

import java.util.ArrayList;
import java.util.List;
import zonewright.design.Question;
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

  private final Question question;
  private final Column asked;
  private final UnitSystem system;
  private final ColumnFinder finder;

  AnswerText(ColumnFinder finder, Question question, Column asked, UnitSystem system) {
    this.finder = finder;
    this.question = question;
    this.asked = asked;
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
    lines.add(asked.name() + " = " + shown(question.outcome(), question.shown()));
    if (question.outcome() instanceof Outcome.NotApplicable not) {
      lines.add(not.because());
    }
    List<Working> start = new ArrayList<>();
    List<Working> steps = new ArrayList<>();
    question.steps().forEach(each -> (each.symbols().isEmpty() ? start : steps).add(each));
    start.removeAll(assumed);
    known(lines, start);
    for (int i = 0; i < steps.size(); i++) {
      lines.add("");
      step(lines, i + 1, steps.get(i));
    }
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

  private void known(List<String> lines, List<Working> start) {
    List<Working> held =
        start.stream().filter(each -> !(each.outcome() instanceof Outcome.Blank)).toList();
    if (held.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("From");
    listed(lines, held);
  }

  private static void listed(List<String> lines, List<Working> cells) {
    int width = cells.stream().mapToInt(each -> each.column().name().length()).max().orElse(0);
    for (Working each : cells) {
      String name = each.column().name();
      lines.add("  " + name + " ".repeat(width + 2 - name.length()) + each.shown());
    }
  }

  private static void step(List<String> lines, int number, Working step) {
    String by = step.origin().equals("calculated") ? "" : " (" + step.origin() + ")";
    lines.add(number + ". " + step.column().name() + by);
    List<String> equations = step.equations();
    equations.subList(0, equations.size() - 1).forEach(equation -> lines.add("   = " + equation));
    lines.add("   = " + shown(step.outcome(), step.shown()));
    step.notes().forEach(note -> lines.add("   " + note));
    step.rests().forEach(rest -> lines.add("   Rests on " + rest.told()));
    if (!step.column().source().isEmpty()) {
      lines.add("   Source: " + step.column().source());
    }
  }

  /** Returns what is still needed, with units and something to write for each. */
  String missing() {
    List<Column> needs = question.missing();
    StringBuilder text = new StringBuilder();
    text.append(asked.name())
        .append(needs.equals(List.of(asked)) ? " is typed, not calculated: give " : " needs ")
        .append(names(needs))
        .append(". Write for example:");
    List<String> examples =
        needs.stream()
            .map(column -> "  \"" + finder.shortestName(column) + "=" + example(column) + "\"")
            .toList();
    int width = examples.stream().mapToInt(String::length).max().orElse(0);
    for (int i = 0; i < examples.size(); i++) {
      String hint = hint(needs.get(i));
      String gap = " ".repeat(width - examples.get(i).length() + 2);
      text.append(System.lineSeparator()).append((examples.get(i) + gap + hint).stripTrailing());
    }
    List<Column> instead = question.insteadOfMissing();
    if (!instead.isEmpty()) {
      text.append(System.lineSeparator())
          .append("Or give what they lead to, if you know it: ")
          .append(names(instead))
          .append('.');
    }
    return text.toString();
  }

  private String names(List<Column> columns) {
    return String.join(", ", columns.stream().map(finder::shortestName).toList());
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
