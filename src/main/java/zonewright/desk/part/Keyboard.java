package zonewright.desk.part;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** Leads the keyboard through the parts of a window. */
public final class Keyboard {
  private Keyboard() {}

  /** A part of the window, and what takes the keyboard in it. */
  public interface Part {
    Component component();

    Component focusTarget();
  }

  /** Returns a part of the window. */
  public static Part part(Component component, Supplier<Component> target) {
    return new Part() {
      @Override
      public Component component() {
        return component;
      }

      @Override
      public Component focusTarget() {
        return target.get();
      }
    };
  }

  /** Gives the keyboard to the part after the one that has it, of those that are seen. */
  public static void next(List<Part> parts) {
    List<Part> seen = parts.stream().filter(part -> part.component().isShowing()).toList();
    int at = 0;
    for (int i = 0; i < seen.size(); i++) {
      if (has(seen.get(i).component())) {
        at = i + 1;
      }
    }
    seen.get(at % seen.size()).focusTarget().requestFocusInWindow();
  }

  /** Says whether the keyboard is in a part of the window. */
  public static boolean has(Component part) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && SwingUtilities.isDescendingFrom(owner, part);
  }
}
