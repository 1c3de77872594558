package zonewright.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.equation.EquationReader;
import zonewright.equation.EquationReading;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.Remark;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/**
 * What an edit of definitions means for the rest of a design: where a column is called otherwise,
 * equations that name it follow, and its notes and colours go with it; where its definition is
 * taken out, they go.
 */
final class OwnColumnChange {
  /** The cells of a definition that hold equations. */
  private static final List<Column> EQUATIONS =
      List.of(OwnColumnSheet.EQUATION, OwnColumnSheet.AT_LEAST, OwnColumnSheet.AT_MOST);

  private final Book book;
  private final Edit edit;
  private final BookSnapshot after;

  /** For each column that is another one now, which; none where it is gone. */
  private final Map<Reference, Optional<Column>> others = new LinkedHashMap<>();

  private OwnColumnChange(Book book, Edit edit, BookSnapshot after) {
    this.book = book;
    this.edit = edit;
    this.after = after;
  }

  /** Returns an edit with what it means for equations, notes and colours. */
  static Edit completed(Book book, Edit edit) {
    if (book.rows(Sheets.OWN_COLUMNS) == 0) {
      return edit;
    }
    BookSnapshot after = book.after(edit);
    boolean same = after.rows(Sheets.OWN_COLUMNS).equals(book.contents().rows(Sheets.OWN_COLUMNS));
    return same ? edit : new OwnColumnChange(book, edit, after).completed();
  }

  private Edit completed() {
    compare();
    if (others.isEmpty()) {
      return edit;
    }
    List<Edit.Change> equations = equations();
    List<Edit.RemarkChange> remarks = remarks();
    return equations.isEmpty() && remarks.isEmpty()
        ? edit
        : new Edit.Several(
            edit.name(),
            List.of(
                edit,
                new Edit.SetCells(edit.name(), equations),
                new Edit.SetRemarks(edit.name(), remarks)));
  }

  private void compare() {
    OwnColumns before = OwnColumns.of(book);
    OwnColumns then = OwnColumns.of(after);
    Map<Long, Integer> places = new HashMap<>();
    List<Row> rows = after.rows(Sheets.OWN_COLUMNS);
    for (int place = 0; place < rows.size(); place++) {
      places.put(rows.get(place).id(), place);
    }
    for (int row = 0; row < book.rows(Sheets.OWN_COLUMNS); row++) {
      Optional<Column> was = before.column(row);
      Integer place = places.get(book.contents().row(Sheets.OWN_COLUMNS, row).id());
      Optional<Column> now = place == null ? Optional.empty() : then.column(place);
      // one whose definition lacks something for a while keeps what stands on its cells
      boolean lacking = place != null && now.isEmpty();
      if (was.isPresent() && !lacking) {
        Reference old = was.get().reference();
        Optional<Column> here =
            now.filter(column -> column.reference().table().equals(old.table()));
        if (!here.map(Column::name).equals(Optional.of(old.name()))) {
          others.put(old, here);
        }
      }
    }
  }

  /** Returns what equations that were not typed anew are to say. */
  private List<Edit.Change> equations() {
    List<Edit.Change> changes = new ArrayList<>();
    Map<Long, Row> then = new HashMap<>();
    after.rows(Sheets.OWN_COLUMNS).forEach(row -> then.put(row.id(), row));
    for (Row row : book.contents().rows(Sheets.OWN_COLUMNS)) {
      String sheet = OwnColumnDraft.of(row).sheet();
      for (Column cell : then.containsKey(row.id()) ? EQUATIONS : List.<Column>of()) {
        int at = book.position(cell.reference());
        Entry said = row.entry(at);
        if (said instanceof Entry.Words words && said.equals(then.get(row.id()).entry(at))) {
          String text = renamed(words.text(), sheet);
          if (!text.equals(words.text())) {
            changes.add(new Edit.Change(Sheets.OWN_COLUMNS, row.id(), at, said, Entry.words(text)));
          }
        }
      }
    }
    return changes;
  }

  private String renamed(String equation, String sheet) {
    if (!(EquationReader.read(equation, OwnColumnDraft.known(book, sheet))
        instanceof EquationReading.Understood understood)) {
      return equation;
    }
    StringBuilder text = new StringBuilder(equation);
    List<EquationReading.Name> names = understood.names();
    for (int i = names.size() - 1; i >= 0; i--) {
      EquationReading.Name each = names.get(i);
      Optional<Column> now = others.getOrDefault(each.column(), Optional.empty());
      if (now.isPresent()) {
        String name = now.get().name();
        boolean bracketed = equation.substring(each.to()).stripLeading().startsWith("]");
        text.replace(each.from(), each.to(), bracketed ? name : "[" + name + "]");
      }
    }
    return text.toString();
  }

  private List<Edit.RemarkChange> remarks() {
    List<Edit.RemarkChange> changes = new ArrayList<>();
    for (String table : others.keySet().stream().map(Reference::table).distinct().toList()) {
      for (Row row : after.rows(table)) {
        Map<String, Remark> wanted = new LinkedHashMap<>();
        others.forEach(
            (was, now) -> {
              Remark remark = row.remark(was.column());
              if (was.table().equals(table) && !remark.equals(Remark.NONE)) {
                wanted.putIfAbsent(was.column(), Remark.NONE);
                now.ifPresent(column -> wanted.put(column.reference().column(), remark));
              }
            });
        wanted.forEach(
            (column, remark) ->
                changes.add(
                    new Edit.RemarkChange(table, row.id(), column, row.remark(column), remark)));
      }
    }
    return changes;
  }
}
