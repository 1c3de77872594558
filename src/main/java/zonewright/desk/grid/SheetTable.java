package zonewright.desk.grid;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.SwingConstants;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/**
 * The cells of a table with many rows. Its first columns can stay where they are while the others
 * scroll beneath them.
 */
final class SheetTable extends EntryTable {
  private final transient SheetModel model;
  private final CellPainter painter = new CellPainter();
  private int frozen;
  private transient IntConsumer packs = column -> {};
  private transient Overlay overlay = new Nothing();

  /** While painting, columns stand where they would without freezing. */
  private boolean asIfThawed;

  SheetTable(SheetModel model, Book book, CellLooks looks) {
    super(model, book, looks);
    this.model = model;
    setDefaultRenderer(Object.class, new CellPainter());
    setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    getAccessibleContext().setAccessibleName(model.table().title());
    getAccessibleContext()
        .setAccessibleDescription(
            "Grid with one row a %s. Type to replace, F2 to edit. %s"
                .formatted(model.table().rowWord(), model.table().about())
                .strip());
  }

  SheetModel sheet() {
    return model;
  }

  @Override
  Optional<Column> declared(int row, int column) {
    return model.column(convertColumnIndexToModel(column));
  }

  Column columnAt(int column) {
    return model.column(convertColumnIndexToModel(column)).orElseThrow();
  }

  @Override
  int bookRow(int row) {
    return model.shown().bookRow(row);
  }

  /** Returns the column at which the person is: empty where none, or the first, has the focus. */
  Optional<Optional<Column>> columnUnderLead() {
    int at = leadColumn();
    return at < 0 || at >= getColumnCount()
        ? Optional.empty()
        : Optional.of(Optional.of(columnAt(at)));
  }

  /** Shows only the rows of the book that pass; what is selected stays so where it is shown. */
  void filter(IntPredicate passes) {
    commit();
    int lead = bookRow(Math.max(0, leadRow()));
    int column = Math.max(0, leadColumn());
    model.shown().only(passes);
    model.reload();
    int at = model.shown().place(lead);
    if (getRowCount() > 0) {
      changeSelection(Math.max(0, Math.min(at, getRowCount() - 1)), column, false, false);
    }
  }

  /** Says whether something was found in a row of the book. */
  boolean hasFinding(int bookRow) {
    return model.table().columns().stream()
        .anyMatch(column -> flag(new CellPlace(column.reference(), bookRow)).isPresent());
  }

  @Override
  boolean lastOfGroup(int column) {
    return column == frozenColumns() - 1
        || (column + 1 < getColumnCount()
            && !columnAt(column).band().equals(columnAt(column + 1).band()));
  }

  @Override
  String label(int row, int column) {
    return row < 0 ? columnAt(column).heading(book().system()) : "";
  }

  @Override
  String hint(int row, int column) {
    return column == 0 && model.isNew(row) ? newRowWords() : "";
  }

  /** Returns what stands in the row in which a new one begins; nothing where there is none. */
  String newRowWords() {
    return model.grows() ? "new " + model.table().rowWord() : "";
  }

  @Override
  boolean isNew(int row) {
    return model.isNew(row);
  }

  /** Returns the columns shown, in their order. */
  List<Reference> shownColumns() {
    List<Reference> shown = new ArrayList<>();
    for (int at = 0; at < getColumnCount(); at++) {
      shown.add(columnAt(at).reference());
    }
    return shown;
  }

  @Override
  void enter(int row, int column, String text) {
    Reference reference = columnAt(column).reference();
    if (model.isNew(row)) {
      if (!text.isBlank()) {
        book()
            .perform(
                edits()
                    .pasted(
                        model.table().id(),
                        List.of(reference),
                        List.of(bookRow(row)),
                        0,
                        List.of(List.of(text))));
      }
    } else {
      book().perform(edits().typed(reference, bookRow(row), text));
    }
  }

