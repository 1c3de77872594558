package zonewright.desk.grid;

import java.awt.Point;
import javax.swing.JViewport;

/** What is seen of a sheet: scrolled across by whole columns, so that each starts whole. */
final class ColumnViewport extends JViewport {
  @Override
  public void setViewPosition(Point wanted) {
    super.setViewPosition(
        getView() instanceof SheetTable table
            ? new Point(table.snapped(wanted.x), wanted.y)
            : wanted);
  }
}
