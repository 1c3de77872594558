package zonewright.desk.nights;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import zonewright.desk.part.OpenDesign;
import zonewright.fieldwork.FirstWeeks;
import zonewright.fieldwork.Judgement;

/** What was seen zone by zone; what is seen today is chosen in the last column. */
final class FirstWeeksModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  static final int TODAY = 5;
  private static final List<String> NAMES =
      List.of("Zone", "Where", "Tuning", "Looked at", "Seen then", "Seen today");

  private final transient OpenDesign open;
  private transient List<FirstWeeks.Zone> zones = List.of();

  FirstWeeksModel(OpenDesign open) {
    this.open = open;
  }

  void show(List<FirstWeeks.Zone> now) {
    if (!now.equals(zones)) {
      zones = now;
      fireTableDataChanged();
    }
  }

  private static LocalDate today() {
    return LocalDate.now(ZoneId.systemDefault());
  }

  @Override
  public int getRowCount() {
    return zones.size();
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
  public boolean isCellEditable(int row, int column) {
    return column == TODAY && !zones.get(row).name().isEmpty();
  }

  @Override
  public Object getValueAt(int row, int column) {
    FirstWeeks.Zone zone = zones.get(row);
    return switch (column) {
      case 0 -> zone.name();
      case 1 -> zone.place();
      case 2 -> zone.tuning();
      case 3 -> zone.day();
      case 4 -> zone.seen();
      default -> zone.day().equals(today().toString()) ? zone.seen() : "";
    };
  }

  @Override
  public void setValueAt(Object value, int row, int column) {
    Optional<Judgement> seen = Judgement.of(String.valueOf(value));
    if (!String.valueOf(getValueAt(row, TODAY)).equals(seen.map(Judgement::word).orElse(""))) {
      open.book().perform(FirstWeeks.looked(open.book(), zones.get(row).row(), today(), seen));
    }
  }
}
