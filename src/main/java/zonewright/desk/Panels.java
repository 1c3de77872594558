package zonewright.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Graphics;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import zonewright.desk.part.UserPreferences;

/** Where the parts of the window stand, and how much room each has. */
final class Panels extends JPanel {
  private static final int WORKING_WIDTH = 360;
  private static final int FINDINGS_HEIGHT = 270;

  private final Card working = new Card();
  private final Card findings = new Card();
  private final Card picture = new Card();
  private final JSplitPane top;
  private final JSplitPane bottom;
  private final JSplitPane whole;
  private final UserPreferences memory;
  private boolean placed;
  private transient Runnable onFirstPaint = () -> {};

  Panels(JComponent sheets, UserPreferences memory) {
    super(new BorderLayout());
    this.memory = memory;
    top = split(JSplitPane.HORIZONTAL_SPLIT, sheets, working, 1);
    bottom = split(JSplitPane.HORIZONTAL_SPLIT, findings, picture, 1);
    whole = split(JSplitPane.VERTICAL_SPLIT, top, bottom, 1);
    add(whole, BorderLayout.CENTER);
    setBorder(BorderFactory.createEmptyBorder(0, 10, 0, 10));
  }

  private static JSplitPane split(int way, JComponent first, JComponent second, double share) {
    JSplitPane split = new JSplitPane(way, true, first, second);
    split.setResizeWeight(share);
    split.setBorder(BorderFactory.createEmptyBorder());
    for (String taken : new String[] {"F6", "F8", "F9"}) {
      split
          .getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke(taken), "none");
    }
    return split;
  }

  /** Puts the parts into their places beside the sheets, which are empty until then. */
  void fill(JComponent itsWorking, JComponent itsFindings, JComponent itsPicture) {
    working.hold(itsWorking);
    findings.hold(itsFindings);
    picture.hold(itsPicture);
  }

  /** Sets a part off from the ground. */
  private static final class Card extends JPanel {
    Card() {
      super(new BorderLayout());
      updateUI();
    }

    void hold(JComponent part) {
      part.setOpaque(false);
      add(part);
      revalidate();
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setBackground(UIManager.getColor("Zonewright.panel"));
      setBorder(BorderFactory.createLineBorder(UIManager.getColor("Zonewright.line")));
    }
  }

  @Override
  public void doLayout() {
    super.doLayout();
    if (!placed && getWidth() > 0) {
      placed = true;
      place();
    }
  }

  /** Sets what is done when the panels were painted for the first time. */
  void onFirstPaint(Runnable does) {
    onFirstPaint = does;
  }

  @Override
  public void paint(Graphics graphics) {
    super.paint(graphics);
    onFirstPaint.run();
    onFirstPaint = () -> {};
  }

  private void place() {
    int working = UIScale.scale(memory.number("working-width", WORKING_WIDTH));
    int findings = UIScale.scale(memory.number("findings-height", FINDINGS_HEIGHT));
    whole.setSize(getSize());
    int across = Math.max(getWidth() * 6 / 10, getWidth() - working);
    top.setDividerLocation(across);
    bottom.setDividerLocation(across);
    whole.setDividerLocation(Math.max(getHeight() / 3, getHeight() - findings));
  }

  /** Shows or hides the working. */
  void showWorking(boolean yes) {
    part(top, yes);
  }

  /** Shows or hides findings and picture. */
  void showFindings(boolean yes) {
    part(whole, yes);
  }

  private void part(JSplitPane split, boolean yes) {
    keep();
    split.getRightComponent().setVisible(yes);
    if (yes) {
      place();
    }
    split.revalidate();
  }

  /** Remembers how much room each part has. */
  void keep() {
    if (placed && top.getRightComponent().isVisible()) {
      memory.keep("working-width", UIScale.unscale(top.getWidth() - top.getDividerLocation()));
    }
    if (placed && bottom.isVisible()) {
      memory.keep(
          "findings-height", UIScale.unscale(whole.getHeight() - whole.getDividerLocation()));
    }
  }
}
