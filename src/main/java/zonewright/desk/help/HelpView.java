package zonewright.desk.help;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;

/** Shows a page of help in the colours and the font of the look; links go where it is told. */
public final class HelpView extends JEditorPane {
  private String body = "";

  /** Dresses pages by the look, apart from all other text of the program. */
  private static final class Kit extends HTMLEditorKit {
    private final StyleSheet sheet;

    Kit(StyleSheet sheet) {
      this.sheet = sheet;
    }

    @Override
    public StyleSheet getStyleSheet() {
      return sheet;
    }
  }

  /** Makes an empty view; {@code follow} hears of links as they stand in the page. */
  HelpView(Consumer<String> follow) {
    setEditable(false);
    setName("help page");
    getAccessibleContext().setAccessibleName("Help page");
    addHyperlinkListener(
        event -> {
          if (event.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
            follow.accept(event.getDescription());
          }
        });
    dress();
  }

  /** Takes colours and font from the look and shows the page again. */
  final void dress() {
    StyleSheet sheet = new StyleSheet();
    sheet.addStyleSheet(new HTMLEditorKit().getStyleSheet());
    Font font = UIManager.getFont("Label.font");
    int size = font.getSize();
    sheet.addRule(
        "body{font-family:%s;font-size:%spx;margin:12px 20px 20px 20px;color:%s}"
            .formatted(font.getFamily(), size, colour("Label.foreground")));
    sheet.addRule("h1{font-size:%spx;margin:4px 0 8px 0}".formatted(size * 3 / 2));
    sheet.addRule("h2{font-size:%spx;margin:18px 0 4px 0}".formatted(size * 5 / 4));
    sheet.addRule("h3{font-size:%spx;margin:14px 0 4px 0}".formatted(size * 5 / 4));
    sheet.addRule("p{margin:0 0 8px 0}");
    sheet.addRule("th,td{text-align:left;vertical-align:top;padding:3px 12px 3px 0}");
    sheet.addRule("th{font-weight:normal;color:%s}".formatted(colour("Zonewright.muted")));
    sheet.addRule(".quiet{color:%s}".formatted(colour("Zonewright.muted")));
    sheet.addRule("a{color:%s}".formatted(colour("Component.linkColor")));
    setEditorKit(new Kit(sheet));
    setBackground(UIManager.getColor("Panel.background"));
    write();
  }

  private static String colour(String key) {
    Color found = UIManager.getColor(key);
    Color colour = found == null ? UIManager.getColor("Label.foreground") : found;
    return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff);
  }

  /** Shows a page from its start, or from the part a link names. */
  void show(String html, String part) {
    body = html;
    write();
    SwingUtilities.invokeLater(() -> scrollTo(part));
  }

  private void write() {
    setText("<html><body>" + body + "</body></html>");
    setCaretPosition(0);
  }

  private void scrollTo(String part) {
    Element found = part.isEmpty() ? null : ((HTMLDocument) getDocument()).getElement(part);
    if (found == null) {
      scrollRectToVisible(new Rectangle());
      return;
    }
    try {
      Rectangle2D place = modelToView2D(found.getStartOffset());
      if (place != null) {
        Rectangle from = place.getBounds();
        from.height = getVisibleRect().height;
        scrollRectToVisible(from);
      }
    } catch (BadLocationException problem) {
      scrollRectToVisible(new Rectangle());
    }
  }
}
