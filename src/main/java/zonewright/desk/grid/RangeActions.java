package zonewright.desk.grid;

import java.awt.event.ActionEvent;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import javax.swing.Action;
import javax.swing.JTextField;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.QuantityKind;

/** What is done to the cells and rows selected in a grid, each as one edit that can be undone. */
final class RangeActions {
  private final SheetTable table;
  private BiPredicate<List<List<String>>, Runnable> elsewhere = (block, asItIs) -> false;

  RangeActions(SheetTable table) {
    this.table = table;
  }

  /**
   * Sets who may take what is pasted in place of the grid, and then says so; it is given what
   * pastes it here all the same.
   */
  void onPaste(BiPredicate<List<List<String>>, Runnable> who) {
    elsewhere = who;
  }

  /** Gives a grid these actions. */
  void install(GridActions actions) {
    actions.does(GridAction.UNDO, () -> settled(table.book()::undo));
    actions.does(GridAction.REDO, () -> settled(table.book()::redo));
    actions.does(GridAction.COPY, () -> settled(this::copy));
    actions.does(GridAction.COPY_WITH_HEADINGS, () -> settled(this::copyWithHeadings));
    actions.does(GridAction.COPY_AS_SHOWN, () -> settled(this::copyAsShown));
    actions.does(GridAction.PASTE_VALUES, () -> settled(() -> paste(GridClipboard.values())));
    actions.does(
        GridAction.PASTE_TRANSPOSED, () -> settled(() -> paste(transposed(GridClipboard.take()))));
    actions.does(GridAction.TODAY, this::today);
    actions.does(GridAction.SELECT_COLUMNS, () -> unlessTyping(this::selectColumns));
    actions.does(GridAction.SELECT_ROWS, () -> unlessTyping(this::selectRows));
    actions.does(GridAction.CUT, () -> settled(this::cut));
    actions.does(GridAction.PASTE, () -> settled(this::paste));
    actions.does(GridAction.CLEAR, () -> settled(this::clear));
    actions.does(GridAction.FILL_DOWN, () -> settled(this::fillDown));
    actions.does(GridAction.FILL_SERIES, () -> settled(this::fillSeries));
    actions.does(GridAction.SELECT_ALL, () -> settled(table::selectAll));
    actions.does(GridAction.EDIT, () -> table.beginEditing(EntryEditor.Beginning.inPlace()));
    actions.does(GridAction.CHOOSE, () -> table.beginEditing(EntryEditor.Beginning.fromList()));
    actions.does(
        GridAction.INSERT_ROWS,
        () -> settled(() -> rowsOr(actions.get(GridAction.SHOW_COLUMNS), this::insertRows)));
    actions.does(
        GridAction.DELETE_ROWS,
        () -> settled(() -> rowsOr(actions.get(GridAction.HIDE_COLUMNS), this::deleteRows)));
    new RemarkActions(table, this::coloured, this::rows).install(actions);
    if (grows()) {
      actions.does(GridAction.DUPLICATE_ROWS, () -> settled(this::duplicateRows));
      actions.does(GridAction.MOVE_ROWS_UP, () -> settled(() -> moveRows(-1)));
    }
    actions.does(GridAction.MOVE_ROWS_DOWN, () -> settled(this::downOrChoose));
  }

