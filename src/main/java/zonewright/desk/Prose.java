package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Color;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Text that wraps and cannot be changed; it takes its font and colour from the look. */
final class Prose extends JTextArea {
  private String colour = "Label.foreground";

  Prose(String text) {
    super(text);
    setEditable(false);
    setFocusable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setOpaque(false);
    setBorder(null);
    updateUI();
  }

  /** Sets the font by a style class of the look, such as {@code h2} or {@code small}. */
  Prose styled(String styleClass) {
    putClientProperty(FlatClientProperties.STYLE_CLASS, styleClass);
    return this;
  }

  /** Sets the colour by its name in the look. */
  Prose coloured(String key) {
    colour = key;
    setForeground(UIManager.getColor(key));
    return this;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(null);
    setOpaque(false);
    Color known = colour == null ? null : UIManager.getColor(colour);
    if (known != null) {
      setForeground(known);
    }
  }
}
