package zonewright.desk.task;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseMotionAdapter;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * Keeps hands off the window while another design is being read into it, but for the line at the
 * foot, where that is broken off; Escape does so too.
 */
public final class Curtain extends JComponent {
  private final JRootPane root;
  private final Component foot;
  private transient Optional<Component> before = Optional.empty();

  /** What stands on a curtain that nothing is seen through. */
  private transient Optional<String> words = Optional.empty();

  public Curtain(JRootPane root, Component foot, Runnable breakOff) {
    this.root = root;
    this.foot = foot;
    setName("curtain");
    addMouseListener(new MouseAdapter() {});
    addMouseMotionListener(new MouseMotionAdapter() {});
    setFocusTraversalKeysEnabled(false);
    setCursor(Cursor.getPredefinedCursor(Cursor.WAIT_CURSOR));
    addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent event) {
            event.consume();
            if (event.getKeyCode() == KeyEvent.VK_ESCAPE) {
              breakOff.run();
            }
          }
        });
  }

  /** Closes the window to mouse and keyboard. */
  public void draw() {
    before =
        Optional.ofNullable(KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    root.setGlassPane(this);
    setVisible(true);
    requestFocusInWindow();
  }

  /** Closes the window so that nothing is seen of it but a few words, until it is lifted. */
  public void close(String shown) {
    words = Optional.of(shown);
    draw();
  }

  /** Returns what stands on the curtain; none where one sees through it. */
  public Optional<String> words() {
    return words;
  }

  /** Opens it again; the keyboard is where it was before. */
  public void lift() {
    words = Optional.empty();
    setVisible(false);
    before.filter(Component::isShowing).ifPresent(Component::requestFocusInWindow);
  }

  private int footAt() {
    Point corner = SwingUtilities.convertPoint(foot, 0, 0, this);
    return foot.getHeight() > 0 ? corner.y : getHeight();
  }

  @Override
  public boolean contains(int x, int y) {
    return super.contains(x, y) && y < footAt();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    words.ifPresent(
        shown -> {
          graphics.setColor(UIManager.getColor("Panel.background"));
          graphics.fillRect(0, 0, getWidth(), footAt());
          graphics.setColor(UIManager.getColor("Label.foreground"));
          graphics.setFont(UIManager.getFont("Label.font"));
          int width = graphics.getFontMetrics().stringWidth(shown);
          graphics.drawString(shown, (getWidth() - width) / 2, footAt() / 2);
        });
  }
}
