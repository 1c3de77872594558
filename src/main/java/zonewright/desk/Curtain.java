package zonewright.desk;

import java.awt.Cursor;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseMotionAdapter;
import javax.swing.JComponent;
import javax.swing.JRootPane;

/** Keeps hands off the window while another design is being read into it. */
final class Curtain extends JComponent {
  private final JRootPane root;

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
    root.setGlassPane(this);
    setVisible(true);
    requestFocusInWindow();
  }

  /** Opens it again. */
  void lift() {
    setVisible(false);
  }
}
