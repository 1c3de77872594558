package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;

/** Components in a line that goes on below where the width ends, as high as its lines are. */
final class WrappingFlow extends FlowLayout {
  WrappingFlow() {
    super(LEADING, UIScale.scale(6), UIScale.scale(3));
  }

  @Override
  public Dimension preferredLayoutSize(Container target) {
    Insets insets = target.getInsets();
    int width = width(target) - insets.left - insets.right - 2 * getHgap();
    int widest = 0;
    int height = 0;
    int line = 0;
    int lineHeight = 0;
    for (Component component : target.getComponents()) {
      if (!component.isVisible()) {
        continue;
      }
      Dimension size = component.getPreferredSize();
      int longer = line == 0 ? size.width : line + getHgap() + size.width;
      if (line > 0 && longer > width) {
        height += lineHeight + getVgap();
        lineHeight = 0;
        longer = size.width;
      }
      line = longer;
      lineHeight = Math.max(lineHeight, size.height);
      widest = Math.max(widest, line);
    }
    return new Dimension(
        widest + 2 * getHgap() + insets.left + insets.right,
        height + lineHeight + 2 * getVgap() + insets.top + insets.bottom);
  }

  /** Returns the width there is; before the first layout that of what it stands in. */
  private static int width(Container target) {
    Container wide = target;
    while (wide.getWidth() == 0 && wide.getParent() != null) {
      wide = wide.getParent();
    }
    return wide.getWidth() == 0 ? Integer.MAX_VALUE / 2 : wide.getWidth();
  }
}
