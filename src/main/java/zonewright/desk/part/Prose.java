package zonewright.desk.part;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Color;
import java.util.Locale;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Text that wraps and cannot be changed; it takes its font and colour from the look. */
public final class Prose extends JTextArea {
  private String colour = "Label.foreground";

  public Prose(String text) {
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
  public Prose styled(String styleClass) {
    putClientProperty(FlatClientProperties.STYLE_CLASS, styleClass);
    return this;
  }

  /** Sets the colour by its name in the look. */
  public Prose coloured(String key) {
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

  /** Returns {@code text} with a capital in front. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
