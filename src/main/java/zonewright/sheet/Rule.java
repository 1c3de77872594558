package zonewright.sheet;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Cells;
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
 * @param remedy a cure that can be carried out by itself, if there is one; its name may hold values
 *     in the same manner
 */
public record Rule(
    String id,
    Severity severity,
    String table,
    Condition when,
    Reference cell,
    String sentence,
    String cure,
    List<Reference> shown,
    Optional<Remedy> remedy) {
  public Rule {
    shown = List.copyOf(shown);
  }

  /** Makes a rule whose cure is a person's work. */
  public Rule(
      String id,
      Severity severity,
      String table,
      Condition when,
      Cells cell,
      String sentence,
      String cure,
      List<? extends Cells> shown) {
    this(
        id,
        severity,
        table,
        when,
        cell.reference(),
        sentence,
        cure,
        shown.stream().map(Cells::reference).toList(),
        Optional.empty());
  }

  /** Returns the rule with a cure that can be carried out by itself. */
  public Rule curedBy(String name, Remedy.Maker maker) {
    Remedy found = new Remedy(name, maker);
    return new Rule(id, severity, table, when, cell, sentence, cure, shown, Optional.of(found));
  }
}
