package zonewright.desk.nights;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.table.AbstractTableModel;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;

/** Every zone of a timetable with what the nights give it, placed or not. */
public final class ZoneShareModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  private static final int[] WIDTHS = {60, 200, 80, 80, 80, 80, 280};

  private transient List<ZoneShare> shares = List.of();

  /** Shows the zones of a plan; none where there is no plan. */
  public void show(Optional<NightsPlan> plan) {
    shares = plan.map(ZoneShare::of).orElse(List.of());
    fireTableDataChanged();
  }

  /** Returns how wide a column should be beside the others. */
  public int width(int column) {
    return WIDTHS[column];
  }

  @Override
  public int getRowCount() {
    return shares.size();
  }

  @Override
  public int getColumnCount() {
    return WIDTHS.length;
  }

  @Override
  public String getColumnName(int column) {
    return switch (column) {
      case 0 -> "Zone";
      case 1 -> "Where";
      case 2 -> "Asks for (min)";
      case 3 -> "Placed (min)";
      case 4 -> "Not placed (min)";
      case 5 -> "Short of need";
      default -> "In the nights";
    };
  }

  @Override
  public Object getValueAt(int row, int column) {
    ZoneShare share = shares.get(row);
    return switch (column) {
      case 0 -> share.sheet().name();
      case 1 -> share.sheet().place();
      case 2 -> minutes(share.asked());
      case 3 -> String.valueOf(share.placed());
      case 4 -> minutes(share.undone());
      case 5 -> share.missingWords();
      default -> share.state().word() + (share.why().isEmpty() ? "" : ": " + share.why());
    };
  }

  private static String minutes(OptionalInt minutes) {
    return minutes.isPresent() ? String.valueOf(minutes.getAsInt()) : "?";
  }
}
