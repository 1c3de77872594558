package zonewright.whatif;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;

/** What follows from what, over all steps between: inputs of an answer, answers of an input. */
public final class FollowsFrom {
  private static final int FEW = 3;

  private FollowsFrom() {}

  /** Returns the columns of numbers that follow from an input, in the order of the sheets. */
  public static List<Column> answers(Schema schema, Column input) {
    Set<Reference> reached = new HashSet<>(Set.of(input.reference()));
    for (Column column : schema.order()) {
      if (needs(schema, column).anyMatch(reached::contains)) {
        reached.add(column.reference());
      }
    }
    return schema.tables().stream()
        .flatMap(table -> table.columns().stream())
        .filter(column -> reached.contains(column.reference()) && !column.equals(input))
        .filter(column -> column.content() == Column.Content.NUMBER)
        .toList();
  }

  /**
   * Returns a few of the nearest inputs that are numbers, as ", such as Area, Slope"; or nothing.
   */
  static String fewInputs(Schema schema, Column answer) {
    List<String> names =
        inputs(schema, answer).stream()
            .filter(each -> each.takesEntries() && each.content() == Column.Content.NUMBER)
            .map(Column::name)
            .distinct()
            .limit(FEW)
            .toList();
    return names.isEmpty() ? "" : ", such as " + String.join(", ", names);
  }

  /** Returns all columns a column follows from, the nearest first. */
  private static List<Column> inputs(Schema schema, Column answer) {
    List<Column> found = new ArrayList<>();
    Set<Reference> seen = new HashSet<>(Set.of(answer.reference()));
    Deque<Column> open = new ArrayDeque<>(List.of(answer));
    while (!open.isEmpty()) {
      needs(schema, open.pop())
          .filter(seen::add)
          .map(schema::column)
          .forEach(
              each -> {
                found.add(each);
                open.add(each);
              });
    }
    return found;
  }

  private static Stream<Reference> needs(Schema schema, Column column) {
    return schema.dependencies(column).stream()
        .flatMap(needs -> Stream.concat(needs.cells().stream(), needs.columns().stream()));
  }
}
