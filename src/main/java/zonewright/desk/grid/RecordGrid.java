package zonewright.desk.grid;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * A table of a book with one row, one line for each of its columns. Listens to the book by itself.
 * For the event thread only.
 */
public final class RecordGrid extends JPanel {
  private final transient CellLooks looks;
  private final RecordTable table;
  private final transient Book book;
  private transient UnitSystem system;

  /** Whether it shows all columns there are, also those to come. */
  private final boolean whole;

  private final transient Runnable hearing;
  private final transient GridActions actions;
  private final transient LeadNews news = new LeadNews(this::place);

  /**
   * Makes a grid over a one-row table of a book.
   *
   * @throws IllegalArgumentException when the book has no such table
   */
  public RecordGrid(Book book, String tableId) {
    this(book, tableId, all(book, tableId), true);
  }

  private static List<FormQuestion> all(Book book, String table) {
    return book.schema().table(table).columns().stream()
        .map(column -> new FormQuestion(column.band(), column, column.help()))
        .toList();
  }

  /** Makes a form of some questions; its title is that of a table. */
  public RecordGrid(Book book, String tableId, List<FormQuestion> questions) {
    this(book, tableId, questions, false);
  }

  private RecordGrid(Book book, String tableId, List<FormQuestion> questions, boolean whole) {
    super(new BorderLayout());
    this.whole = whole;
    this.book = book;
    this.system = book.system();
    this.looks = new CellLooks(book);
    this.table = new RecordTable(new RecordModel(book, tableId, looks, questions), book, looks);
    JScrollPane pane = new JScrollPane(table);
    pane.setBorder(BorderFactory.createEmptyBorder());
    FindBar find = new FindBar(table);
    JPanel bars = new JPanel(new BorderLayout());
    bars.add(find);
    add(pane, BorderLayout.CENTER);
    add(bars, BorderLayout.SOUTH);
    Movement.install(table);
    actions = new GridActions(table);
    new RecordActions(table).install(actions);
    FindBar.install(actions, () -> find);
    table.getSelectionModel().addListSelectionListener(event -> news.look());
    table.selectFirst();
    hearing = book.listen(this::heard);
  }

  /** Hears of no more changes; for who puts the grid away before its book. */
  public void close() {
    hearing.run();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) {
      SwingUtilities.invokeLater(table::fitColumns);
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
    TableDefinition before = table.table();
    if (whole && changes.columns() && !book.schema().table(before.id()).declaredLike(before)) {
      table.takeLines(all(book, before.id()));
    }
    if (system != book.system()) {
      system = book.system();
      table.fitColumns();
    }
    table.repaint();
  }

  /** Goes to the value of a column and takes the focus; there is but one row. */
  public void goTo(Reference column, int row) {
    int line = table.lineOf(column);
    if (line >= 0) {
      table.commit();
      table.changeSelection(line, RecordModel.VALUE, false, false);
      table.requestFocusInWindow();
    }
  }

  /** Returns the cell that has the focus. */
  public Optional<CellPlace> place() {
    return table.place(table.leadRow(), RecordModel.VALUE);
  }

  /** Returns all cells selected. */
  public List<CellPlace> selected() {
    return IntStream.of(table.getSelectedRows())
        .mapToObj(row -> table.place(row, RecordModel.VALUE))
        .flatMap(Optional::stream)
        .toList();
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

  /** Sets who lets a person define a column of their own here. */
  public void onOwnColumn(Runnable who) {
    actions.does(
        GridAction.OWN_COLUMN,
        () -> {
          table.commit();
          who.run();
        });
  }

  /** Returns the lines shown, as they go on paper. */
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
