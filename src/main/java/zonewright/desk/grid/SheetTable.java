package zonewright.desk.grid;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import javax.swing.JTable;
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

  /** Returns the width of the columns that stay in view. */
  int frozenWidth() {
    return widthOf(frozenColumns());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    paintCells(graphics);
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

  /** Scrolls so that a cell is not hidden beneath the columns that stay in view. */
  @Override
  public void scrollRectToVisible(Rectangle wanted) {
    Rectangle seen = getVisibleRect();
    int width = frozenWidth();
    Rectangle clear = new Rectangle(wanted);
    boolean inFrozen = wanted.x >= seen.x && wanted.x + wanted.width <= seen.x + width;
    if (!inFrozen && wanted.x < seen.x + width) {
      clear.x -= width;
      clear.width = Math.min(wanted.width + width, Math.max(seen.width, 1));
    }
    super.scrollRectToVisible(clear);
  }

  /** Puts the field one types into where its cell is now. */
  void scrolled() {
    if (isEditing() && getEditorComponent() != null) {
      getEditorComponent().setBounds(getCellRect(getEditingRow(), getEditingColumn(), false));
    }
  }
}
