package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JViewport;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIDefaults;
import javax.swing.event.ChangeEvent;
import javax.swing.table.TableModel;
import org.jdesktop.swingx.JXTable;
import org.jdesktop.swingx.table.ColumnFactory;
import org.jdesktop.swingx.table.TableColumnExt;
import zonewright.desk.part.Palette;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Remark;
import zonewright.sheet.Severity;
import zonewright.units.Arithmetic;

/** A table whose cells are cells of a book, typed into as in a spreadsheet. */
abstract class EntryTable extends JXTable {
  /** Leaves the widths of columns alone, which are measured by what stands in them. */
  private static final ColumnFactory COLUMNS =
      new ColumnFactory() {
        @Override
        public void configureColumnWidths(JXTable table, TableColumnExt column) {}
      };

  private final transient Book book;
  private final transient Edits edits;
  private final transient CellLooks looks;
  private final transient EntryEditor editor;
  private transient Function<CellPlace, Optional<Severity>> flags = place -> Optional.empty();
  private transient Function<CellPlace, String> facts = place -> "";
  private transient Consumer<CellPlace> refused = place -> {};

  /** The cell that was clicked last. */
  private int clickedRow = -1;

  private int clickedColumn = -1;

  EntryTable(TableModel model, Book book, CellLooks looks) {
    super(model);
    this.book = book;
    this.edits = new Edits(book);
    this.looks = looks;
    this.editor = new EntryEditor(new Editing(), padding());
    setDefaultEditor(Object.class, editor);
    setSortable(false);
    setAutoCreateRowSorter(false);
    setRowSorter(null);
    setColumnControlVisible(false);
    setCellSelectionEnabled(true);
    setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
    getColumnModel()
        .getSelectionModel()
        .setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
    setShowGrid(false);
    setIntercellSpacing(new Dimension(0, 0));
    setFillsViewportHeight(true);
    setTerminateEditOnFocusLost(true);
    setSurrendersFocusOnKeystroke(true);
    putClientProperty("JTable.autoStartsEdit", false);
    putClientProperty("terminateEditOnFocusLost", true);
    addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyTyped(KeyEvent event) {
            typed(event);
          }
        });
    scaleRows();
  }

  /** What the editor needs of the table. */
  private final class Editing implements EntryEditor.Host {
    @Override
    public Optional<Column> declared(int row, int column) {
      return EntryTable.this.declared(row, column);
    }

    @Override
    public String typed(Column column, int row) {
      return looks.typed(column, bookRow(row));
    }

    @Override
    public List<String> choices(Column column) {
      return book.choices(column);
    }

    @Override
    public void leave(int down, int right) {
      commit();
      requestFocusInWindow();
      int row = leadRow() + down;
      int column = leadColumn() + right;
      if (row >= 0 && row < getRowCount() && column >= 0 && column < getColumnCount()) {
        changeSelection(row, column, false, false);
      }
    }
  }

  /** None: all cells are painted by one painter, and the many that are usual are slow to make. */
  @Override
  protected void createDefaultRenderers() {
    defaultRenderersByColumnClass = new UIDefaults(1, 1);
  }

  /** None: all cells have one editor. */
  @Override
  protected void createDefaultEditors() {
    defaultEditorsByColumnClass = new UIDefaults(1, 1);
  }

  @Override
  public ColumnFactory getColumnFactory() {
    return COLUMNS;
  }

  /** Returns the column of the book that a cell shows; empty for headings. */
  abstract Optional<Column> declared(int row, int column);

  /** Returns the row of the book that a row shows; the number of rows where it is a new one. */
  abstract int bookRow(int row);

  /** Says whether a thicker line follows a column. */
  abstract boolean lastOfGroup(int column);

  /** Returns pale words that stand in a cell with nothing in it. */
  abstract String hint(int row, int column);

  /**
   * Returns the words that say what a cell is: what stands beside it in a form, and in a sheet, of
   * row -1, the heading of its column; else nothing.
   */
  abstract String label(int row, int column);

  /** Says whether Tab goes on in the next row after the last column. */
  boolean wrapsTab() {
    return true;
  }

  /** Says whether a row is the one in which a new one begins. */
  boolean isNew(int row) {
    return false;
  }

  /** Puts what was typed into a cell. */
  abstract void enter(int row, int column, String text);

  Book book() {
    return book;
  }

  Edits edits() {
    return edits;
  }

  CellLooks looks() {
    return looks;
  }

  void setFlags(Function<CellPlace, Optional<Severity>> wanted) {
    flags = wanted;
    repaint();
  }

  void setFacts(Function<CellPlace, String> wanted) {
    facts = wanted;
  }

  Optional<Severity> flag(int row, int column) {
    return place(row, column).flatMap(flags);
  }

  Optional<Severity> flag(CellPlace place) {
    return flags.apply(place);
  }

  /** Returns the cell of the book that a cell shows; empty in headings and in the new row. */
  Optional<CellPlace> place(int row, int column) {
    if (row < 0 || column < 0 || row >= getRowCount() || column >= getColumnCount()) {
      return Optional.empty();
    }
    int at = bookRow(row);
    return declared(row, column)
        .filter(found -> at >= 0 && at < book.rows(found.reference().table()))
        .map(found -> new CellPlace(found.reference(), at));
  }

  /** Returns what a person put on a cell; nothing where no cell of the book is shown. */
  Remark remark(int row, int column) {
    return place(row, column)
        .map(cell -> book.remark(cell.column(), cell.row()))
        .orElse(Remark.NONE);
  }

  /** Says whether the field in which a person types stands in a cell. */
  boolean isEditingAt(int row, int column) {
    return isEditing() && row == getEditingRow() && column == getEditingColumn();
  }

  int leadRow() {
    return getSelectionModel().getLeadSelectionIndex();
  }

  int leadColumn() {
    return getColumnModel().getSelectionModel().getLeadSelectionIndex();
  }

  /** Says whether a person may type into a cell. */
  boolean takesEntries(int row, int column) {
    return declared(row, column).filter(found -> typeable(book, found)).isPresent();
  }

  /** Says whether a person may type into a column: not where it names rows that are given. */
  static boolean typeable(Book book, Column column) {
    return book.schema().table(column.reference().table()).takesEntries(column);
  }

  /** Says whether a person may choose the content of a cell from a list. */
  boolean chooses(int row, int column) {
    return takesEntries(row, column)
        && declared(row, column)
            .filter(found -> found.content() == Column.Content.CHOICE)
            .isPresent();
  }

  static int chevronWidth() {
    return UIScale.scale(20);
  }

  /** Opens the list of a cell that has the focus when its mark is pressed. */
  @Override
  protected void processMouseEvent(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    int column = columnAtPoint(event.getPoint());
    boolean pressed =
        event.getID() == MouseEvent.MOUSE_PRESSED && SwingUtilities.isLeftMouseButton(event);
    if (pressed && !isEditing() && row == leadRow() && column == leadColumn() && row >= 0) {
      Rectangle cell = getCellRect(row, column, false);
      boolean onMark = event.getX() >= cell.x + cell.width - chevronWidth();
      if (onMark && chooses(row, column) && beginEditing(EntryEditor.Beginning.fromList())) {
        event.consume();
        return;
      }
    }
    if (pressed && event.getClickCount() == 2 && clicked(leadRow(), leadColumn())) {
      // the first click may have scrolled another cell beneath the pointer
      beginEditing(EntryEditor.Beginning.inPlace());
      event.consume();
      return;
    }
    super.processMouseEvent(event);
    if (pressed) {
      clickedRow = leadRow();
      clickedColumn = leadColumn();
    }
  }

  private boolean clicked(int row, int column) {
    return !isEditing() && row >= 0 && row == clickedRow && column == clickedColumn;
  }

  /** Returns the space left of and right of the words of a cell. */
  static int padding() {
    return UIScale.scale(7);
  }

  /** Makes rows high enough for the font, with some air. */
  final void scaleRows() {
    setRowHeight(getFontMetrics(getFont()).getHeight() + UIScale.scale(10));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (looks != null) {
      scaleRows();
      editor.updateUI();
    }
  }

  @Override
  public Color getBackground() {
    return looks == null ? super.getBackground() : Palette.current().paper();
  }

  /** Does nothing: see {@link #setSelectionForeground}. */
  @Override
  public void setSelectionBackground(Color color) {}

  /**
   * Does nothing: cells are painted in colours of the program's own, and the look changes these two
   * whenever the focus comes or goes, each time painting the whole table for it.
   */
  @Override
  public void setSelectionForeground(Color color) {}

  private void typed(KeyEvent event) {
    char sign = event.getKeyChar();
    boolean command =
        (event.isControlDown() != event.isAltDown()) || (event.isMetaDown() && !event.isAltDown());
    boolean selects = sign == ' ' && event.isShiftDown() && !isEditing();
    if (event.isConsumed()
        || selects
        || (command && !event.isAltGraphDown())
        || sign == KeyEvent.CHAR_UNDEFINED
        || Character.isISOControl(sign)) {
      return;
    }
    if (isEditing()) {
      editor.append(sign);
    } else if (takesEntries(leadRow(), leadColumn())) {
      beginEditing(EntryEditor.Beginning.typing(sign));
    } else {
      refuse();
    }
    event.consume();
  }

  /** Sets who says why nothing is typed into a cell, and what can be done instead. */
  void onRefused(Consumer<CellPlace> who) {
    refused = who;
  }

  private void refuse() {
    place(leadRow(), leadColumn()).ifPresent(refused);
  }

  /** Scrolls so that a cell is seen whole. */
  void showCell(int row, int column) {
    scrollRectToVisible(getCellRect(row, column, false));
  }

  /** Returns the width of the columns that stay where they are while others scroll. */
  int stayingWidth() {
    return 0;
  }

  /** Scrolls to the first column. */
  void showFirstColumn() {}

  /** Scrolls down by rows, or up. */
  final void scrollRows(int rows) {
    if (getParent() instanceof JViewport viewport) {
      Point at = viewport.getViewPosition();
      int most = Math.max(0, getHeight() - viewport.getHeight());
      int y = Math.max(0, Math.min(most, at.y + rows * getRowHeight()));
      viewport.setViewPosition(new Point(at.x, y));
    }
  }

  /** Begins to edit the cell that has the focus, if one may type into it. */
  boolean beginEditing(EntryEditor.Beginning beginning) {
    int row = leadRow();
    int column = leadColumn();
    if (row < 0 || column < 0 || !takesEntries(row, column)) {
      refuse();
      return false;
    }
    showCell(row, column);
    editor.prepare(beginning);
    if (!super.editCellAt(row, column, null)) {
      return false;
    }
    editor.begin();
    return true;
  }

  @Override
  public boolean editCellAt(int row, int column, EventObject event) {
    if (event instanceof MouseEvent mouse) {
      boolean twice = mouse.getClickCount() == 2 && mouse.getID() == MouseEvent.MOUSE_PRESSED;
      return twice && takesEntries(row, column) && beginAt(row, column);
    }
    return takesEntries(row, column) && beginAt(row, column);
  }

  private boolean beginAt(int row, int column) {
    if (leadRow() != row || leadColumn() != column) {
      changeSelection(row, column, false, false);
    }
    return beginEditing(EntryEditor.Beginning.inPlace());
  }

  @Override
  public void editingStopped(ChangeEvent event) {
    if (isEditing()) {
      String text = String.valueOf(getCellEditor().getCellEditorValue());
      int row = getEditingRow();
      int column = getEditingColumn();
      removeEditor();
      enter(row, column, text);
    }
  }

  /** Ends editing and keeps what was typed. */
  void commit() {
    if (isEditing()) {
      getCellEditor().stopCellEditing();
    }
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    int column = columnAtPoint(event.getPoint());
    if (row < 0 || column < 0) {
      return null;
    }
    String tip =
        declared(row, column)
            .map(found -> tip(looks.look(found, bookRow(row)), row, column))
            .orElse("");
    String note = remark(row, column).note();
    if (!note.isEmpty()) {
      return ColumnTip.withNote(note, tip);
    }
    return tip.isEmpty() ? null : tip;
  }

  private String tip(CellLook look, int row, int column) {
    if (!look.sentence().isEmpty()) {
      return look.sentence();
    }
    if (look.standing() == CellLook.Standing.OVERRIDDEN) {
      return "Typed over the default; delete it to get the default back.";
    }
    Optional<String> sum =
        declared(row, column)
            .map(found -> looks.entered(found, bookRow(row)))
            .filter(Arithmetic::begins);
    if (sum.isPresent()) {
      return sum.get();
    }
    String fact = place(row, column).map(facts).orElse("");
    if (!fact.isEmpty()) {
      return fact;
    }
    int room = getCellRect(row, column, false).width - 2 * padding();
    return getFontMetrics(getFont()).stringWidth(look.text()) > room ? look.text() : "";
  }
}
