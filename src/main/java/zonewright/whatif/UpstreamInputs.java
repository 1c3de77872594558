package zonewright.whatif;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;

/** The inputs a column follows from, the nearest first. */
final class UpstreamInputs {
  private static final int FEW = 3;

  private UpstreamInputs() {}

  /** Returns a few of the nearest inputs that are numbers, as ", such as Area, Zone flow"; or nothing. */
  static String named(Schema schema, Column column) {
    List<String> names =
        of(schema, column).stream()
            .filter(each -> each.takesEntries() && each.content() == Column.Content.NUMBER)
            .map(Column::name)
            .distinct()
            .limit(FEW)
            .toList();
    return names.isEmpty() ? "" : ", such as " + String.join(", ", names);
  }

  /** Returns all columns a column follows from, the nearest first. */
  static List<Column> of(Schema schema, Column column) {
    List<Column> found = new ArrayList<>();
    Set<Reference> seen = new HashSet<>(Set.of(column.reference()));
    Deque<Column> open = new ArrayDeque<>(List.of(column));
    while (!open.isEmpty()) {
      schema
          .dependencies(open.pop())
          .ifPresent(
              needs -> {
                List<Reference> all = new ArrayList<>(needs.cells());
                all.addAll(needs.columns());
                for (Reference each : all) {
                  if (seen.add(each)) {
                    found.add(schema.column(each));
                    open.add(schema.column(each));
                  }
                }
              });
    }
    return found;
  }
}
