package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.ReferenceTable;
import zonewright.formula.Rewriter;

/**
 * Tables of the trade with rows of a person's own behind those of the program. Whatever looks
 * things up in them does so in the longer ones, and what is said of some of their words is said of
 * the words of one's own that take after them.
 */
final class LongerTables {
  static final LongerTables NONE = new LongerTables(Map.of(), Map.of());

  private final Map<ReferenceTable, ReferenceTable> tables;
  private final Map<String, Map<String, List<String>>> alike;

  /**
   * Takes tables.
   *
   * @param tables the longer table in place of each
   * @param takesAfter for each of those replaced, the words of one's own with the word of the
   *     program's that each takes after
   */
  LongerTables(
      Map<ReferenceTable, ReferenceTable> tables,
      Map<ReferenceTable, Map<String, String>> takesAfter) {
    this.tables = Map.copyOf(tables);
    this.alike = new HashMap<>();
    takesAfter.forEach(
        (table, words) -> {
          Map<String, List<String>> by = new HashMap<>();
          words.forEach((own, like) -> by.computeIfAbsent(like, any -> new ArrayList<>()).add(own));
          alike.put(table.name(), by);
        });
  }

  ReferenceTable inPlaceOf(ReferenceTable table) {
    return tables.getOrDefault(table, table);
  }

  private ReferenceTable.Numbers inPlaceOf(ReferenceTable.Numbers column) {
    ReferenceTable longer = tables.get(column.table());
    return longer == null ? column : longer.numbers(column.sourceHeading(), column.kind());
  }

  Column in(Schema declared, Column column) {
    return column.with(
        list ->
            list instanceof WordList.Published published
                ? new WordList.Published(inPlaceOf(published.table()))
                : list,
        formula -> in(declared, formula));
  }

  private Formula in(Schema declared, Formula formula) {
    return Rewriter.lookedUp(formula, this::inPlaceOf, part -> words(declared, part));
  }

  Condition in(Schema declared, Condition condition) {
    return tables.isEmpty()
        ? condition
        : Rewriter.lookedUp(condition, this::inPlaceOf, part -> words(declared, part));
  }

  /** Adds to the words a condition names those of one's own; null where there is nothing to add. */
  private Condition words(Schema declared, Condition part) {
    if (!(part instanceof Condition.WordIs is)
        || !(declared.column(is.word()).words().orElse(null) instanceof WordList.Published list)) {
      return null;
    }
    Map<String, List<String>> own = alike.getOrDefault(list.table().name(), Map.of());
    List<String> words = new ArrayList<>(is.words());
    is.words().forEach(word -> words.addAll(own.getOrDefault(word, List.of())));
    return words.size() == is.words().size() ? null : new Condition.WordIs(is.word(), words);
  }
}
