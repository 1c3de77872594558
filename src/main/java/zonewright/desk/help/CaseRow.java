package zonewright.desk.help;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JPanel;
import javax.swing.UIManager;
import zonewright.desk.part.Prose;
import zonewright.sheet.Working;

/** A case of a choice: when it holds, and what is taken then; the one taken is marked. */
public final class CaseRow extends JPanel {
  private static final double SHARE_OF_WHEN = 0.5;

  private final Prose when;
  private final Prose then;
  private final boolean taken;

  CaseRow(Working.Case shown) {
    super(null);
    when = new Prose(shown.when());
    then = new Prose(shown.then());
    taken = shown.taken();
    setOpaque(false);
    setName(taken ? "case taken" : "case");
    if (!taken) {
      when.coloured("Zonewright.muted");
      then.coloured("Zonewright.muted");
    }
    add(when);
    add(then);
    getAccessibleContext()
        .setAccessibleName(
            shown.when() + ": " + shown.then() + (taken ? ", the case that holds" : ""));
  }

  private static int around() {
    return UIScale.scale(4);
  }

  private static int mark() {
    return UIScale.scale(12);
  }

  private int widthOfWhen() {
    return (int) ((getWidth() - mark() - 3 * around()) * SHARE_OF_WHEN);
  }

  private int widthOfThen() {
    return getWidth() - mark() - 3 * around() - widthOfWhen();
  }

  @Override
  public Dimension getPreferredSize() {
    when.setSize(Math.max(1, widthOfWhen()), Math.max(1, when.getHeight()));
    then.setSize(Math.max(1, widthOfThen()), Math.max(1, then.getHeight()));
    int height = Math.max(when.getPreferredSize().height, then.getPreferredSize().height);
    return new Dimension(getWidth(), height + 2 * around());
  }

  @Override
  public void doLayout() {
    int height = getHeight() - 2 * around();
    int left = mark() + around();
    when.setBounds(left, around(), widthOfWhen(), height);
    then.setBounds(left + widthOfWhen() + around(), around(), widthOfThen(), height);
  }

  @Override
  protected void paintComponent(Graphics pen) {
    if (taken) {
      pen.setColor(UIManager.getColor("Zonewright.messageBackground"));
      pen.fillRect(0, 0, getWidth(), getHeight());
      int middle = around() + getFontMetrics(when.getFont()).getHeight() / 2;
      int half = UIScale.scale(4);
      int left = UIScale.scale(3);
      pen.setColor(UIManager.getColor("Label.foreground"));
      pen.fillPolygon(
          new int[] {left, left + half + 1, left},
          new int[] {middle - half, middle, middle + half},
          3);
    }
    pen.setColor(UIManager.getColor("Zonewright.line"));
    pen.fillRect(0, getHeight() - 1, getWidth(), 1);
  }
}