  /** Keeps the first columns in view. */
  void freeze(int columns) {
    frozen = columns;
    repaint();
    getTableHeader().repaint();
  }

  /** Returns how many columns a person wants to stay in view. */
  int chosenFrozen() {
    return frozen;
  }

  /** Returns how many columns stay in view now: none where they would leave too little room. */
  int frozenColumns() {
    int count = Math.min(frozen, getColumnCount());
    return widthOf(count) * 2 > getVisibleRect().width ? 0 : count;
  }

  private int widthOf(int columns) {
    int width = 0;
    for (int at = 0; at < columns; at++) {
      width += getColumnModel().getColumn(at).getWidth();
    }
    return width;
  }

  @Override
  int stayingWidth() {
    return frozenWidth();
  }

  /** Returns the width of the columns that stay in view. */
  int frozenWidth() {
    return widthOf(frozenColumns());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    paintCells(graphics);
    Graphics2D marks = (Graphics2D) graphics.create();
    overlay.paint(marks);
    marks.dispose();
    if (model.shown().count() == 0) {
      String words = emptyWords();
      EmptyHint.paint(graphics, words, getVisibleRect(), getRowCount() * getRowHeight(), getFont());
    }
  }

  private String emptyWords() {
    TableDefinition table = model.table();
    String other = table.other().map(id -> book().schema().table(id).title()).orElse("");
    return EmptyHint.words(table, book().rows(table.id()) > 0, other);
  }

  /** What lies over the cells and is asked before them what the mouse means. */
  interface Overlay {
    /** Paints it. */
    void paint(Graphics2D g);

    /** Says whether a mouse event was meant for it, and does what it means. */
    boolean takes(MouseEvent event);
  }

  /** Nothing lies over the cells. */
  private static final class Nothing implements Overlay {
    @Override
    public void paint(Graphics2D g) {}

    @Override
    public boolean takes(MouseEvent event) {
      return false;
    }
  }

  /** Lays something over the cells. */
  void lay(Overlay over) {
    overlay = over;
  }

  @Override
  protected void processMouseEvent(MouseEvent event) {
    if (overlay.takes(event)) {
      event.consume();
    } else {
      super.processMouseEvent(event);
    }
  }

  @Override
  protected void processMouseMotionEvent(MouseEvent event) {
    if (overlay.takes(event)) {
      event.consume();
    } else {
      super.processMouseMotionEvent(event);
    }
  }

  private void paintCells(Graphics graphics) {
    Rectangle seen = getVisibleRect();
    int width = frozenWidth();
    if (width == 0 || seen.x == 0) {
      asIfThawed = true;
      paintSeen(graphics.create());
      asIfThawed = false;
      return;
    }
    asIfThawed = true;
    Graphics right = graphics.create();
    right.clipRect(seen.x + width, seen.y, seen.width - width, seen.height);
    paintSeen(right);
    Graphics left = graphics.create();
    left.translate(seen.x, 0);
    left.clipRect(0, seen.y, width, seen.height);
    paintSeen(left);
    asIfThawed = false;
  }

  private void paintSeen(Graphics graphics) {
    if (!graphics.getClipBounds().isEmpty()) {
      painter.paintCells((Graphics2D) graphics, this);
    }
    graphics.dispose();
  }

  @Override
  public Rectangle getCellRect(int row, int column, boolean spacing) {
    Rectangle cell = super.getCellRect(row, column, spacing);
    if (!asIfThawed && column >= 0 && column < frozenColumns()) {
      cell.x += getVisibleRect().x;
    }
    return cell;
  }

  @Override
  public int columnAtPoint(Point point) {
    int left = getVisibleRect().x;
    boolean overFrozen = point.x >= left && point.x < left + frozenWidth();
    return super.columnAtPoint(
        !asIfThawed && overFrozen ? new Point(point.x - left, point.y) : point);
  }

