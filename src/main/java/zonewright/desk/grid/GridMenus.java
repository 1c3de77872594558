package zonewright.desk.grid;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import zonewright.sheet.Column;

/**
 * The menus that the pointer opens on headings, row numbers and cells; and selection by heading.
 */
final class GridMenus extends MouseAdapter {
  private final SheetTable table;
  private final ColumnArranger arranger;
  private final GridActions actions;
  private int anchor;

  private GridMenus(SheetTable table, ColumnArranger arranger, GridActions actions) {
    this.table = table;
    this.arranger = arranger;
    this.actions = actions;
  }

  static void install(
      SheetTable table, ColumnArranger arranger, RowNumbers numbers, GridActions actions) {
    GridMenus menus = new GridMenus(table, arranger, actions);
    table.getTableHeader().addMouseListener(menus);
    table.getTableHeader().addMouseMotionListener(menus);
    MouseAdapter cells =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            menus.onCells(event);
          }

          @Override
          public void mouseReleased(MouseEvent event) {
            menus.onCells(event);
          }
        };
    table.addMouseListener(cells);
    numbers.addMouseListener(cells);
  }

  private void onCells(MouseEvent event) {
    if (!event.isPopupTrigger()) {
      return;
    }
    if (event.getComponent() == table) {
      int row = table.rowAtPoint(event.getPoint());
      int column = table.columnAtPoint(event.getPoint());
      if (row >= 0 && column >= 0 && !table.isCellSelected(row, column)) {
        table.changeSelection(row, column, false, false);
      }
    }
    JPopupMenu menu = new JPopupMenu();
    for (GridAction which :
        List.of(
            GridAction.CUT,
            GridAction.COPY,
            GridAction.COPY_WITH_HEADINGS,
            GridAction.COPY_AS_SHOWN,
            GridAction.PASTE,
            GridAction.PASTE_VALUES,
            GridAction.PASTE_TRANSPOSED,
            GridAction.CLEAR)) {
      menu.add(actions.get(which));
    }
    menu.addSeparator();
    menu.add(actions.get(GridAction.FILL_DOWN));
    menu.add(actions.get(GridAction.FILL_SERIES));
    menu.addSeparator();
    menu.add(actions.get(GridAction.NOTE));
    menu.add(actions.get(GridAction.COLOUR));
    if (table.sheet().grows()) {
      menu.addSeparator();
      for (GridAction which :
          List.of(
              GridAction.INSERT_ROWS,
              GridAction.DUPLICATE_ROWS,
              GridAction.DELETE_ROWS,
              GridAction.MOVE_ROWS_UP,
              GridAction.MOVE_ROWS_DOWN)) {
        menu.add(actions.get(which));
      }
    }
    menu.show(event.getComponent(), event.getX(), event.getY());
  }

  @Override
  public void mousePressed(MouseEvent event) {
    int column = table.getTableHeader().columnAtPoint(event.getPoint());
    if (event.isPopupTrigger()) {
      onHeading(event, column);
    } else if (SwingUtilities.isLeftMouseButton(event)
        && column >= 0
        && table.getTableHeader().getResizingColumn() == null) {
      table.commit();
      table.requestFocusInWindow();
      anchor = column;
      List<Column> hidden = ((SheetHeader) table.getTableHeader()).hiddenAt(event.getPoint());
      if (!hidden.isEmpty()) {
        arranger.show(hidden, true);
        return;
      }
      boolean group = event.getY() < ((SheetHeader) table.getTableHeader()).bandHeight();
      if (group) {
        selectColumns(firstOfGroup(column), lastOfGroup(column));
      } else if (event.isShiftDown()) {
        selectColumns(
            Math.max(0, table.getColumnModel().getSelectionModel().getAnchorSelectionIndex()),
            column);
      } else {
        selectColumns(column, column);
      }
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (event.isPopupTrigger()) {
      onHeading(event, table.getTableHeader().columnAtPoint(event.getPoint()));
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    int column = table.getTableHeader().columnAtPoint(event.getPoint());
    if (column >= 0
        && SwingUtilities.isLeftMouseButton(event)
        && table.getTableHeader().getResizingColumn() == null) {
      selectColumns(anchor, column);
    }
  }

  private void selectColumns(int from, int to) {
    if (table.getRowCount() > 0) {
      table.getSelectionModel().setSelectionInterval(table.getRowCount() - 1, 0);
      table.getColumnModel().getSelectionModel().setSelectionInterval(from, to);
    }
  }

  private int firstOfGroup(int column) {
    int at = column;
    while (at > 0 && sameGroup(at - 1, column)) {
      at--;
    }
    return at;
  }

  private int lastOfGroup(int column) {
    int at = column;
    while (at + 1 < table.getColumnCount() && sameGroup(at + 1, column)) {
      at++;
    }
    return at;
  }

  private boolean sameGroup(int one, int other) {
    return table.columnAt(one).band().equals(table.columnAt(other).band());
  }

  private void onHeading(MouseEvent event, int at) {
    if (at < 0) {
      return;
    }
    Column column = table.columnAt(at);
    boolean number = column.content() == Column.Content.NUMBER;
    JPopupMenu menu = new JPopupMenu();
    if (table.sheet().grows()) {
      menu.add(item(number ? "Sort smallest first" : "Sort A to Z", () -> sort(column, true)));
      menu.add(item(number ? "Sort largest first" : "Sort Z to A", () -> sort(column, false)));
      menu.add(actions.get(GridAction.SORT));
      menu.addSeparator();
    }
    menu.add(actions.get(GridAction.FILTER));
    menu.add(actions.get(GridAction.SHOW_ALL_ROWS));
    menu.addSeparator();
    menu.add(
        item(
            "Column of your own …",
            () -> {
              selectColumns(at, at);
              actions.get(GridAction.OWN_COLUMN).actionPerformed(null);
            }));
    menu.addSeparator();
    menu.add(item("Hide column", () -> arranger.show(List.of(column), false)));
    menu.add(
        item("Hide all of " + column.band(), () -> arranger.show(groupOf(column.band()), false)));
    menu.add(actions.get(GridAction.CHOOSE_COLUMNS));
    menu.add(actions.get(GridAction.COLUMN_LEFT));
    menu.add(actions.get(GridAction.COLUMN_RIGHT));
    menu.add(item("Fit column to what stands in it", () -> arranger.fit(at)));
    menu.addSeparator();
    menu.add(item("Freeze columns up to here", () -> arranger.freeze(at + 1)));
    menu.add(actions.get(GridAction.THAW));
    menu.show(event.getComponent(), event.getX(), event.getY());
  }

  private static JMenuItem item(String label, Runnable does) {
    JMenuItem item = new JMenuItem(label);
    item.addActionListener(event -> does.run());
    return item;
  }

  private void sort(Column column, boolean upwards) {
    table.commit();
    table
        .book()
        .perform(
            RowOrder.sorted(
                table.book(), table.looks(), List.of(new RowOrder.Key(column, upwards))));
  }

  private List<Column> groupOf(String band) {
    return table.sheet().table().columns().stream()
        .filter(column -> column.band().equals(band))
        .toList();
  }
}
