package zonewright.sheet;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Reference;

/**
 * Something worth telling a designer when a condition holds in a row.
 *
 * @param id identifier; never changes
 * @param severity how much it matters
 * @param table the table whose rows are looked at
 * @param when the condition
 * @param cell the column to go to
 * @param sentence what is wrong, with {@code {0}}, {@code {1}} … for the values of {@code shown}
 * @param cure what to do about it, in the same manner
 * @param shown the columns whose values the sentences name
 */
public record Rule(
    String id,
    Severity severity,
    String table,
    Condition when,
    Reference cell,
    String sentence,
    String cure,
    List<Reference> shown) {
  public Rule {
    shown = List.copyOf(shown);
  }
}
