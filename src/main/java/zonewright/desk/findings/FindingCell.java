package zonewright.desk.findings;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
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

/** Draws the cells of the list of findings, over as many lines as the text needs. */
public final class FindingCell extends JPanel implements TableCellRenderer {
  private static final int AROUND = 8;
  private static final int ABOVE = 4;

  /** A line of text, and whether it stands back. */
  private record Line(String text, boolean quiet, boolean link) {
    Line(String text, boolean quiet) {
      this(text, quiet, false);
    }
  }

  private final FindingsModel model;
  private List<Line> lines = List.of();
  private Finding finding;
  private int column;
  private boolean selected;
  private JTable table;

  public FindingCell(FindingsModel model) {
    this.model = model;
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable list, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
    table = list;
    finding = model.at(list.convertRowIndexToModel(row));
    column = list.convertColumnIndexToModel(at);
    selected = isSelected;
    setFont(list.getFont());
    int width = list.getColumnModel().getColumn(at).getWidth();
    lines = lines(list.getFontMetrics(list.getFont()), finding, column, inner(width));
    getAccessibleContext().setAccessibleName(String.valueOf(value));
    return this;
  }

  private static int inner(int width) {
    return width - 2 * UIScale.scale(AROUND);
  }

  private static List<Line> lines(FontMetrics metrics, Finding finding, int column, int width) {
    List<Line> lines = new ArrayList<>();
    switch (column) {
      case 0 -> lines.add(new Line(finding.severity().word(), false));
      case 1 ->
          WrappedText.lines(FindingsModel.where(finding), metrics, width)
              .forEach(text -> lines.add(new Line(text, false)));
      default -> {
        WrappedText.lines(Prose.capital(finding.sentence()), metrics, width)
            .forEach(text -> lines.add(new Line(text, false)));
        WrappedText.lines(Prose.capital(finding.cure()), metrics, width)
            .forEach(text -> lines.add(new Line(text, true)));
        finding.remedy().ifPresent(remedy -> lines.add(new Line(remedy.name(), false, true)));
      }
    }
    return lines;
  }

  /** Returns how high the row of a finding must be so that nothing is cut off. */
  public static int height(JTable list, Finding finding) {
    FontMetrics metrics = list.getFontMetrics(list.getFont());
    int most = 1;
    for (int at = 0; at < list.getColumnCount(); at++) {
      int width = inner(list.getColumnModel().getColumn(at).getWidth());
      int count = lines(metrics, finding, list.convertColumnIndexToModel(at), width).size();
      most = Math.max(most, count);
    }
    return most * metrics.getHeight() + 2 * UIScale.scale(ABOVE);
  }

  /** Says whether a point, from the upper left corner of a row's last cell, lies on the remedy. */
  public static boolean onRemedy(JTable list, Finding finding, Point point, int rowHeight) {
    if (finding.remedy().isEmpty()) {
      return false;
    }
    FontMetrics metrics = list.getFontMetrics(list.getFont());
    int width = inner(list.getColumnModel().getColumn(2).getWidth());
    int above = lines(metrics, finding, 2, width).size() - 1;
    int top = UIScale.scale(ABOVE) + above * metrics.getHeight();
    int right = UIScale.scale(AROUND) + metrics.stringWidth(finding.remedy().get().name());
    return point.y >= top
        && point.y < Math.min(rowHeight, top + metrics.getHeight() + 2)
        && point.x <= right;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics;
    Color ground = selected ? table.getSelectionBackground() : table.getBackground();
    Color ink = selected ? table.getSelectionForeground() : table.getForeground();
    pen.setColor(ground);
    pen.fillRect(0, 0, getWidth(), getHeight());
    pen.setColor(UIManager.getColor("Zonewright.line"));
    pen.fillRect(0, getHeight() - 1, getWidth(), 1);
    FontMetrics metrics = getFontMetrics(getFont());
    int x = UIScale.scale(AROUND);
    if (column == 0) {
      SeverityMark mark = new SeverityMark(finding.severity());
      int y = UIScale.scale(ABOVE) + (metrics.getHeight() - mark.getIconHeight()) / 2;
      mark.paintIcon(this, pen, x, y);
      x += mark.getIconWidth() + UIScale.scale(7);
      if (getWidth() < UIScale.scale(60)) {
        return;
      }
    }
    int y = UIScale.scale(ABOVE) + metrics.getAscent();
    for (Line line : lines) {
      Color still = line.link() ? UIManager.getColor("Zonewright.link") : ink;
      pen.setColor(line.quiet() ? UIManager.getColor("Zonewright.muted") : still);
      if (selected) {
        pen.setColor(ink);
      }
      pen.setFont(getFont());
      BasicGraphicsUtils.drawString(this, pen, line.text(), x, y);
      if (line.link()) {
        pen.fillRect(x, y + 2, metrics.stringWidth(line.text()), 1);
      }
      y += metrics.getHeight();
    }
  }
}
