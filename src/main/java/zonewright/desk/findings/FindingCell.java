package zonewright.desk.findings;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.plaf.basic.BasicGraphicsUtils;
import javax.swing.table.TableCellRenderer;
import zonewright.design.Finding;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SeverityMark;
import zonewright.desk.picture.WrappedText;

/**
 * Draws the cells of the list of findings: what is found, its remedy as a link and what else to do,
 * on one line where there is room and never on more than two. All of it is told by a pointer that
 * rests there.
 */
public final class FindingCell extends JPanel implements TableCellRenderer {
  private static final int AROUND = 8;
  private static final int ABOVE = 3;
  private static final int APART = 14;

  /** What a piece of text is. */
  private enum Kind {
    PLAIN,
    QUIET,
    LINK
  }

  /** A piece of text in its place, from the left edge of the words. */
  private record Piece(String text, Kind kind, int x, int line) {}

  private final FindingsModel model;
  private List<Piece> pieces = List.of();
  private String heading = "";
  private Finding finding;
  private int column;
  private int left;
  private boolean selected;
  private JTable table;

  public FindingCell(FindingsModel model) {
    this.model = model;
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable list, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
    table = list;
    heading = model.heading(row);
    finding = model.finding(row).orElse(null);
    column = list.convertColumnIndexToModel(at);
    left = list.getCellRect(row, at, true).x;
    selected = isSelected && finding != null;
    setFont(list.getFont());
    pieces = finding == null ? List.of() : pieces(list, finding, column);
    String told = finding == null ? heading : String.valueOf(value);
    getAccessibleContext().setAccessibleName(told);
    setToolTipText(finding == null ? null : tip(finding));
    return this;
  }

  private static String tip(Finding finding) {
    String cure = finding.cure().isEmpty() ? "" : "<br>" + plain(Prose.capital(finding.cure()));
    return "<html><body style='width:320px'>" + plain(Prose.capital(finding.sentence())) + cure;
  }

  private static String plain(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;");
  }

  private static List<Piece> pieces(JTable list, Finding finding, int column) {
    FontMetrics metrics = list.getFontMetrics(list.getFont());
    int width = list.getColumnModel().getColumn(column).getWidth() - 2 * UIScale.scale(AROUND);
    return switch (column) {
      case 0 -> List.of(new Piece(finding.severity().word(), Kind.PLAIN, 0, 0));
      case 1 -> List.of(new Piece(cut(metrics, where(finding), width), Kind.PLAIN, 0, 0));
      default -> words(metrics, finding, width);
    };
  }

  private static String where(Finding finding) {
    return FindingsModel.where(finding);
  }

  private static List<Piece> words(FontMetrics metrics, Finding finding, int width) {
    List<Piece> pieces = new ArrayList<>();
    List<String> lines = WrappedText.lines(Prose.capital(finding.sentence()), metrics, width);
    String link = finding.remedy().map(remedy -> remedy.name()).orElse("");
    int apart = UIScale.scale(APART);
    int linkWidth = link.isEmpty() ? 0 : metrics.stringWidth(link) + apart;
    boolean two = lines.size() > 1;
    pieces.add(new Piece(lines.get(0), Kind.PLAIN, 0, 0));
    int line = 0;
    int x = metrics.stringWidth(lines.get(0));
    if (two) {
      String rest = String.join(" ", lines.subList(1, lines.size()));
      String shown = cut(metrics, rest, width - linkWidth);
      pieces.add(new Piece(shown, Kind.PLAIN, 0, 1));
      line = 1;
      x = metrics.stringWidth(shown);
    }
    if (!link.isEmpty()) {
      boolean fits = x + linkWidth <= width;
      line = fits ? line : 1;
      x = fits ? x + apart : 0;
      pieces.add(new Piece(cut(metrics, link, width - x), Kind.LINK, x, line));
      x += metrics.stringWidth(link);
    }
    String cure = Prose.capital(finding.cure());
    if (!cure.isEmpty()) {
      boolean fits = x + apart + metrics.stringWidth(cure) <= width;
      if (!fits && line == 0 && link.isEmpty()) {
        pieces.add(new Piece(cut(metrics, cure, width), Kind.QUIET, 0, 1));
      } else if (width - x - apart > metrics.stringWidth("mmmmmm")) {
        pieces.add(new Piece(cut(metrics, cure, width - x - apart), Kind.QUIET, x + apart, line));
      }
    }
    return pieces;
  }

