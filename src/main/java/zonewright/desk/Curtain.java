package zonewright.desk;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseMotionAdapter;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JRootPane;

/** Keeps hands off the window while another design is being read into it. */
final class Curtain extends JComponent {
  private final JRootPane root;
  private transient Optional<Component> before = Optional.empty();

  Curtain(JRootPane root) {
    this.root = root;
    setName("curtain");
    addMouseListener(new MouseAdapter() {});
    addMouseMotionListener(new MouseMotionAdapter() {});
    setFocusTraversalKeysEnabled(false);
    setCursor(Cursor.getPredefinedCursor(Cursor.WAIT_CURSOR));
    addKeyListener(
        new java.awt.event.KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent event) {
            event.consume();
          }
        });
  }

  /** Closes the window to mouse and keyboard. */
  void draw() {
    before =
        Optional.ofNullable(KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    root.setGlassPane(this);
    setVisible(true);
    requestFocusInWindow();
  }

  /** Opens it again; the keyboard is where it was before. */
  void lift() {
    setVisible(false);
    before.filter(Component::isShowing).ifPresent(Component::requestFocusInWindow);
  }
}
