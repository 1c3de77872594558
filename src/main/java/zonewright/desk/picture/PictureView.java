package zonewright.desk.picture;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;
import zonewright.desk.part.Palette;

/** Shows a drawing in the window. */
public final class PictureView extends JPanel {
  private transient Drawing drawing = Drawing.saying("", "");

  /** Makes a view that shows nothing yet. */
  public PictureView() {
    setName("picture");
    setOpaque(false);
  }

  /** Shows a drawing. */
  public void show(Drawing wanted) {
    if (getClientProperty(FlatClientProperties.STYLE_CLASS) == null) {
      putClientProperty(FlatClientProperties.STYLE_CLASS, "small"); // slow the first time
    }
    drawing = wanted;
    getAccessibleContext().setAccessibleName(wanted.title());
    getAccessibleContext().setAccessibleDescription(wanted.inWords());
    setToolTipText(null);
    repaint();
  }

  /** Returns what is shown. */
  public Drawing drawing() {
    return drawing;
  }

  /** Returns the size to export in: that of the view on an unscaled screen, but not tiny. */
  public Dimension exportSize() {
    int width = Math.max(480, UIScale.unscale(getWidth()));
    int height = Math.max(260, UIScale.unscale(getHeight()));
    return new Dimension(width, height);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(340), UIScale.scale(150));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(UIScale.scale(120), UIScale.scale(60));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    Painting.smoothForScreen(pen);
    Painting.paint(drawing, pen, getSize(), getFont(), Palette.current(), UIScale.scale(1f), false);
    pen.dispose();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }
}
