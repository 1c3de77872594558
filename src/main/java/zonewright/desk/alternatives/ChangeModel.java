package zonewright.desk.alternatives;

import java.util.List;
import java.util.Map;
import javax.swing.table.AbstractTableModel;
import zonewright.alternatives.Alternatives;
import zonewright.alternatives.Change;

/** What an alternative does otherwise, a change a row. */
final class ChangeModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  private static final List<String> NAMES =
      List.of("Sheet", "Row", "Column", Alternatives.DESIGN, "In the alternative");

  private transient List<Change> changes = List.of();
  private transient Map<String, String> instead = Map.of();

  /** Shows the changes of an alternative, with what the design has in their places. */
  void show(List<Change> others, Map<String, String> ofTheDesign) {
    changes = List.copyOf(others);
    instead = Map.copyOf(ofTheDesign);
    fireTableDataChanged();
  }

  @Override
  public int getRowCount() {
    return changes.size();
  }

  @Override
  public int getColumnCount() {
    return NAMES.size();
  }

  @Override
  public String getColumnName(int column) {
    return NAMES.get(column);
  }

  @Override
  public Object getValueAt(int row, int column) {
    Change change = changes.get(row);
    return switch (column) {
      case 0 -> change.sheet();
      case 1 -> change.row();
      case 2 -> change.column();
      case 3 -> instead.getOrDefault(change.where(), "");
      default -> change.told();
    };
  }
}
