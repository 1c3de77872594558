package zonewright.desk.grid;

import javax.swing.JTable;
import javax.swing.ListSelectionModel;

/** What is selected in a table, to select it again after all has changed. */
record Selected(int anchorRow, int leadRow, int anchorColumn, int leadColumn) {
  static Selected of(JTable table) {
    ListSelectionModel rows = table.getSelectionModel();
    ListSelectionModel columns = table.getColumnModel().getSelectionModel();
    return new Selected(
        rows.getAnchorSelectionIndex(),
        rows.getLeadSelectionIndex(),
        columns.getAnchorSelectionIndex(),
        columns.getLeadSelectionIndex());
  }

  void restore(JTable table) {
    int lastRow = table.getRowCount() - 1;
    int lastColumn = table.getColumnCount() - 1;
    if (leadRow >= 0 && leadColumn >= 0 && lastRow >= 0 && lastColumn >= 0) {
      table
          .getSelectionModel()
          .setSelectionInterval(
              Math.min(Math.max(0, anchorRow), lastRow), Math.min(leadRow, lastRow));
      table
          .getColumnModel()
          .getSelectionModel()
          .setSelectionInterval(
              Math.min(Math.max(0, anchorColumn), lastColumn), Math.min(leadColumn, lastColumn));
    }
  }
}