  /** Selects a cell and scrolls to it: by whole columns, and never beneath those that stay. */
  @Override
  public void changeSelection(int row, int column, boolean toggle, boolean extend) {
    boolean scrolls = getAutoscrolls();
    setAutoscrolls(false);
    super.changeSelection(row, column, toggle, extend);
    setAutoscrolls(scrolls);
    if (scrolls) {
      showCell(row, column);
    }
  }

  @Override
  void showCell(int row, int column) {
    if (row < 0 || column < 0 || !(getParent() instanceof JViewport viewport)) {
      return;
    }
    Point at = viewport.getViewPosition();
    Rectangle cell = getCellRect(row, column, false);
    int y = Math.max(Math.min(at.y, cell.y), cell.y + cell.height - viewport.getHeight());
    int x = column < frozenColumns() ? at.x : showing(column, at.x, viewport.getWidth());
    viewport.setViewPosition(new Point(x, Math.max(0, Math.min(y, cell.y))));
  }

  /** Returns how far to scroll so that a column that scrolls is seen whole. */
  private int showing(int column, int now, int room) {
    int start = widthOf(column);
    int width = getColumnModel().getColumn(column).getWidth();
    int latest = start - frozenWidth();
    if (now > latest) {
      return latest;
    }
    return start + width <= now + room ? now : Math.min(latest, boundaryFrom(start + width - room));
  }

  @Override
  void showFirstColumn() {
    if (getParent() instanceof JViewport viewport) {
      viewport.setViewPosition(new Point(0, viewport.getViewPosition().y));
    }
  }

  /**
   * Returns the least scroll, no less than one, at which a column begins beside those that stay.
   */
  private int boundaryFrom(int least) {
    int boundary = 0;
    for (int at = frozenColumns(); at < getColumnCount() && boundary < least; at++) {
      boundary += getColumnModel().getColumn(at).getWidth();
    }
    return boundary;
  }

  /** Returns the scroll nearest to one at which a column begins beside those that stay. */
  int snapped(int wanted) {
    int after = boundaryFrom(wanted);
    int before = after == wanted ? after : stepped(after, -1);
    return wanted - before < after - wanted ? before : after;
  }

  /** Wide enough for the last column to begin beside those that stay in view. */
  @Override
  public Dimension getPreferredSize() {
    Dimension size = super.getPreferredSize();
    if (getParent() instanceof JViewport viewport && size.width > viewport.getWidth()) {
      int room = viewport.getWidth();
      size.width = Math.max(size.width, boundaryFrom(size.width - room) + room);
    }
    return size;
  }

  /** Leaves columns as wide as they are: what is beyond the last one is nobody's. */
  @Override
  public void doLayout() {}

  @Override
  public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
    return orientation == SwingConstants.VERTICAL
        ? super.getScrollableUnitIncrement(seen, orientation, direction)
        : Math.abs(stepped(seen.x, direction) - seen.x);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
    int page = Math.max(1, seen.width - frozenWidth());
    return orientation == SwingConstants.VERTICAL
        ? super.getScrollableBlockIncrement(seen, orientation, direction)
        : Math.abs(snapped(Math.max(0, seen.x + direction * page)) - seen.x);
  }

  /** Returns the scroll one column on, or back. */
  private int stepped(int now, int direction) {
    if (direction > 0) {
      return boundaryFrom(now + 1);
    }
    int before = 0;
    for (int at = frozenColumns(); at < getColumnCount(); at++) {
      int next = before + getColumnModel().getColumn(at).getWidth();
      if (next >= now) {
        return before;
      }
      before = next;
    }
    return before;
  }

  /** Sets what fits a column to all that stands in it. */
  void onPack(IntConsumer fits) {
    packs = fits;
  }

  @Override
  public void packColumn(int column, int margin) {
    packs.accept(column);
  }

  /** Puts the field one types into where its cell is now. */
  void scrolled() {
    if (isEditing() && getEditorComponent() != null) {
      getEditorComponent().setBounds(getCellRect(getEditingRow(), getEditingColumn(), false));
    }
  }
}