  private static String cut(FontMetrics metrics, String text, int width) {
    if (metrics.stringWidth(text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > width) {
      end--;
    }
    return text.substring(0, end).strip() + "…";
  }

  /** Returns how high a row must be: one line or two. */
  public static int height(JTable list, FindingsModel model, int row) {
    FontMetrics metrics = list.getFontMetrics(list.getFont());
    int lines =
        model
            .finding(row)
            .map(finding -> pieces(list, finding, 2))
            .map(pieces -> pieces.stream().mapToInt(Piece::line).max().orElse(0) + 1)
            .orElse(1);
    return lines * metrics.getHeight() + 2 * UIScale.scale(ABOVE) + 1;
  }

  /** Says whether a point, from the upper left corner of a row's last cell, lies on the remedy. */
  public static boolean onRemedy(JTable list, Finding finding, Point point) {
    FontMetrics metrics = list.getFontMetrics(list.getFont());
    int x = point.x - UIScale.scale(AROUND);
    int line = (point.y - UIScale.scale(ABOVE)) / metrics.getHeight();
    return pieces(list, finding, 2).stream()
        .anyMatch(
            piece ->
                piece.kind() == Kind.LINK
                    && piece.line() == line
                    && x >= piece.x()
                    && x <= piece.x() + metrics.stringWidth(piece.text()));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics;
    Color ground = selected ? table.getSelectionBackground() : table.getBackground();
    Color ink = selected ? table.getSelectionForeground() : table.getForeground();
    pen.setColor(finding == null ? UIManager.getColor("Panel.background") : ground);
    pen.fillRect(0, 0, getWidth(), getHeight());
    pen.setColor(UIManager.getColor("Zonewright.line"));
    pen.fillRect(0, getHeight() - 1, getWidth(), 1);
    FontMetrics metrics = getFontMetrics(getFont());
    int base = UIScale.scale(ABOVE) + metrics.getAscent();
    int x = UIScale.scale(AROUND);
    if (finding == null) {
      pen.setFont(getFont().deriveFont(Font.BOLD));
      pen.setColor(UIManager.getColor("Zonewright.muted"));
      BasicGraphicsUtils.drawString(this, pen, heading, x - left, base);
      return;
    }
    if (column == 0) {
      SeverityMark mark = new SeverityMark(finding.severity());
      int y = UIScale.scale(ABOVE) + (metrics.getHeight() - mark.getIconHeight()) / 2;
      mark.paintIcon(this, pen, x, y);
      x += mark.getIconWidth() + UIScale.scale(7);
      if (getWidth() < UIScale.scale(60)) {
        return;
      }
    }
    pen.setFont(getFont());
    for (Piece piece : pieces) {
      pen.setColor(selected ? ink : colour(piece.kind(), ink));
      int y = base + piece.line() * metrics.getHeight();
      BasicGraphicsUtils.drawString(this, pen, piece.text(), x + piece.x(), y);
      if (piece.kind() == Kind.LINK) {
        pen.fillRect(x + piece.x(), y + 2, metrics.stringWidth(piece.text()), 1);
      }
    }
  }

  private static Color colour(Kind kind, Color ink) {
    return switch (kind) {
      case PLAIN -> ink;
      case QUIET -> UIManager.getColor("Zonewright.muted");
      case LINK -> UIManager.getColor("Zonewright.link");
    };
  }
}
