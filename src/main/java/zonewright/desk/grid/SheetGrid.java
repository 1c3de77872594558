package zonewright.desk.grid;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
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
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * A table of a book with many rows, as a spreadsheet. Listens to the book by itself. For the event
 * thread only.
 */
public final class SheetGrid extends JPanel {
  /** How many cells are looked at one by one after an edit. */
  private static final int FEW = 30;

  private final transient Book book;
  private final transient CellLooks looks;
  private final SheetTable table;
  private transient UnitSystem system;
  private final JScrollPane pane;
  private final RowNumbers numbers;
  private final transient Runnable hearing;
  private final transient GridActions actions;
  private final transient RangeActions ranges;
  private final transient LeadNews news = new LeadNews(this::place);
  private final transient ColumnArranger arranger;
  private final JPanel bars = new JPanel();

  /** Made when they are first asked for: every start would wait. */
  private transient Optional<FindBar> findBar = Optional.empty();

  private transient Optional<NameBar> nameBar = Optional.empty();
  private transient Optional<FilterBar> filterBar = Optional.empty();

  private transient Optional<ColumnChooser> chooser = Optional.empty();
  private transient Optional<SortBar> sortBar = Optional.empty();

  /**
   * Makes a grid over one table of a book.
   *
   * @throws IllegalArgumentException when the book has no such table
   */
  public SheetGrid(Book book, String tableId) {
    this(book, tableId, Optional.empty());
  }

  /**
   * Makes a grid over one table of a book that shows its columns in an arrangement from the first.
   *
   * @param first is given how many columns usually stay in view
   * @throws IllegalArgumentException when the book has no such table
   */
  public SheetGrid(Book book, String tableId, IntFunction<Arrangement> first) {
    this(book, tableId, Optional.of(first));
  }

  private SheetGrid(Book book, String tableId, Optional<IntFunction<Arrangement>> first) {
    super(new BorderLayout());
    this.book = book;
    this.system = book.system();
    this.looks = new CellLooks(book);
    SheetModel model = new SheetModel(book, tableId, looks);
    this.table = new SheetTable(model, book, looks);
    table.setTableHeader(new SheetHeader(table.getColumnModel()));
    this.numbers = new RowNumbers(table);
    this.pane = new JScrollPane();
    pane.setViewport(new ColumnViewport());
    pane.setViewportView(table);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setColumnHeaderView(table.getTableHeader());
    pane.setRowHeaderView(numbers);
    pane.setCorner(JScrollPane.UPPER_LEADING_CORNER, new GridCorner(table));
    pane.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    pane.getColumnHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    pane.getViewport().addChangeListener(event -> table.scrolled());
    this.arranger = new ColumnArranger(table);
    table.onPack(arranger::fitWidest);
    table.lay(new FillHandle(table));
    bars.setLayout(new BoxLayout(bars, BoxLayout.PAGE_AXIS));
    add(pane, BorderLayout.CENTER);
    add(bars, BorderLayout.SOUTH);
    Movement.install(table);
    actions = new GridActions(table);
    ranges = new RangeActions(table);
    ranges.install(actions);
    new ColumnActions(table, arranger).install(actions);
    FindBar.install(actions, this::findBar);
    actions.does(GridAction.FILTER, () -> filterBar().begin());
    actions.does(GridAction.SHOW_ALL_ROWS, () -> filterBar().showAll());
    if (model.grows()) {
      actions.does(GridAction.SORT, () -> sortBar().begin());
    }
    actions.does(
        GridAction.CHOOSE_COLUMNS,
        () -> {
          ColumnChooser chosen = chooser.orElseGet(() -> new ColumnChooser(table, arranger));
          chooser = Optional.of(chosen);
          chosen.open();
        });
    GridMenus.install(table, arranger, numbers, actions);
    table.freeze(usuallyFrozen());
    first.ifPresentOrElse(
        wanted -> arranger.apply(wanted.apply(usuallyFrozen())), arranger::fitAll);
    table.getSelectionModel().addListSelectionListener(event -> news.look());
    table.getColumnModel().getSelectionModel().addListSelectionListener(event -> news.look());
    if (table.getRowCount() > 0) {
      table.changeSelection(0, 0, false, false);
    }
    hearing = book.listen(this::heard);
  }

