package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import zonewright.sheet.Column;

/** Sorts the rows of a grid by up to three columns. */
final class SortBar extends GridBar {
  private static final int LEVELS = 3;
  private static final String NONE = "–";

  private final SheetTable sheet;
  private final List<JComboBox<String>> columns = new ArrayList<>();
  private final List<JComboBox<String>> ways = new ArrayList<>();

  SortBar(SheetTable table) {
    super(table, new WrappingFlow());
    this.sheet = table;
    for (int level = 0; level < LEVELS; level++) {
      level(level);
    }
    add(together(button("Sort", this::sort), button("Close", this::close)));
    key("ENTER", this::sort);
  }

  private void level(int level) {
    JComboBox<String> column = new JComboBox<>();
    column.setName("sort column " + (level + 1));
    column.getAccessibleContext().setAccessibleName("Column to sort by, " + (level + 1));
    column.setMaximumRowCount(16);
    column.setModel(offered(level));
    JComboBox<String> way = new JComboBox<>();
    way.setName("sort way " + (level + 1));
    way.getAccessibleContext().setAccessibleName("Order of column " + (level + 1));
    columns.add(column);
    ways.add(way);
    directions(level);
    column.addActionListener(event -> directions(level));
    add(together(new JLabel(level == 0 ? "Sort by" : "then by"), column, way));
  }

  private DefaultComboBoxModel<String> offered(int level) {
    DefaultComboBoxModel<String> names = new DefaultComboBoxModel<>();
    if (level > 0) {
      names.addElement(NONE);
    }
    sheet.sheet().table().columns().forEach(each -> names.addElement(each.name()));
    return names;
  }

  /** Offers the columns there are now. */
  void takeColumns() {
    for (int level = 0; level < LEVELS; level++) {
      Object before = columns.get(level).getSelectedItem();
      columns.get(level).setModel(offered(level));
      columns.get(level).setSelectedItem(before);
    }
  }

  /** Says which ways a column can be sorted: words by the alphabet, numbers by size. */
  private void directions(int level) {
    JComboBox<String> way = ways.get(level);
    int before = Math.max(0, way.getSelectedIndex());
    way.removeAllItems();
    boolean number =
        chosen(level).filter(column -> column.content() == Column.Content.NUMBER).isPresent();
    way.addItem(number ? "smallest first" : "A to Z");
    way.addItem(number ? "largest first" : "Z to A");
    way.setSelectedIndex(before);
  }

  private Optional<Column> chosen(int level) {
    int at = columns.get(level).getSelectedIndex() - (level == 0 ? 0 : 1);
    return at < 0 ? Optional.empty() : Optional.of(sheet.sheet().table().columns().get(at));
  }

  /** Opens the bar at the column the person is at. */
  void begin() {
    sheet
        .columnUnderLead()
        .flatMap(each -> each)
        .ifPresent(column -> columns.get(0).setSelectedItem(column.name()));
    open(columns.get(0));
  }

  private void sort() {
    List<RowOrder.Key> keys = new ArrayList<>();
    for (int level = 0; level < LEVELS; level++) {
      boolean upwards = ways.get(level).getSelectedIndex() == 0;
      chosen(level).ifPresent(column -> keys.add(new RowOrder.Key(column, upwards)));
    }
    sheet.commit();
    sheet.book().perform(RowOrder.sorted(sheet.book(), sheet.looks(), keys));
  }
}
