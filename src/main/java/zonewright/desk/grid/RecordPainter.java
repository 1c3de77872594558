package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellRenderer;
import zonewright.desk.part.Palette;

/** Paints what stands beside the values of a one-row table: groups, names, units, meanings. */
final class RecordPainter extends JLabel implements TableCellRenderer {
  private boolean heading;
  private boolean selected;
  private int band;
  private int column;

  RecordPainter() {
    setOpaque(true);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
    RecordModel lines = (RecordModel) table.getModel();
    heading = lines.line(row).column().isEmpty();
    band = lines.bandPlace(row);
    column = at;
    selected = !heading && table.isRowSelected(row);
    boolean small = at == RecordModel.UNIT || at == RecordModel.MEANING;
    Font font = small ? SheetHeader.unitFont(table.getFont()) : table.getFont();
    setFont(heading ? SheetHeader.unitFont(table.getFont()).deriveFont(Font.BOLD) : font);
    setText(String.valueOf(value));
    return this;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    Marks.plain(g);
    Palette palette = Palette.current();
    Color ground = heading ? palette.band(band) : palette.paper();
    boolean tinted = selected && column == RecordModel.NAME;
    g.setColor(tinted ? palette.selected(palette.headingGround()) : ground);
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setColor(heading ? palette.strongLine() : palette.line());
    g.fillRect(0, getHeight() - 1, getWidth(), 1);
    Marks.words(g);
    boolean quiet = column == RecordModel.UNIT || column == RecordModel.MEANING;
    g.setColor(quiet ? palette.muted() : palette.ink());
    g.setFont(getFont());
    FontMetrics metrics = g.getFontMetrics();
    int left = column == RecordModel.NAME ? UIScale.scale(heading ? 10 : 18) : EntryTable.padding();
    Rectangle inside =
        new Rectangle(left, 0, getWidth() - left - EntryTable.padding(), getHeight());
    String text =
        SwingUtilities.layoutCompoundLabel(
            this,
            metrics,
            getText(),
            null,
            SwingConstants.CENTER,
            SwingConstants.LEADING,
            SwingConstants.CENTER,
            SwingConstants.TRAILING,
            inside,
            new Rectangle(),
            new Rectangle(),
            0);
    g.drawString(text, left, (getHeight() - 1 - metrics.getHeight()) / 2 + metrics.getAscent());
  }
}
