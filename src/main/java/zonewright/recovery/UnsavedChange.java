package zonewright.recovery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Remark;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;

/** What differs between two moments of a book, as lines of text. */
final class UnsavedChange {
  private UnsavedChange() {}

  /**
   * Returns the lines that lead from one moment to a later one: the unit system, the order of rows,
   * and cells, each where it differs.
   *
   * @param before the earlier moment; a snapshot without tables leads from nothing
   */
  static List<String> lines(Schema schema, BookSnapshot before, BookSnapshot after) {
    List<String> lines = new ArrayList<>();
    boolean fresh = before.tables().isEmpty();
    if (fresh || before.system() != after.system()) {
      lines.add("units\t" + after.system().name());
    }
    for (TableDefinition table : schema.tables()) {
      rows(table, before.rows(table.id()), after.rows(table.id()), lines);
    }
    return lines;
  }

  private static void rows(
      TableDefinition table, List<Row> before, List<Row> after, List<String> lines) {
    boolean sameOrder = before.size() == after.size();
    for (int i = 0; sameOrder && i < after.size(); i++) {
      sameOrder = before.get(i).id() == after.get(i).id();
    }
    Map<Long, Row> known = new HashMap<>();
    if (!sameOrder) {
      before.forEach(row -> known.put(row.id(), row));
      lines.add(
          "rows\t"
              + table.id()
              + "\t"
              + after.stream()
                  .map(row -> Long.toString(row.id()))
                  .collect(Collectors.joining(" ")));
    }
    for (int i = 0; i < after.size(); i++) {
      Row row = after.get(i);
      Row old = sameOrder ? before.get(i) : known.get(row.id());
      if (old != row) {
        cells(table, old, row, lines);
        remarks(table.id(), old, row, lines);
      }
    }
  }

  private static void cells(TableDefinition table, Row before, Row after, List<String> lines) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < table.columns().size(); i++) {
      Entry old = before == null ? Entry.BLANK : before.entry(i);
      Entry now = after.entry(i);
      if (!now.equals(old)) {
        Column column = table.columns().get(i);
        line.append('\t').append(column.reference().column()).append('\t');
        line.append(EntryText.of(now));
      }
    }
    if (!line.isEmpty()) {
      lines.add("cells\t" + table.id() + "\t" + after.id() + line);
    }
  }

  private static void remarks(String table, Row before, Row after, List<String> lines) {
    StringBuilder line = new StringBuilder();
    for (String column :
        before == null ? after.remarks().keySet() : after.remarkedOtherwise(before)) {
      Remark now = after.remark(column);
      line.append('\t').append(EntryText.escaped(column));
      line.append('\t').append(now.tint().name());
      line.append('\t').append(EntryText.escaped(now.note()));
    }
    if (!line.isEmpty()) {
      lines.add("remarks\t" + table + "\t" + after.id() + line);
    }
  }
}
