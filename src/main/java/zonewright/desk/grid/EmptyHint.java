package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.Map;
import zonewright.desk.part.Palette;
import zonewright.sheet.TableDefinition;

/** Words on the empty paper of a sheet without rows: what it is for, and how it begins. */
final class EmptyHint {
  private static final int WIDEST = 520;

  private EmptyHint() {}

  /**
   * Returns the words for a sheet none of whose rows is shown.
   *
   * @param hidden whether there are rows that a filter hides
   * @param other the title of the sheet whose rows it follows; empty where it follows none
   */
  static String words(TableDefinition table, boolean hidden, String other) {
    if (hidden) {
      return "No " + table.rowWord() + " fits the filter.";
    }
    String begin =
        other.isEmpty()
            ? "Type into the first row to begin."
            : "Its rows follow those of the sheet " + other + ", and there is none yet.";
    return table.about().isEmpty() ? begin : table.about() + " " + begin;
  }

  /** Paints words over several lines below what is there. */
  static void paint(Graphics graphics, String words, Rectangle seen, int below, Font font) {
    Graphics2D g = (Graphics2D) graphics.create();
    int margin = UIScale.scale(24);
    float width = Math.min(UIScale.scale(WIDEST), seen.width - 2 * margin);
    if (width > margin) {
      g.setColor(Palette.current().muted());
      AttributedString text = new AttributedString(words, Map.of(TextAttribute.FONT, font));
      LineBreakMeasurer lines = new LineBreakMeasurer(text.getIterator(), g.getFontRenderContext());
      float y = below + margin;
      while (lines.getPosition() < words.length()) {
        TextLayout line = lines.nextLayout(width);
        y += line.getAscent();
        line.draw(g, seen.x + margin, y);
        y += line.getDescent() + line.getLeading() + UIScale.scale(3);
      }
    }
    g.dispose();
  }
}
