package zonewright.desk.nights;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.table.AbstractTableModel;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.nights.ZoneStarts;

/** Every zone of a timetable with what the nights give it, placed or not. */
public final class ZoneShareModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  private static final int[] WIDTHS = {45, 160, 66, 78, 62, 66, 110, 190, 170};

  private transient List<ZoneShare> shares = List.of();
  private transient Map<Integer, ZoneStarts> starts = Map.of();

  /** Shows the zones of a plan; none where there is no plan. */
  public void show(Optional<NightsPlan> plan) {
    shares = plan.map(ZoneShare::of).orElse(List.of());
    starts = plan.map(ZoneStarts::of).orElse(Map.of());
    fireTableDataChanged();
  }

  /** Returns how wide a column should be beside the others. */
  public int width(int column) {
    return WIDTHS[column];
  }

  /** Says whether a column holds numbers, which stand at the right. */
  static boolean atTheRight(int column) {
    return column >= 2 && column <= 5;
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
      case 2 -> "Asks, min";
      case 3 -> "Placed, min";
      case 4 -> "Left, min";
      case 5 -> "Short by";
      case 6 -> "Days";
      case 7 -> "Starts";
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
      case 6 -> starts.getOrDefault(share.sheet().row(), ZoneStarts.NEVER).days();
      case 7 -> starts.getOrDefault(share.sheet().row(), ZoneStarts.NEVER).starts();
      default -> share.state().word() + (share.why().isEmpty() ? "" : ": " + share.why());
    };
  }

  private static String minutes(OptionalInt minutes) {
    return minutes.isPresent() ? String.valueOf(minutes.getAsInt()) : "?";
  }
}
