package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellRenderer;
import zonewright.desk.grid.CellLook.Standing;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;

/**
 * Paints one cell: what stands in it, how that came about, and marks that say so without colour.
 */
final class CellPainter extends JLabel implements TableCellRenderer {
  private transient CellLook look = CellLook.NOTHING;
  private transient Optional<Column> column = Optional.empty();
  private transient Optional<Severity> flag = Optional.empty();
  private boolean selected;
  private boolean lead;
  private boolean focused;
  private boolean lastOfGroup;
  private boolean typeable;
  private boolean fresh;
  private boolean chooses;
  private String hint = "";

  CellPainter() {
    setOpaque(true);
  }

  /** Returns the space left of and right of the words of a cell. */
  static int padding() {
    return UIScale.scale(7);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
    EntryTable grid = (EntryTable) table;
    column = grid.declared(row, at);
    int bookRow = grid.bookRow(row);
    look = column.map(declared -> grid.looks().look(declared, bookRow)).orElse(CellLook.NOTHING);
    typeable = grid.takesEntries(row, at);
    fresh = grid.isNew(row);
    chooses = grid.chooses(row, at);
    flag = grid.flag(row, at);
    selected = isSelected;
    lead = row == grid.leadRow() && at == grid.leadColumn();
    focused = grid.isFocusOwner() || grid.isEditing();
    lastOfGroup = grid.lastOfGroup(at);
    hint = grid.hint(row, at);
    setFont(grid.getFont());
    setText(look.text());
    return this;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    Marks.plain(g);
    Palette palette = Palette.current();
    int width = getWidth();
    int height = getHeight();
    Color ground = ground(palette);
    g.setColor(selected && !lead ? palette.selected(ground) : ground);
    g.fillRect(0, 0, width, height);
    g.setColor(palette.line());
    g.fillRect(0, height - 1, width, 1);
    g.setColor(lastOfGroup ? palette.strongLine() : palette.line());
    g.fillRect(width - 1, 0, 1, height);
    Marks.smooth(g);
    Rectangle inside = new Rectangle(padding(), 0, width - 2 * padding() - 1, height - 1);
    int right = width;
    if (lead && chooses) {
      int side = EntryTable.chevronWidth();
      Marks.chevron(g, palette.muted(), width - side, 0, side, height - 1);
      inside.width -= side - padding();
      right -= side;
    }
    if (flag.isPresent() && look.standing() != Standing.REFUSED) {
      int mark = UIScale.scale(10);
      int at = rightAligned() ? UIScale.scale(5) : right - mark;
      Marks.finding(g, flag.get(), palette, at, height);
      inside.width -= mark;
      if (rightAligned()) {
        inside.x += mark;
      }
    }
    if (look.standing() == Standing.OVERRIDDEN) {
      Marks.corner(g, palette.accent());
    }
    if (look.standing() == Standing.REFUSED) {
      int side = UIScale.scale(12);
      Marks.warning(g, palette.severity(Severity.WRONG), inside.x, (height - side) / 2, side);
      inside.x += side + UIScale.scale(5);
      inside.width -= side + UIScale.scale(5);
    }
    words(g, palette, inside);
    if (lead) {
      g.setColor(
          focused
              ? palette.strongAccent()
              : Palette.mix(palette.strongAccent(), palette.paper(), 0.75));
      g.setStroke(new BasicStroke(UIScale.scale(2f)));
      int half = UIScale.scale(1);
      g.drawRect(half, half, width - 2 * half - 1, height - 2 * half - 1);
    }
  }

  private Color ground(Palette palette) {
    if (column.isEmpty() || fresh || !typeable) {
      return palette.paper();
    }
    return look.standing() == Standing.DEFAULTED ? palette.defaultGround() : palette.inputGround();
  }

  private boolean rightAligned() {
    return column.isPresent() && column.get().content() == Column.Content.NUMBER;
  }

  private void words(Graphics2D g, Palette palette, Rectangle inside) {
    Standing standing = look.standing();
    boolean hinted = look.text().isEmpty() && !hint.isEmpty();
    Font font = getFont();
    switch (standing) {
      case DEFAULTED, NOT_APPLICABLE, MISSING, REFUSED_ELSEWHERE ->
          font = font.deriveFont(Font.ITALIC);
      default -> font = hinted ? font.deriveFont(Font.ITALIC) : font;
    }
    g.setFont(font);
    g.setColor(
        switch (standing) {
          case DEFAULTED -> palette.softInk();
          case NOT_APPLICABLE, MISSING -> palette.muted();
          case REFUSED -> palette.severity(Severity.WRONG);
          case REFUSED_ELSEWHERE -> palette.muted();
          default -> hinted ? palette.muted() : palette.ink();
        });
    FontMetrics metrics = g.getFontMetrics();
    String text = hinted ? hint : look.text();
    if (standing.reason() && metrics.stringWidth(text) > inside.width) {
      text = "–";
    }
    text =
        SwingUtilities.layoutCompoundLabel(
            this,
            metrics,
            text,
            null,
            SwingConstants.CENTER,
            SwingConstants.LEADING,
            SwingConstants.CENTER,
            SwingConstants.TRAILING,
            new Rectangle(inside),
            new Rectangle(),
            new Rectangle(),
            0);
    int width = metrics.stringWidth(text);
    int x = rightAligned() ? inside.x + inside.width - width : inside.x;
    int y = (getHeight() - 1 - metrics.getHeight()) / 2 + metrics.getAscent();
    g.drawString(text, x, y);
    if (standing == Standing.REFUSED) {
      Marks.wave(g, x, y + UIScale.scale(3), width);
    }
  }

  /** Says nothing: the painter stands for many cells and is never shown itself. */
  @Override
  protected void firePropertyChange(String name, Object before, Object after) {}

  @Override
  public void revalidate() {}

  @Override
  public void invalidate() {}

  @Override
  public void validate() {}

  @Override
  public void repaint(long in, int x, int y, int width, int height) {}
}