  /** Hears of no more changes; for who puts the grid away before its book. */
  public void close() {
    hearing.run();
  }

  /** Returns how many columns usually stay in view: names, and descriptions right beside them. */
  public int usuallyFrozen() {
    List<Column> columns = table.sheet().table().columns();
    boolean described = columns.size() > 1 && columns.get(1).content() == Column.Content.WORDS;
    return described ? 2 : 1;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) {
      SwingUtilities.invokeLater(arranger::fitAll);
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
    TableDefinition before = table.sheet().table();
    if (changes.columns() && !book.schema().table(before.id()).declaredLike(before)) {
      takeColumns(before);
    }
    boolean anew = changes.anew(before.id());
    if (anew) {
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
      arranger.fitAll();
    } else {
      widen(changes);
    }
    repaintWhatChanged(changes);
    if (anew) {
      numbers.repaint();
    }
  }

  /** Shows the columns there are now; all else stays as a person had it. */
  private void takeColumns(TableDefinition before) {
    if (table.isEditing()) {
      table.getCellEditor().cancelCellEditing();
    }
    Optional<Column> lead =
        table.leadColumn() < 0 ? Optional.empty() : Optional.of(table.columnAt(table.leadColumn()));
    table.sheet().takeColumns(before.id());
    arranger.takeColumns(before.columns());
    lead.filter(column -> book.schema().has(column.reference()) && arranger.isShown(column))
        .ifPresent(
            column -> {
              int at = table.convertColumnIndexToView(book.position(column.reference()));
              table.getColumnModel().getSelectionModel().setSelectionInterval(at, at);
            });
    filterBar.ifPresent(FilterBar::takeColumns);
    sortBar.ifPresent(SortBar::takeColumns);
    chooser.ifPresent(ColumnChooser::fill);
  }

  /** Makes room for what stands in the columns since, as far as a frame allows. */
  private void widen(Changes changes) {
    String id = table.sheet().table().id();
    int rows = book.rows(id);
    for (int at = 0; at < table.getColumnCount(); at++) {
      BitSet changed = changes.cells().get(table.columnAt(at).reference());
      if (changes.anew(id)) {
        arranger.widen(at, IntStream.range(0, Math.min(FEW, rows)));
      } else if (changed != null) {
        arranger.widen(at, changed.stream().limit(FEW));
      }
    }
  }

  /**
   * Paints the rows typed into and the columns in which many cells changed. Reasons that changed
   * elsewhere without a number changing are painted with the findings, a moment later.
   */
  private void repaintWhatChanged(Changes changes) {
    BitSet rows = new BitSet();
    boolean anew = changes.anew(table.sheet().table().id());
    boolean few = !anew && !table.sheet().shown().filtered();
    for (Column column : table.sheet().table().columns()) {
      BitSet changed = changes.cells().get(column.reference());
      if (changed != null && column.takesEntries()) {
        rows.or(changed);
      }
    }
    if (!few || rows.isEmpty() || rows.cardinality() > FEW) {
      table.repaint();
      return;
    }
    Rectangle seen = table.getVisibleRect();
    rows.stream()
        .forEach(
            row -> {
              Rectangle cell = table.getCellRect(row, 0, true);
              table.repaint(seen.x, cell.y, seen.width, cell.height);
            });
    for (int at = 0; at < table.getColumnCount(); at++) {
      BitSet changed = changes.cells().get(table.columnAt(at).reference());
      if (changed != null && changed.cardinality() > rows.cardinality()) {
        Rectangle cell = table.getCellRect(0, at, true);
        // what lies outside would make one large piece to paint of two small ones
        table.repaint(new Rectangle(cell.x, seen.y, cell.width, seen.height).intersection(seen));
      }
    }
  }

  private FilterBar filterBar() {
    FilterBar bar = filterBar.orElseGet(() -> added(new FilterBar(table, this::otherRows)));
    filterBar = Optional.of(bar);
    return bar;
  }

  private FindBar findBar() {
    FindBar bar = findBar.orElseGet(() -> added(new FindBar(table)));
    findBar = Optional.of(bar);
    return bar;
  }

