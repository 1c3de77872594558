package zonewright.desk.grid;

import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import zonewright.desk.part.Palette;

/** The corner above the row numbers; pressing it selects all. */
final class GridCorner extends JComponent {
  GridCorner(SheetTable table) {
    setOpaque(true);
    setToolTipText("Select all");
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            table.commit();
            table.requestFocusInWindow();
            table.selectAll();
          }
        });
  }

  @Override
  protected void paintComponent(Graphics g) {
    Palette palette = Palette.current();
    g.setColor(palette.headingGround());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setColor(palette.strongLine());
    g.fillRect(getWidth() - 1, 0, 1, getHeight());
    g.fillRect(0, getHeight() - 1, getWidth(), 1);
  }
}
