package zonewright.desk.season;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import zonewright.season.Season;
import zonewright.season.SeasonTable;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/** All zones of a season: a row for the site, and one for each zone. */
final class SeasonZoneModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;

  /** Columns of the season's table that are shown, and their widths. */
  private static final int[] COLUMNS = {0, 1, 2, 4, 5, 6, 9, 10};

  private static final int[] WIDTHS = {44, 130, 90, 76, 92, 62, 78, 96};
  private static final String ALL = "All";

  private transient Optional<SeasonTable> table = Optional.empty();
  private transient List<String> site = List.of();

  /** Shows a season. */
  void show(Season season, UnitSystem system) {
    boolean same = table.isPresent() && table.get().rows().size() == season.results().size();
    SeasonTable now = SeasonTable.ofZones(season, system);
    boolean headings = table.map(SeasonTable::headings).filter(now.headings()::equals).isEmpty();
    table = Optional.of(now);
    String volume = SeasonTable.volume(season.litres() / season.years(), system);
    site =
        List.of(
            ALL,
            "",
            volume.substring(0, volume.indexOf(' ')),
            QuantityText.grouped(100 * season.adequacy(), 0),
            "",
            QuantityText.grouped(100 * season.excess(), 0),
            "",
            "");
    if (headings) {
      fireTableStructureChanged();
    } else if (same) {
      fireTableRowsUpdated(0, getRowCount() - 1);
    } else {
      fireTableDataChanged();
    }
  }

  /** Returns how wide a column should be beside the others. */
  static int width(int column) {
    return WIDTHS[column];
  }

  @Override
  public int getRowCount() {
    return table.map(known -> known.rows().size() + 1).orElse(0);
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.length;
  }

  private SeasonTable.Heading heading(int column) {
    return table.orElseThrow().headings().get(COLUMNS[column]);
  }

  @Override
  public String getColumnName(int column) {
    if (table.isEmpty()) {
      return "";
    }
    String unit = heading(column).unit();
    return unit.isEmpty()
        ? heading(column).name()
        : "<html><nobr>%s</nobr><br>(%s)</html>".formatted(heading(column).name(), unit);
  }

  /** Returns what a column is, as a sentence. */
  String meaning(int column) {
    return table.isEmpty() ? "" : heading(column).meaning();
  }

  /** Says whether a column holds numbers. */
  boolean numbers(int column) {
    return table.isPresent() && heading(column).numbers();
  }

  @Override
  public Object getValueAt(int row, int column) {
    return row == 0
        ? site.get(column)
        : table.orElseThrow().rows().get(row - 1).get(COLUMNS[column]).shown();
  }
}
