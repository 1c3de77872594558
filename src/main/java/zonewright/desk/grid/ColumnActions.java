package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import zonewright.sheet.Column;

/** What is done to the columns of a grid by keys and menus: move, hide, freeze, fit. */
final class ColumnActions {
  private final SheetTable table;
  private final ColumnArranger arranger;

  ColumnActions(SheetTable table, ColumnArranger arranger) {
    this.table = table;
    this.arranger = arranger;
  }

  /** Gives a grid these actions. */
  void install(GridActions actions) {
    actions.does(GridAction.COLUMN_LEFT, () -> arranger.move(table.leadColumn(), -1));
    actions.does(GridAction.COLUMN_RIGHT, () -> arranger.move(table.leadColumn(), 1));
    actions.does(GridAction.HIDE_COLUMNS, this::hide);
    actions.does(GridAction.SHOW_COLUMNS, this::showHere);
    actions.does(GridAction.FREEZE, () -> arranger.freeze(table.leadColumn() + 1));
    actions.does(GridAction.THAW, () -> arranger.freeze(0));
    actions.does(GridAction.FIT_COLUMNS, arranger::fitAll);
  }

  /** Shows the columns that are hidden within what is selected or right beside it. */
  private void showHere() {
    HiddenColumns hidden = new HiddenColumns(table);
    List<Column> found = new ArrayList<>();
    int[] selected = table.getSelectedColumns();
    if (selected.length > 0 && selected[0] > 0) {
      found.addAll(hidden.after(selected[0] - 1));
    }
    for (int at : selected) {
      found.addAll(hidden.after(at));
    }
    arranger.show(found, true);
  }

  private void hide() {
    List<Column> selected = new ArrayList<>();
    for (int at : table.getSelectedColumns()) {
      selected.add(table.columnAt(at));
    }
    int before = Math.max(0, table.getColumnModel().getSelectionModel().getMinSelectionIndex() - 1);
    arranger.show(selected, false);
    if (table.getRowCount() > 0) {
      int row = Math.max(0, table.leadRow());
      table.changeSelection(row, Math.min(before, table.getColumnCount() - 1), false, false);
    }
  }
}
