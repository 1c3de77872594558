package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;

/**
 * What an answer comes to as it was asked for: in the unit named, by week and month where it is a
 * depth a day, and row by row where several values were given.
 */
public final class AnswerWords {
  private static final int DECIMALS = 2;
  private static final int DAYS_A_WEEK = 7;
  private static final int DAYS_A_MONTH = 30;

  private final Question question;
  private final Column asked;
  private final Unit own;
  private final Optional<Unit> unit;

  /**
   * Puts an answer into words.
   *
   * @param unit the unit it was asked in, one its column takes; none for that of the system
   */
  public AnswerWords(Question question, Column asked, Optional<Unit> unit, UnitSystem system) {
    this.question = question;
    this.asked = asked;
    this.own = asked.kind().unit(system);
    this.unit = unit.filter(each -> !each.equals(own));
  }

  /** Returns the column that was asked for. */
  public Column asked() {
    return asked;
  }

  /** Returns the answer with its unit, or why there is none. */
  public String result() {
    if (question.outcome() instanceof Outcome.Refused refused) {
      return "none: " + refused.because();
    }
    return question.outcome() instanceof Outcome.Amount amount && unit.isPresent()
        ? "%s (%s)".formatted(in(unit.get(), amount.value()), question.shown())
        : question.shown();
  }

  private String in(Unit other, double value) {
    return (QuantityText.readable(own.convert(value, other), DECIMALS) + " " + other.symbol())
        .strip();
  }

  /** Returns what else the answer says, a line each. */
  public List<String> further() {
    List<String> lines = new ArrayList<>();
    if (question.outcome() instanceof Outcome.Amount amount
        && asked.kind() == QuantityKind.DAILY_DEPTH) {
      String depth = own.symbol().replaceFirst("/.*", "");
      double days = question.daysOfMonth().orElse(DAYS_A_MONTH);
      lines.add(
          "In a week %s %s, in the %s days of a month %s %s"
              .formatted(
                  QuantityText.readable(amount.value() * DAYS_A_WEEK, DECIMALS),
                  depth,
                  QuantityText.exact(days),
                  QuantityText.readable(amount.value() * days, DECIMALS),
                  depth));
    }
    lines.addAll(rows(asked));
    return lines;
  }

  /** Returns what each row of a column comes to, a line each; nothing where they are alike. */
  public List<String> rows(Column column) {
    Map<String, String> each = question.each(column);
    int width = each.keySet().stream().mapToInt(String::length).max().orElse(0);
    List<String> lines = new ArrayList<>();
    each.forEach(
        (row, shown) -> lines.add("  " + row + " ".repeat(width + 2 - row.length()) + shown));
    return lines;
  }
}
