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
    actions.does(GridAction.FREEZE, () -> arranger.freeze(table.leadColumn() + 1));
    actions.does(GridAction.THAW, () -> arranger.freeze(0));
    actions.does(GridAction.FIT_COLUMNS, arranger::fitAll);
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
