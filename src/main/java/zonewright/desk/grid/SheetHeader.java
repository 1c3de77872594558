package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.UIManager;
import javax.swing.event.ListSelectionEvent;
import javax.swing.table.TableColumnModel;
import org.jdesktop.swingx.JXTableHeader;
import zonewright.desk.part.Palette;
import zonewright.sheet.Column;

/** The headings: groups of columns above, then each column's name on two lines and its unit. */
final class SheetHeader extends JXTableHeader {
  SheetHeader(TableColumnModel columns) {
    super(columns);
    setReorderingAllowed(false);
    setOpaque(true);
  }

  private SheetTable sheet() {
    return (SheetTable) getTable();
  }

  static Font nameFont(Font base) {
    return base;
  }

  static Font unitFont(Font base) {
    Font small = UIManager.getFont("small.font");
    return small == null ? base.deriveFont(base.getSize2D() * 0.85f) : small;
  }

  private Font bandFont() {
    return unitFont(getFont()).deriveFont(Font.BOLD);
  }

  int bandHeight() {
    return getFontMetrics(bandFont()).getHeight() + UIScale.scale(7);
  }

  @Override
  public Dimension getPreferredSize() {
    FontMetrics names = getFontMetrics(nameFont(getFont()));
    FontMetrics units = getFontMetrics(unitFont(getFont()));
    int height =
        bandHeight() + 2 * names.getHeight() + units.getHeight() + UIScale.scale(6 + 2 + 6);
    return new Dimension(sheet().getPreferredSize().width, height);
  }

  /** Returns the least width at which the heading of a column is whole. */
  int leastWidth(Column column) {
    int name = WrappedName.of(column.name(), getFontMetrics(nameFont(getFont()))).width();
    int unit = getFontMetrics(unitFont(getFont())).stringWidth(unit(column));
    return Math.max(name, unit) + 2 * EntryTable.padding() + 2;
  }

  private String unit(Column column) {
    if (column.content() != Column.Content.NUMBER) {
      return "";
    }
    return column.kind().percent() ? "%" : column.kind().unit(sheet().book().system()).symbol();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    Marks.plain(g);
    Palette palette = Palette.current();
    g.setColor(palette.headingGround());
    g.fillRect(0, 0, getWidth(), getHeight());
    Rectangle seen = getVisibleRect();
    int frozen = sheet().frozenColumns();
    int frozenWidth = sheet().frozenWidth();
    int count = getColumnModel().getColumnCount();
    if (frozen == 0 || seen.x == 0) {
      paintColumns(g, palette, 0, count, 0);
    } else {
      Graphics2D right = (Graphics2D) g.create();
      right.clipRect(seen.x + frozenWidth, 0, seen.width, getHeight());
      paintColumns(right, palette, frozen, count, frozenWidth);
      right.dispose();
      Graphics2D left = (Graphics2D) g.create();
      left.clipRect(seen.x, 0, frozenWidth, getHeight());
      paintColumns(left, palette, 0, frozen, seen.x);
      left.dispose();
    }
    g.setColor(palette.strongLine());
    g.fillRect(0, getHeight() - 1, getWidth(), 1);
    g.setFont(unitFont(getFont()));
    Marks.words(g);
    for (int at = 0; at < count; at++) {
      int hidden = hiddenColumns().after(at).size();
      if (hidden > 0 && clearOfFrozen(at)) {
        hiddenColumns().paint(g, markPlace(at, hidden), hidden);
      }
    }
    g.dispose();
  }

  private HiddenColumns hiddenColumns() {
    return new HiddenColumns(sheet());
  }

  private boolean clearOfFrozen(int at) {
    Rectangle place = getHeaderRect(at);
    int clear = getVisibleRect().x + sheet().frozenWidth();
    return at < sheet().frozenColumns() || place.x + place.width > clear;
  }

  private Rectangle markPlace(int at, int hidden) {
    Rectangle place = getHeaderRect(at);
    Rectangle band = new Rectangle(place.x, 0, place.width, bandHeight());
    return hiddenColumns().place(band, hidden, getFontMetrics(unitFont(getFont())));
  }

  /** Returns the columns hidden where a point lies on the mark that says so; else none. */
  List<Column> hiddenAt(Point point) {
    int at = columnAtPoint(point);
    List<Column> hidden = at < 0 ? List.of() : hiddenColumns().after(at);
    return !hidden.isEmpty() && markPlace(at, hidden.size()).contains(point) ? hidden : List.of();
  }

  private void paintColumns(Graphics2D g, Palette palette, int from, int to, int left) {
    Rectangle clip = g.getClipBounds();
    int x = left;
    int bandStart = left;
    for (int at = from; at < to; at++) {
      int width = getColumnModel().getColumn(at).getWidth();
      Column column = sheet().columnAt(at);
      if (x + width > clip.x && x < clip.x + clip.width) {
        paintColumn(g, palette, column, at, new Rectangle(x, bandHeight(), width, getHeight()));
      }
      x += width;
      boolean ends = at + 1 == to || !column.band().equals(sheet().columnAt(at + 1).band());
      if (ends) {
        paintBand(g, palette, column.band(), new Rectangle(bandStart, 0, x - bandStart, 0));
        bandStart = x;
      }
    }
  }