  private NameBar nameBar() {
    NameBar bar = nameBar.orElseGet(() -> added(new NameBar(table)));
    nameBar = Optional.of(bar);
    return bar;
  }

  private SortBar sortBar() {
    SortBar bar = sortBar.orElseGet(() -> added(new SortBar(table)));
    sortBar = Optional.of(bar);
    return bar;
  }

  private <T extends GridBar> T added(T bar) {
    bars.add(bar);
    return bar;
  }

  private void otherRows() {
    numbers.revalidate();
    numbers.repaint();
    repaint();
  }

  /** Returns what shows, hides, moves and sizes the columns. */
  public ColumnArranger columns() {
    return arranger;
  }

  /** Asks for a name in a line at the foot, and hands it over unless none is given. */
  public void askName(String question, String suggestion, Consumer<String> then) {
    nameBar().ask(question, suggestion, then);
  }

  /** Returns the row of the book that a row of the table shows. */
  public int bookRow(int row) {
    return table.bookRow(row);
  }

  /** Returns the column that stands at a place of the table. */
  public Reference columnAt(int at) {
    return table.columnAt(at).reference();
  }

  /** Returns how many rows a filter hides. */
  public int hiddenRows() {
    return book.rows(table.sheet().table().id()) - table.sheet().shown().count();
  }

  /** Goes to a cell, shows its column and row if they are hidden, and takes the focus. */
  public void goTo(Reference column, int row) {
    if (row < 0 || row >= book.rows(column.table())) {
      return;
    }
    Column declared = book.schema().column(column);
    if (!arranger.isShown(declared)) {
      arranger.show(List.of(declared), true);
    }
    if (table.sheet().shown().place(row) < 0) {
      table.sheet().shown().reveal(row);
      table.sheet().reload();
      otherRows();
    }
    int at = table.sheet().shown().place(row);
    int shown = table.convertColumnIndexToView(book.position(column));
    if (shown >= 0) {
      table.commit();
      table.changeSelection(at, shown, false, false);
      table.requestFocusInWindow();
    }
  }

  /**
   * Goes to a cell of the first row without scrolling from the first column: to the one wanted, or
   * where that lies beyond what is seen to the last calculated one that does not.
   */
  public void begin(Column wanted) {
    table.showFirstColumn();
    int room = pane.getViewport().getWidth();
    int best = 0;
    int end = 0;
    for (int at = 0; at < table.getColumnCount() && end <= room; at++) {
      Column column = table.columnAt(at);
      end += table.getColumnModel().getColumn(at).getWidth();
      boolean calculated = column.formula().isPresent() && !column.takesEntries();
      boolean reached = best > 0 && table.columnAt(best).equals(wanted);
      if (end <= room && calculated && !reached) {
        best = at;
      }
    }
    if (table.sheet().shown().count() > 0) {
      table.changeSelection(0, best, false, false);
      table.requestFocusInWindow();
    }
  }

  /** Returns the cell that has the focus; empty in the row in which a new one begins. */
  public Optional<CellPlace> place() {
    return table.place(table.leadRow(), table.leadColumn());
  }

  /** Hears of every cell that gets the focus. */
  public void onSelection(Consumer<CellPlace> listener) {
    news.listen(listener);
  }

  /** Sets who says which cells have a finding, and how grave it is. */
  public void setFlags(Function<CellPlace, Optional<Severity>> flags) {
    table.setFlags(flags);
  }

  /** Sets who says what else is known of a cell, in a sentence. */
  public void setFacts(Function<CellPlace, String> facts) {
    table.setFacts(facts);
  }

  /** Sets who says why nothing is typed into a cell, and what can be done instead. */
  public void onRefused(Consumer<CellPlace> who) {
    table.onRefused(who);
  }

  /** Sets who may take what is pasted in place of the grid, and then says so. */
  public void onPaste(BiPredicate<List<List<String>>, Runnable> who) {
    ranges.onPaste(who);
  }

  /** Sets who lets a person define a column of their own here. */
  public void onOwnColumn(Runnable who) {
    actions.does(
        GridAction.OWN_COLUMN,
        () -> {
          table.commit();
          who.run();
        });
  }

  /** Returns the columns and rows shown, as they go on paper. */
  public PrintedGrid paper() {
    table.commit();
    return PrintedGrid.of(table);
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
