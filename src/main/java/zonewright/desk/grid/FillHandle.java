package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import zonewright.desk.part.Palette;
import zonewright.formula.Reference;

/**
 * The small square at the lower right corner of what is selected: drawn down or up, it carries on
 * in further rows what the selected ones hold. Columns hold different things, so it goes no way
 * across.
 */
final class FillHandle implements SheetTable.Overlay {
  private final SheetTable table;

  /** The row up to which what is selected would be carried on; -1 while nothing is drawn. */
  private int to = -1;

  FillHandle(SheetTable table) {
    this.table = table;
  }

  private int firstRow() {
    return table.getSelectionModel().getMinSelectionIndex();
  }

  private int lastRow() {
    return table.getSelectionModel().getMaxSelectionIndex();
  }

  private int lastColumn() {
    return table.getColumnModel().getSelectionModel().getMaxSelectionIndex();
  }

  /** Returns where the square stands; nothing where it would be no use or out of sight. */
  Optional<Rectangle> place() {
    int row = lastRow();
    int column = lastColumn();
    boolean inTable = row >= 0 && row < table.sheet().shown().count() && column >= 0;
    if (!inTable || column >= table.getColumnCount() || table.isEditing() || columns().isEmpty()) {
      return Optional.empty();
    }
    Rectangle cell = table.getCellRect(row, column, false);
    int clear = table.getVisibleRect().x + table.frozenWidth();
    int side = UIScale.scale(7);
    Rectangle square =
        new Rectangle(cell.x + cell.width - side - 1, cell.y + cell.height - side - 1, side, side);
    boolean beneath = column >= table.frozenColumns() && square.x < clear;
    return beneath ? Optional.empty() : Optional.of(square);
  }

  private List<Reference> columns() {
    List<Reference> columns = new ArrayList<>();
    for (int at : table.getSelectedColumns()) {
      if (at < table.getColumnCount() && EntryTable.typeable(table.book(), table.columnAt(at))) {
        columns.add(table.columnAt(at).reference());
      }
    }
    return columns;
  }

  private boolean at(Point point) {
    return place().filter(square -> square.contains(point)).isPresent();
  }

  private boolean drawing() {
    return to >= 0;
  }

  @Override
  public boolean takes(MouseEvent event) {
    switch (event.getID()) {
      case MouseEvent.MOUSE_PRESSED -> {
        return SwingUtilities.isLeftMouseButton(event) && at(event.getPoint()) && press(event);
      }
      case MouseEvent.MOUSE_RELEASED -> {
        boolean drawn = drawing();
        if (drawn) {
          end(event.isControlDown());
        }
        return drawn;
      }
      case MouseEvent.MOUSE_DRAGGED -> {
        if (drawing()) {
          drawTo(event.getPoint());
        }
        return drawing();
      }
      case MouseEvent.MOUSE_MOVED -> {
        int shape = at(event.getPoint()) ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR;
        if (table.getCursor().getType() != shape) {
          table.setCursor(Cursor.getPredefinedCursor(shape));
        }
        return false;
      }
      default -> {
        return false;
      }
    }
  }

  private boolean press(MouseEvent event) {
    if (event.getClickCount() == 2) {
      toTheEnd();
    } else {
      to = lastRow();
    }
    return true;
  }

  /** Draws on to where the pointer is. */
  private void drawTo(Point point) {
    Rectangle seen = table.getVisibleRect();
    if (point.y >= seen.y + seen.height) {
      table.scrollRows(1);
    } else if (point.y < seen.y) {
      table.scrollRows(-1);
    }
    int last = table.sheet().shown().count() - 1;
    int row = Math.floorDiv(point.y, table.getRowHeight());
    to = Math.max(0, Math.min(last, row));
    table.repaint();
  }

  /** Carries on what is selected as far as was drawn; numbers count where {@code counts}. */
  private void end(boolean counts) {
    int reached = to;
    to = -1;
    table.repaint();
    if (reached > lastRow() || (reached >= 0 && reached < firstRow())) {
      fill(reached, counts);
    }
  }

  /** Carries on what is selected to the last row. */
  private void toTheEnd() {
    to = -1;
    int last = table.sheet().shown().count() - 1;
    if (last > lastRow()) {
      fill(last, false);
    }
  }

  private void fill(int reached, boolean counts) {
    List<Integer> given = rows(firstRow(), Math.min(lastRow(), table.sheet().shown().count() - 1));
    boolean down = reached > lastRow();
    List<Integer> further = down ? rows(lastRow() + 1, reached) : rows(reached, firstRow() - 1);
    if (!down) {
      Collections.reverse(given);
      Collections.reverse(further);
    }
    int first = Math.min(firstRow(), reached);
    int last = Math.max(lastRow(), reached);
    table.book().perform(table.edits().carriedOn(columns(), given, further, counts));
    table.getSelectionModel().setSelectionInterval(last, first);
  }

  private List<Integer> rows(int from, int to) {
    List<Integer> rows = new ArrayList<>();
    for (int row = from; row <= to; row++) {
      rows.add(table.bookRow(row));
    }
    return rows;
  }

  /** Paints the square, and while it is drawn the frame around what would be filled. */
  @Override
  public void paint(Graphics2D g) {
    Palette palette = Palette.current();
    Marks.plain(g);
    place()
        .filter(square -> square.intersects(g.getClipBounds()))
        .ifPresent(
            square -> {
              g.setColor(palette.paper());
              g.fillRect(square.x - 1, square.y - 1, square.width + 2, square.height + 2);
              g.setColor(palette.strongAccent());
              g.fillRect(square.x, square.y, square.width, square.height);
            });
    if (drawing()) {
      int left = table.getColumnModel().getSelectionModel().getMinSelectionIndex();
      Rectangle area =
          table
              .getCellRect(Math.min(firstRow(), to), left, false)
              .union(table.getCellRect(Math.max(lastRow(), to), lastColumn(), false));
      g.setColor(palette.strongAccent());
      float dash = UIScale.scale(4f);
      g.setStroke(
          new BasicStroke(
              UIScale.scale(2f),
              BasicStroke.CAP_BUTT,
              BasicStroke.JOIN_MITER,
              10,
              new float[] {dash, dash},
              0));
      g.drawRect(area.x + 1, area.y + 1, area.width - 3, area.height - 3);
    }
  }
}
