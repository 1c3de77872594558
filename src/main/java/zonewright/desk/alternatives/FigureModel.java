package zonewright.desk.alternatives;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import zonewright.whatif.SideBySide;

/** Figures down, alternatives across. */
final class FigureModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;

  private transient SideBySide shown = new SideBySide(List.of(), 0, List.of(), List.of());

  /** Shows others. */
  void show(SideBySide other) {
    boolean sameColumns = other.names().equals(shown.names()) && other.inHand() == shown.inHand();
    shown = other;
    if (sameColumns) {
      fireTableDataChanged();
    } else {
      fireTableStructureChanged();
    }
  }

  /** Says whether a cell has it otherwise than the design. */
  boolean differs(int row, int column) {
    return column > 0 && shown.lines().get(row).differs(column - 1);
  }

  /** Says whether a column is the one that stands on the sheets. */
  boolean inHand(int column) {
    return column - 1 == shown.inHand();
  }

  @Override
  public int getRowCount() {
    return shown.lines().size();
  }

  @Override
  public int getColumnCount() {
    return shown.names().isEmpty() ? 0 : shown.names().size() + 1;
  }

  @Override
  public String getColumnName(int column) {
    return column == 0
        ? ""
        : shown.names().get(column - 1) + (inHand(column) ? " – on the sheets" : "");
  }

  @Override
  public Object getValueAt(int row, int column) {
    SideBySide.Line line = shown.lines().get(row);
    if (column == 0) {
      return line.name();
    }
    String value = line.values().get(column - 1);
    return value.isEmpty() ? "–" : (differs(row, column) ? "* " : "") + value;
  }
}
