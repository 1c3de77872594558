package zonewright.desk.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.awt.Rectangle;
import java.util.HashMap;
import java.util.Map;
import org.jdesktop.swingx.JXPanel;
import org.jdesktop.swingx.ScrollableSizeHint;

/**
 * Components below each other over the full width, each as high as it wants to be at that width.
 *
 * <p>Made for prose that wraps: its height is asked for only once its width is known.
 */
public final class StackPanel extends JXPanel {
  public StackPanel() {
    super(new Stacked());
    setOpaque(false);
    setScrollableWidthHint(ScrollableSizeHint.FIT);
    setScrollableHeightHint(ScrollableSizeHint.PREFERRED_STRETCH);
  }

  /** Adds a component with a gap above it, in unscaled pixels. */
  public void stack(Component component, int gapAbove) {
    add(component, Integer.valueOf(gapAbove));
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return getFontMetrics(getFont()).getHeight();
  }

  private static final class Stacked implements LayoutManager2 {
    private final Map<Component, Integer> gaps = new HashMap<>();

    @Override
    public void addLayoutComponent(Component component, Object gap) {
      gaps.put(component, gap instanceof Integer pixels ? pixels : 0);
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
      gaps.put(component, 0);
    }

    @Override
    public void removeLayoutComponent(Component component) {
      gaps.remove(component);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      int width = parent.getWidth() > 0 ? parent.getWidth() : 320;
      return new Dimension(width, place(parent, width, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
      return new Dimension(120, 0);
    }

    @Override
    public Dimension maximumLayoutSize(Container parent) {
      return new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
    }

    @Override
    public void layoutContainer(Container parent) {
      place(parent, parent.getWidth(), true);
    }

    private int place(Container parent, int width, boolean really) {
      Insets insets = parent.getInsets();
      int inner = Math.max(1, width - insets.left - insets.right);
      int y = insets.top;
      for (Component component : parent.getComponents()) {
        if (!component.isVisible()) {
          continue;
        }
        y += UIScale.scale(gaps.getOrDefault(component, 0));
        if (component.getWidth() != inner) {
          component.setSize(inner, Math.max(1, component.getHeight()));
        }
        int height = component.getPreferredSize().height;
        if (really) {
          component.setBounds(insets.left, y, inner, height);
        }
        y += height;
      }
      return y + insets.bottom;
    }

    @Override
    public float getLayoutAlignmentX(Container parent) {
      return 0;
    }

    @Override
    public float getLayoutAlignmentY(Container parent) {
      return 0;
    }

    @Override
    public void invalidateLayout(Container parent) {}
  }
}