  /** Does what is done to rows, or where whole columns are selected what is done to columns. */
  private void rowsOr(Action columns, Runnable rows) {
    boolean wholeColumns = table.getSelectedRowCount() == table.getRowCount() && !wholeRows();
    if (wholeColumns && table.getRowCount() > 1) {
      columns.actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, ""));
    } else {
      rows.run();
    }
  }

  /** Keys that mean something in the field one types into are left to it. */
  private void unlessTyping(Runnable what) {
    if (!table.isEditing()) {
      what.run();
    }
  }

  private void selectColumns() {
    if (table.getRowCount() > 0) {
      table.getSelectionModel().setSelectionInterval(table.getRowCount() - 1, 0);
    }
  }

  private void selectRows() {
    if (table.getColumnCount() > 0) {
      table
          .getColumnModel()
          .getSelectionModel()
          .setSelectionInterval(table.getColumnCount() - 1, 0);
    }
  }

  /** Types today's date into the cell, or into the words being typed. */
  private void today() {
    String date = LocalDate.now(ZoneId.systemDefault()).toString();
    if (table.isEditing() && table.getEditorComponent() instanceof JTextField field) {
      field.replaceSelection(date);
      return;
    }
    int row = table.leadRow();
    int column = table.leadColumn();
    boolean takes =
        table
            .declared(Math.max(0, row), Math.max(0, column))
            .filter(
                found ->
                    found.content() == Column.Content.WORDS || found.kind() == QuantityKind.DATE)
            .isPresent();
    if (takes && table.takesEntries(row, column)) {
      table.enter(row, column, date);
    }
  }

  /** Keeps what is being typed before anything else happens. */
  private void settled(Runnable what) {
    table.commit();
    what.run();
  }

  private String id() {
    return table.sheet().table().id();
  }

  private boolean grows() {
    return table.sheet().grows();
  }

  /** Returns the rows of the book that are selected, without the new one. */
  List<Integer> rows() {
    return IntStream.of(table.getSelectedRows())
        .map(table::bookRow)
        .filter(row -> row < table.book().rows(id()))
        .boxed()
        .toList();
  }

  private List<Reference> columns() {
    List<Reference> columns = new ArrayList<>();
    for (int at : table.getSelectedColumns()) {
      columns.add(table.columnAt(at).reference());
    }
    return columns;
  }

  /** Whole rows are coloured in all their columns, also those not shown now. */
  private List<Reference> coloured() {
    return wholeRows()
        ? table.sheet().table().columns().stream().map(Column::reference).toList()
        : columns();
  }

  private List<Reference> typeable() {
    return columns().stream()
        .filter(reference -> EntryTable.typeable(table.book(), declared(reference)))
        .toList();
  }

  private Column declared(Reference reference) {
    return table.book().schema().column(reference);
  }

  private boolean wholeRows() {
    return table.getSelectedColumnCount() == table.getColumnCount();
  }

  void copy() {
    if (rows().isEmpty() || columns().isEmpty()) {
      return;
    }
    List<List<String>> shown = new ArrayList<>();
    List<List<String>> entered = new ArrayList<>();
    for (int row : rows()) {
      shown.add(columns().stream().map(reference -> exact(reference, row)).toList());
      entered.add(columns().stream().map(reference -> entered(reference, row)).toList());
    }
    GridClipboard.put(new GridClipboard.Cells(shown, entered));
  }

  /** Copies what is selected with the headings of its columns, for other programs. */
  private void copyWithHeadings() {
    List<List<String>> block = new ArrayList<>();
    block.add(
        columns().stream()
            .map(reference -> declared(reference).heading(table.book().system()))
            .toList());
    rows().forEach(row -> block.add(columns().stream().map(each -> exact(each, row)).toList()));
    GridClipboard.putText(block);
  }

  /** Copies what is selected as it is shown: rounded, and with the words in place of numbers. */
  private void copyAsShown() {
    List<List<String>> block =
        rows().stream()
            .map(
                row ->
                    columns().stream()
                        .map(each -> table.looks().look(declared(each), row).text())
                        .toList())
            .toList();
    if (!block.isEmpty()) {
      GridClipboard.putText(block);
    }
  }

  private static List<List<String>> transposed(List<List<String>> block) {
    int wide = block.stream().mapToInt(List::size).max().orElse(0);
    return IntStream.range(0, wide)
        .mapToObj(at -> block.stream().map(line -> at < line.size() ? line.get(at) : "").toList())
        .toList();
  }

  private String exact(Reference reference, int row) {
    Column column = declared(reference);
    String typed = table.looks().typed(column, row);
    CellLook look = table.looks().look(column, row);
    boolean words = look.standing() == CellLook.Standing.NOT_APPLICABLE && !column.takesEntries();
    return words ? look.text() : typed;
  }

  /** Returns what to type to get an entry again, in any unit system; nothing for a default. */
  private String entered(Reference reference, int row) {
    Column column = declared(reference);
    if (!column.takesEntries()) {
      return exact(reference, row);
    }
    Entry entry = table.book().entry(reference, row);
    String typed = Entries.typed(column, entry);
    boolean bare =
        !(entry instanceof Entry.Figure figure)
            || !figure.sum().isEmpty()
            || column.kind().percent();
    String unit = column.kind().unit(table.book().system()).symbol();
    return bare || unit.isEmpty() ? typed : typed + " " + unit;
  }

  private void cut() {
    copy();
    clear();
  }

  private void clear() {
    if (!rows().isEmpty()) {
      table.book().perform(table.edits().cleared(typeable(), rows()));
    }
  }

  void paste() {
    List<List<String>> block = GridClipboard.take();
    if (!elsewhere.test(block, () -> paste(block))) {
      paste(block);
    }
  }

  private void paste(List<List<String>> block) {
    int[] rows = table.getSelectedRows();
    int[] columns = table.getSelectedColumns();
    if (block.isEmpty() || rows.length == 0 || columns.length == 0) {
      return;
    }
    int wide = block.stream().mapToInt(List::size).max().orElse(0);
    List<List<String>> tiled = tiled(block, wide, rows.length, columns.length);
    int before = table.book().rows(id());
    List<Integer> targets =
        IntStream.range(rows[0], rows[0] + tiled.size()).map(table::bookRow).boxed().toList();
    table
        .book()
        .perform(table.edits().pasted(id(), table.shownColumns(), targets, columns[0], tiled));
    int lastRow = Math.min(table.getRowCount() - 1, rows[0] + tiled.size() - 1);
    int wider = tiled.stream().mapToInt(List::size).max().orElse(1);
    int lastColumn = Math.min(table.getColumnCount() - 1, columns[0] + wider - 1);
    if (lastRow >= 0 && (grows() || before > 0)) {
      table.changeSelection(lastRow, lastColumn, false, false);
      table.changeSelection(rows[0], columns[0], false, true);
    }
  }

  /** Returns the block, repeated where the cells selected are a multiple of it. */
  private static List<List<String>> tiled(
      List<List<String>> block, int wide, int rows, int columns) {
    int down = rows % block.size() == 0 ? rows / block.size() : 1;
    int across = wide > 0 && columns % wide == 0 ? columns / wide : 1;
    if (down * across == 1) {
      return block;
    }
    List<List<String>> tiled = new ArrayList<>();
    for (int i = 0; i < down * block.size(); i++) {
      List<String> line = new ArrayList<>();
      for (int j = 0; j < across; j++) {
        List<String> part = block.get(i % block.size());
        line.addAll(part);
        for (int fill = part.size(); fill < wide && across > 1; fill++) {
          line.add("");
        }
      }
      tiled.add(line);
    }
    return tiled;
  }

  private void fillDown() {
    List<Integer> rows = rows();
    if (rows.isEmpty()) {
      return;
    }
    if (rows.size() == 1) {
      int above = table.getSelectedRow() - 1;
      if (above < 0) {
        return;
      }
      rows = List.of(table.bookRow(above), rows.get(0));
    }
    List<Reference> columns = new ArrayList<>(typeable());
    if (columns.size() > 1) {
      columns.removeIf(this::namesRows);
    }
    table.book().perform(table.edits().filledDown(columns, rows));
  }

  private void fillSeries() {
    List<Integer> rows = rows();
    if (rows.size() > 1) {
      table.book().perform(table.edits().filledSeries(typeable(), rows));
    }
  }

  private boolean namesRows(Reference reference) {
    TableDefinition definition = table.sheet().table();
    return definition.key().filter(key -> key.reference().equals(reference)).isPresent();
  }

  private void insertRows() {
    if (grows()) {
      int at = Math.max(0, table.getSelectionModel().getMinSelectionIndex());
      int count = Math.max(1, table.getSelectedRowCount());
      table.book().perform(table.edits().inserted(id(), table.bookRow(at), count));
      select(at, count);
    }
  }

  private void deleteRows() {
    List<Integer> rows = rows();
    if (grows() && !rows.isEmpty()) {
      int first = table.getSelectedRow();
      table.book().perform(table.edits().removed(id(), rows));
      select(Math.min(first, table.getRowCount() - 1), 1);
    }
  }

  private void duplicateRows() {
    List<Integer> rows = rows();
    if (grows() && !rows.isEmpty()) {
      int after = table.getSelectedRow() + rows.size();
      table.book().perform(table.edits().duplicated(id(), rows));
      select(after, rows.size());
    }
  }

  private void moveRows(int step) {
    List<Integer> rows = rows();
    if (!grows() || rows.isEmpty()) {
      return;
    }
    int to = table.getSelectedRow() + step;
    int shown = table.sheet().shown().count();
    if (to >= 0 && to + rows.size() <= shown) {
      int neighbour = table.bookRow(step < 0 ? to : to + rows.size() - 1);
      table.book().perform(table.edits().moved(id(), rows, neighbour, step < 0));
      select(to, rows.size());
    }
  }

  /** Opens the list of a choice; moves rows where whole rows are selected or there is no list. */
  private void downOrChoose() {
    boolean choice =
        !wholeRows()
            && table
                .declared(Math.max(0, table.leadRow()), Math.max(0, table.leadColumn()))
                .filter(column -> column.content() == Column.Content.CHOICE)
                .filter(column -> EntryTable.typeable(table.book(), column))
                .isPresent();
    if (choice) {
      table.beginEditing(EntryEditor.Beginning.fromList());
    } else {
      moveRows(1);
    }
  }

  /** Selects rows, in the columns selected before. */
  private void select(int at, int count) {
    if (at >= 0 && count > 0) {
      table.getSelectionModel().setSelectionInterval(at + count - 1, at);
      table.showCell(at, Math.max(0, table.leadColumn()));
    }
  }
}
