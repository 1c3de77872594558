package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;

/** What is done to the values selected in a one-row table, each as one edit. */
final class RecordActions {
  private final RecordTable table;

  RecordActions(RecordTable table) {
    this.table = table;
  }

  void install(GridActions actions) {
    actions.does(GridAction.UNDO, () -> settled(table.book()::undo));
    actions.does(GridAction.REDO, () -> settled(table.book()::redo));
    actions.does(GridAction.COPY, () -> settled(this::copy));
    actions.does(GridAction.CUT, () -> settled(this::cut));
    actions.does(GridAction.PASTE, () -> settled(this::paste));
    actions.does(GridAction.CLEAR, () -> settled(this::clear));
    actions.does(GridAction.SELECT_ALL, () -> settled(this::selectAll));
    actions.does(GridAction.EDIT, () -> table.beginEditing(EntryEditor.Beginning.inPlace()));
    actions.does(GridAction.CHOOSE, () -> table.beginEditing(EntryEditor.Beginning.fromList()));
    new RemarkActions(table, this::references, () -> List.of(0)).install(actions);
    actions.does(
        GridAction.MOVE_ROWS_DOWN, () -> table.beginEditing(EntryEditor.Beginning.fromList()));
  }

  private void settled(Runnable what) {
    table.commit();
    what.run();
  }

  private List<Column> selected() {
    return IntStream.of(table.getSelectedRows())
        .mapToObj(row -> table.declared(row, RecordModel.VALUE))
        .flatMap(Optional::stream)
        .toList();
  }

  private List<Reference> references() {
    return selected().stream().map(Column::reference).toList();
  }

  private void selectAll() {
    table.getSelectionModel().setSelectionInterval(table.getRowCount() - 1, 1);
  }

  private void copy() {
    List<List<String>> values =
        selected().stream().map(column -> List.of(table.looks().typed(column, 0))).toList();
    if (!values.isEmpty()) {
      GridClipboard.put(new GridClipboard.Cells(values, values));
    }
  }

  private void cut() {
    copy();
    clear();
  }

  private void clear() {
    if (!references().isEmpty()) {
      table.book().perform(table.edits().cleared(references(), List.of(0)));
    }
  }

  /** Pastes the first cell of each line into a value, beginning at the first one selected. */
  private void paste() {
    List<List<String>> block = GridClipboard.take();
    int row = table.getSelectionModel().getMinSelectionIndex();
    List<Edit> parts = new ArrayList<>();
    int line = 0;
    for (int at = Math.max(0, row); at < table.getRowCount() && line < block.size(); at++) {
      Optional<Column> column = table.declared(at, RecordModel.VALUE);
      if (column.isPresent()) {
        String text = block.get(line).isEmpty() ? "" : block.get(line).get(0);
        parts.add(table.edits().typed(column.get().reference(), 0, text));
        line++;
      }
    }
    if (!parts.isEmpty()) {
      table.book().perform(new Edit.Several("paste of " + parts.size() + " cells", parts));
    }
  }
}
