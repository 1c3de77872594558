package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import zonewright.desk.part.Palette;

/** The numbers of the rows, beside them; pressing one selects its row, dragging several. */
final class RowNumbers extends JPanel {
  private final SheetTable table;
  private int anchor;

  RowNumbers(SheetTable table) {
    this.table = table;
    setOpaque(true);
    getAccessibleContext().setAccessibleName("row numbers");
    table
        .getSelectionModel()
        .addListSelectionListener(event -> repaint(event.getFirstIndex(), event.getLastIndex()));
    table.getModel().addTableModelListener(event -> revalidate());
    MouseAdapter mouse =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            press(event);
          }

          @Override
          public void mouseDragged(MouseEvent event) {
            if (SwingUtilities.isLeftMouseButton(event)) {
              select(anchor, rowAt(event.getY()));
            }
          }
        };
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
  }

  private void repaint(int from, int to) {
    int height = table.getRowHeight();
    repaint(0, from * height, getWidth(), (to - from + 1) * height);
  }

  private int rowAt(int y) {
    int last = table.getRowCount() - 1;
    int row = table.rowAtPoint(new Point(0, Math.max(0, y)));
    return row < 0 ? last : row;
  }

  private void press(MouseEvent event) {
    if (table.getRowCount() == 0 || table.getColumnCount() == 0) {
      return;
    }
    table.commit();
    table.requestFocusInWindow();
    int row = rowAt(event.getY());
    boolean left = SwingUtilities.isLeftMouseButton(event);
    boolean inside = table.isRowSelected(row) && wholeRows();
    if (left && event.isShiftDown()) {
      select(Math.max(0, table.getSelectionModel().getAnchorSelectionIndex()), row);
    } else if (left || !inside) {
      anchor = row;
      select(row, row);
    }
  }

  /** Says whether whole rows are selected. */
  boolean wholeRows() {
    return table.getSelectedColumnCount() == table.getColumnCount();
  }

  private void select(int from, int to) {
    table.getColumnModel().getSelectionModel().setSelectionInterval(table.getColumnCount() - 1, 0);
    table.getSelectionModel().setSelectionInterval(from, to);
  }

  private Font numberFont() {
    return SheetHeader.unitFont(table.getFont());
  }

  @Override
  public Dimension getPreferredSize() {
    FontMetrics metrics = getFontMetrics(numberFont());
    String longest =
        "0"
            .repeat(
                Math.max(
                    2, Integer.toString(table.book().rows(table.sheet().table().id())).length()));
    return new Dimension(
        metrics.stringWidth(longest) + UIScale.scale(18), table.getPreferredSize().height);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    Marks.plain(g);
    Marks.words(g);
    Palette palette = Palette.current();
    Rectangle clip = g.getClipBounds();
    g.setColor(palette.headingGround());
    g.fillRect(clip.x, clip.y, clip.width, clip.height);
    int height = table.getRowHeight();
    int first = Math.max(0, clip.y / height);
    int last = Math.min(table.getRowCount() - 1, (clip.y + clip.height) / height);
    g.setFont(numberFont());
    FontMetrics metrics = g.getFontMetrics();
    for (int row = first; row <= last; row++) {
      int y = row * height;
      boolean selected = table.isRowSelected(row);
      if (selected) {
        g.setColor(palette.selected(palette.headingGround()));
        g.fillRect(0, y, getWidth(), height);
      }
      g.setColor(palette.line());
      g.fillRect(0, y + height - 1, getWidth(), 1);
      String number = table.sheet().isNew(row) ? "+" : Integer.toString(table.bookRow(row) + 1);
      g.setColor(selected ? palette.ink() : palette.muted());
      int x = getWidth() - UIScale.scale(8) - metrics.stringWidth(number);
      g.drawString(number, x, y + (height - 1 - metrics.getHeight()) / 2 + metrics.getAscent());
    }
    g.setColor(palette.strongLine());
    g.fillRect(getWidth() - 1, clip.y, 1, clip.height);
  }
}