  private void paintBand(Graphics2D g, Palette palette, String band, Rectangle place) {
    int height = bandHeight();
    g.setColor(palette.band(bands().indexOf(band)));
    g.fillRect(place.x, 0, place.width, height);
    g.setColor(palette.strongLine());
    g.fillRect(place.x + place.width - 1, 0, 1, getHeight());
    g.fillRect(place.x, height - 1, place.width, 1);
    g.setColor(palette.ink());
    g.setFont(bandFont());
    FontMetrics metrics = g.getFontMetrics();
    Rectangle seen = getVisibleRect();
    int clear = sheet().frozenWidth();
    int words = metrics.stringWidth(band);
    int pad = EntryTable.padding();
    boolean scrolls = place.x >= clear && seen.x > 0 && !isFrozenPlace(place, seen, clear);
    int start = scrolls ? Math.max(place.x, seen.x + clear) : place.x;
    int x = Math.min(start + pad, Math.max(place.x + pad, place.x + place.width - words - pad));
    Graphics2D inside = (Graphics2D) g.create();
    Marks.words(inside);
    inside.clipRect(place.x, 0, place.width - 1, height);
    inside.drawString(band, x, (height - 1 - metrics.getHeight()) / 2 + metrics.getAscent());
    inside.dispose();
  }

  private static boolean isFrozenPlace(Rectangle place, Rectangle seen, int clear) {
    return place.x >= seen.x && place.x + place.width <= seen.x + clear;
  }

  private void paintColumn(Graphics2D g, Palette palette, Column column, int at, Rectangle place) {
    int height = getHeight() - place.y;
    if (sheet().isColumnSelected(at)) {
      Color ground = palette.headingGround();
      g.setColor(palette.selected(ground));
      g.fillRect(place.x, place.y, place.width, height);
    }
    g.setColor(palette.line());
    g.fillRect(place.x + place.width - 1, place.y, 1, height);
    if (sheet().lastOfGroup(at)) {
      g.setColor(palette.strongLine());
      g.fillRect(place.x + place.width - 1, place.y, 1, height);
    }
    int pad = EntryTable.padding();
    Graphics2D inside = (Graphics2D) g.create();
    Marks.words(inside);
    inside.clipRect(place.x, place.y, place.width - 1, height);
    boolean right = column.content() == Column.Content.NUMBER;
    inside.setFont(nameFont(getFont()));
    FontMetrics metrics = inside.getFontMetrics();
    WrappedName name = WrappedName.within(column.name(), metrics, place.width - 2 * pad - 1);
    inside.setColor(palette.ink());
    int y = place.y + UIScale.scale(6) + metrics.getAscent();
    for (String line : name.lines()) {
      inside.drawString(line, textX(place, pad, right, metrics.stringWidth(line)), y);
      y += metrics.getHeight();
    }
    inside.setFont(unitFont(getFont()));
    FontMetrics small = inside.getFontMetrics();
    inside.setColor(palette.muted());
    String unit = unit(column);
    int bottom = getHeight() - UIScale.scale(6) - small.getDescent();
    inside.drawString(unit, textX(place, pad, right, small.stringWidth(unit)), bottom);
    inside.dispose();
  }

  private static int textX(Rectangle place, int pad, boolean right, int width) {
    return right ? place.x + place.width - 1 - pad - width : place.x + pad;
  }

  /** Returns the groups of columns in their order, hidden ones too. */
  List<String> bands() {
    List<String> bands = new ArrayList<>();
    for (Column column : sheet().sheet().table().columns()) {
      if (!bands.contains(column.band())) {
        bands.add(column.band());
      }
    }
    return bands;
  }

  @Override
  public int columnAtPoint(Point point) {
    int left = getVisibleRect().x;
    boolean overFrozen = point.x >= left && point.x < left + sheet().frozenWidth();
    return super.columnAtPoint(overFrozen ? new Point(point.x - left, point.y) : point);
  }

  @Override
  public Rectangle getHeaderRect(int at) {
    Rectangle place = super.getHeaderRect(at);
    if (at >= 0 && at < sheet().frozenColumns()) {
      place.x += getVisibleRect().x;
    }
    return place;
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int at = columnAtPoint(event.getPoint());
    List<Column> hidden = hiddenAt(event.getPoint());
    if (!hidden.isEmpty()) {
      return HiddenColumns.tip(hidden);
    }
    if (at < 0 || event.getY() < bandHeight()) {
      return null;
    }
    return ColumnTip.of(sheet().columnAt(at), sheet().book().system());
  }

  @Override
  public void columnSelectionChanged(ListSelectionEvent event) {
    super.columnSelectionChanged(event);
    repaint();
  }
}
