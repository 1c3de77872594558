package zonewright.desk.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import javax.swing.border.AbstractBorder;

/** A line around a part in the colour of its text, which follows the look. */
public final class BoxBorder extends AbstractBorder {
  private static final long serialVersionUID = 1L;

  private final int thickness;

  /** Makes a border of so many pixels at the usual size. */
  public BoxBorder(int thickness) {
    this.thickness = thickness;
  }

  @Override
  public Insets getBorderInsets(Component part, Insets insets) {
    int all = UIScale.scale(thickness);
    insets.set(all, all, all, all);
    return insets;
  }

  @Override
  public void paintBorder(Component part, Graphics pen, int x, int y, int width, int height) {
    pen.setColor(part.getForeground());
    for (int line = 0; line < UIScale.scale(thickness); line++) {
      pen.drawRect(x + line, y + line, width - 1 - 2 * line, height - 1 - 2 * line);
    }
  }
}
