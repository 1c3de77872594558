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
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.plaf.basic.BasicGraphicsUtils;
import javax.swing.table.TableCellRenderer;
import zonewright.desk.grid.CellLook.Standing;
import zonewright.desk.part.Palette;
import zonewright.sheet.Column;
import zonewright.sheet.Remark;
import zonewright.sheet.Severity;
import zonewright.sheet.Tint;

/**
 * Paints one cell: what stands in it, how that came about, and marks that say so without colour.
 */
final class CellPainter extends JLabel implements TableCellRenderer {
  /** What is marked with more than a ground, lines and words. */
  private static final Set<Standing> MARKED = EnumSet.of(Standing.OVERRIDDEN, Standing.REFUSED);

  private static final Set<Standing> SLANTED =
      EnumSet.of(
          Standing.DEFAULTED,
          Standing.NOT_APPLICABLE,
          Standing.MISSING,
          Standing.REFUSED_ELSEWHERE);

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
  private transient Remark remark = Remark.NONE;

  private Font upright;
  private Font italic;
  private transient FontMetrics uprightMetrics;
  private transient FontMetrics italicMetrics;

  CellPainter() {
    setOpaque(true);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
    show((EntryTable) table, row, at, isSelected);
    setFont(table.getFont());
    setText(look.text());
    return this;
  }

  /** Takes over what stands in a cell, which is then painted. */
  private void show(EntryTable grid, int row, int at, boolean isSelected) {
    column = grid.declared(row, at);
    int bookRow = grid.bookRow(row);
    look = column.map(declared -> grid.looks().look(declared, bookRow)).orElse(CellLook.NOTHING);
    typeable = column.filter(found -> EntryTable.typeable(grid.book(), found)).isPresent();
    fresh = grid.isNew(row);
    flag = grid.flag(row, at);
    selected = isSelected;
    lead = row == grid.leadRow() && at == grid.leadColumn();
    chooses = lead && grid.chooses(row, at);
    focused = lead && (grid.isFocusOwner() || grid.isEditing());
    hint = grid.hint(row, at);
    remark = grid.remark(row, at);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    begin(g, getFont());
    paintCell(g, getWidth(), getHeight());
  }

  /**
   * Paints all cells of a grid that meet the clip, one after the other and each right into its
   * place: what Swing does beside for each cell takes longer than the painting.
   */
  void paintCells(Graphics2D g, EntryTable grid) {
    Rectangle clip = g.getClipBounds();
    begin(g, grid.getFont());
    g.setColor(Palette.current().paper());
    g.fill(clip);
    int height = grid.getRowHeight();
    int from = Math.max(0, clip.y / height);
    int to = Math.min(grid.getRowCount(), (clip.y + clip.height + height - 1) / height);
    for (int at = 0; at < grid.getColumnCount() && from < to; at++) {
      Rectangle first = grid.getCellRect(from, at, false);
      if (first.x >= clip.x + clip.width || first.x + first.width <= clip.x) {
        continue;
      }
      lastOfGroup = grid.lastOfGroup(at);
      for (int row = from; row < to; row++) {
        if (!grid.isEditingAt(row, at)) {
          show(grid, row, at, grid.isCellSelected(row, at));
          int y = first.y + (row - from) * height;
          g.translate(first.x, y);
          paintCell(g, first.width, height);
          g.translate(-first.x, -y);
        }
      }
    }
  }

  private void begin(Graphics2D g, Font font) {
    Marks.plain(g);
    Marks.words(g);
    if (!font.equals(upright)) {
      upright = font;
      italic = font.deriveFont(Font.ITALIC);
    }
    uprightMetrics = g.getFontMetrics(upright);
    italicMetrics = g.getFontMetrics(italic);
  }

