package zonewright.desk.part;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumnModel;

/** Headings of a table with room for two lines: a name, and its unit below. */
public class TwoLineHeader extends JTableHeader {
  private static final long serialVersionUID = 1L;

  public TwoLineHeader(TableColumnModel columns) {
    super(columns);
    putClientProperty(FlatClientProperties.STYLE_CLASS, "small");
  }

  /** The unit of a heading goes below its name; a long one without is broken at its middle. */
  public static String inTwoLines(String heading) {
    int unit = heading.lastIndexOf(" (");
    int at = unit < 0 ? heading.indexOf(' ', heading.length() / 2 - 2) : unit;
    return at < 0
        ? heading
        : "<html><nobr>%s</nobr><br><nobr>%s</nobr></html>"
            .formatted(heading.substring(0, at), heading.substring(at + 1));
  }

  @Override
  public Dimension getPreferredSize() {
    int lines = 2 * getFontMetrics(getFont()).getHeight() + UIScale.scale(8);
    return new Dimension(super.getPreferredSize().width, lines);
  }
}
