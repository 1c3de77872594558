package zonewright.desk.grid;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.units.UnitSystem;

/**
 * A table of a book with many rows, as a spreadsheet. Listens to the book by itself. For the event
 * thread only.
 */
public final class SheetGrid extends JPanel {
  private final transient Book book;
  private final transient CellLooks looks;
  private final SheetTable table;
  private transient UnitSystem system;
  private final JScrollPane pane;
  private final RowNumbers numbers;
  private final transient GridActions actions;
  private final transient List<Consumer<CellPlace>> listeners = new ArrayList<>();
  private final transient Map<Reference, Integer> fitted = new HashMap<>();
  private transient Optional<CellPlace> told = Optional.empty();

  /**
   * Makes a grid over one table of a book.
   *
   * @throws IllegalArgumentException when the book has no such table
   */
  public SheetGrid(Book book, String tableId) {
    super(new BorderLayout());
    this.book = book;
    this.system = book.system();
    this.looks = new CellLooks(book);
    SheetModel model = new SheetModel(book, tableId, looks);
    this.table = new SheetTable(model, book, looks);
    this.numbers = new RowNumbers(table);
    this.pane = new JScrollPane(table);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setColumnHeaderView(table.getTableHeader());
    pane.setRowHeaderView(numbers);
    pane.setCorner(JScrollPane.UPPER_LEADING_CORNER, new GridCorner(table));
    pane.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    pane.getColumnHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    pane.getViewport().addChangeListener(event -> table.scrolled());
    FindBar find = new FindBar(table);
    add(pane, BorderLayout.CENTER);
    add(find, BorderLayout.SOUTH);
    Movement.install(table);
    actions = new GridActions(table);
    new RangeActions(table).install(actions);
    find.install(actions);
    GridMenus.install(table, numbers, actions);
    table.freeze(usuallyFrozen());
    fitColumns();
    table.getSelectionModel().addListSelectionListener(event -> tell());
    table.getColumnModel().getSelectionModel().addListSelectionListener(event -> tell());
    if (table.getRowCount() > 0) {
      table.changeSelection(0, 0, false, false);
    }
    book.listen(this::heard);
  }

  /** Returns the name of a row, and its description where that stands right beside it. */
  private int usuallyFrozen() {
    List<Column> columns = table.sheet().table().columns();
    boolean described = columns.size() > 1 && columns.get(1).content() == Column.Content.WORDS;
    return described ? 2 : 1;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) {
      SwingUtilities.invokeLater(this::fitColumns);
    }
  }

  private void heard(Changes changes) {
    if (SwingUtilities.isEventDispatchThread()) {
      refresh(changes);
    } else {
      SwingUtilities.invokeLater(() -> refresh(changes));
    }
  }

  /** Shows what a change made of the book; keeps what is selected. Hears of changes by itself. */
  public void refresh(Changes changes) {
    looks.forget();
    if (changes.everything()) {
      Selected selected = Selected.of(table);
      if (table.isEditing()) {
        table.getCellEditor().cancelCellEditing();
      }
      table.sheet().reload();
      selected.restore(table);
      numbers.revalidate();
      table.getTableHeader().resizeAndRepaint();
    }
    if (system != book.system()) {
      system = book.system();
      fitColumns();
    } else {
      widen();
    }
    table.repaint();
    numbers.repaint();
  }

  /** Gives every column the width its heading and content ask for. */
  public void fitColumns() {
    SheetHeader header = (SheetHeader) table.getTableHeader();
    for (int at = 0; at < table.getColumnCount(); at++) {
      int width = ColumnWidths.usual(table, table.columnAt(at), header);
      setWidth(at, width);
    }
  }

  /** Makes room for what stands there since, unless a person has chosen the width of the column. */
  private void widen() {
    SheetHeader header = (SheetHeader) table.getTableHeader();
    for (int at = 0; at < table.getColumnCount(); at++) {
      Column column = table.columnAt(at);
      int now = table.getColumnModel().getColumn(at).getWidth();
      if (Objects.equals(fitted.get(column.reference()), now)) {
        setWidth(at, Math.max(now, ColumnWidths.usual(table, column, header)));
      }
    }
  }

  private void setWidth(int at, int width) {
    fitted.put(table.columnAt(at).reference(), width);
    table.getColumnModel().getColumn(at).setPreferredWidth(width);
    table.getColumnModel().getColumn(at).setWidth(width);
  }

  /** Goes to a cell, shows its column if it is hidden, and takes the focus. */
  public void goTo(Reference column, int row) {
    int at = book.position(column);
    table.getColumnExt(column.key()).setVisible(true);
    int shown = table.convertColumnIndexToView(at);
    if (row >= 0 && row < table.getRowCount() && shown >= 0) {
      table.commit();
      table.changeSelection(row, shown, false, false);
      table.requestFocusInWindow();
    }
  }

  /** Returns the cell that has the focus; empty in the row in which a new one begins. */
  public Optional<CellPlace> place() {
    return table.place(table.leadRow(), table.leadColumn());
  }

  /** Hears of every cell that gets the focus. */
  public void onSelection(Consumer<CellPlace> listener) {
    listeners.add(listener);
  }

  private void tell() {
    Optional<CellPlace> now = place();
    if (!now.equals(told)) {
      told = now;
      now.ifPresent(place -> listeners.forEach(listener -> listener.accept(place)));
    }
  }

  /** Sets who says which cells have a finding, and how grave it is. */
  public void setFlags(Function<CellPlace, Optional<Severity>> flags) {
    table.setFlags(flags);
  }

  /** Keeps the first columns in view while the others scroll; none for 0. */
  public void freeze(int columns) {
    table.freeze(columns);
  }

  /** Returns an action for menus and tool bars, with its name and key. */
  public Action action(GridAction which) {
    return actions.get(which);
  }

  /** Returns the table itself. */
  public JTable table() {
    return table;
  }
}