  private void paintCell(Graphics2D g, int width, int height) {
    Palette palette = Palette.current();
    Color plain = ground(palette);
    Optional<Color> tint = palette.tint(remark.tint());
    boolean refused = look.standing() == Standing.REFUSED;
    Color ground = refused ? plain : tint.orElse(plain);
    g.setColor(selected && !lead ? palette.selected(ground) : ground);
    g.fillRect(0, 0, width, height);
    if (refused && tint.isPresent()) {
      int strip = UIScale.scale(4);
      g.setColor(tint.get());
      g.fillRect(0, height - strip, width, strip);
    }
    g.setColor(palette.line());
    g.fillRect(0, height - 1, width, 1);
    g.setColor(lastOfGroup ? palette.strongLine() : palette.line());
    g.fillRect(width - 1, 0, 1, height);
    Rectangle inside =
        new Rectangle(EntryTable.padding(), 0, width - 2 * EntryTable.padding() - 1, height - 1);
    boolean flagged = flag.isPresent() && look.standing() != Standing.REFUSED;
    if (flagged || lead || MARKED.contains(look.standing()) || !remark.note().isEmpty()) {
      Marks.smooth(g);
      marks(g, palette, width, height, inside, flagged);
      Marks.plain(g);
    }
    words(g, palette, inside);
  }

  private void marks(
      Graphics2D g, Palette palette, int width, int height, Rectangle inside, boolean flagged) {
    int right = width;
    if (chooses) {
      int side = EntryTable.chevronWidth();
      Marks.chevron(g, palette.muted(), width - side, 0, side, height - 1);
      inside.width -= side - EntryTable.padding();
      right -= side;
    }
    if (flagged) {
      int mark = UIScale.scale(10);
      int at = rightAligned() ? UIScale.scale(5) : right - mark;
      if (tinted()) {
        g.setColor(ground(palette));
        g.fillRect(at - UIScale.scale(2), UIScale.scale(2), mark, height - UIScale.scale(5));
      }
      Marks.finding(g, flag.get(), palette, at, height);
      inside.width -= mark;
      if (rightAligned()) {
        inside.x += mark;
      }
    }
    if (look.standing() == Standing.OVERRIDDEN) {
      Marks.corner(g, palette.accent(), ground(palette), 0);
    }
    if (!remark.note().isEmpty()) {
      Marks.corner(g, palette.ink(), ground(palette), width - 1);
    }
    if (look.standing() == Standing.REFUSED) {
      int side = UIScale.scale(12);
      Marks.warning(g, palette.severity(Severity.WRONG), inside.x, (height - side) / 2, side);
      inside.x += side + UIScale.scale(5);
      inside.width -= side + UIScale.scale(5);
    }
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

  /** Says whether words stand on a person's colour, where they must not stand back. */
  private boolean tinted() {
    return remark.tint() != Tint.NONE && look.standing() != Standing.REFUSED;
  }

  private boolean rightAligned() {
    return column.isPresent() && column.get().content() == Column.Content.NUMBER;
  }

  private void words(Graphics2D g, Palette palette, Rectangle inside) {
    Standing standing = look.standing();
    boolean hinted = look.text().isEmpty() && !hint.isEmpty();
    String text = hinted ? hint : look.text();
    if (text.isEmpty()) {
      return;
    }
    boolean slanted = hinted || SLANTED.contains(standing);
    FontMetrics metrics = slanted ? italicMetrics : uprightMetrics;
    g.setFont(slanted ? italic : upright);
    g.setColor(tinted() ? palette.ink() : ink(palette, standing, hinted));
    int width = metrics.stringWidth(text);
    if (width > inside.width) {
      text =
          standing.reason()
              ? "–"
              : BasicGraphicsUtils.getClippedString(this, metrics, text, inside.width);
      width = metrics.stringWidth(text);
    }
    if (width <= inside.width) {
      int x = rightAligned() ? inside.x + inside.width - width : inside.x;
      int y = (inside.height - metrics.getHeight()) / 2 + metrics.getAscent();
      g.drawString(text, x, y);
      if (standing == Standing.REFUSED) {
        Marks.smooth(g);
        Marks.wave(g, x, y + UIScale.scale(3), width);
        Marks.plain(g);
      }
    }
  }

  private static Color ink(Palette palette, Standing standing, boolean hinted) {
    return switch (standing) {
      case DEFAULTED -> palette.softInk();
      case NOT_APPLICABLE, MISSING -> palette.muted();
      case REFUSED -> palette.severity(Severity.WRONG);
      case REFUSED_ELSEWHERE -> palette.muted();
      default -> hinted ? palette.muted() : palette.ink();
    };
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
