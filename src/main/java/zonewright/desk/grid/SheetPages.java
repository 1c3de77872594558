package zonewright.desk.grid;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet on pages: headings and names on each of them, columns made to fit where they can be read
 * then and else over several pages, the project above and the number of the page below.
 */
public final class SheetPages implements Pageable, Printable {
  private static final int POINTS = 8;
  private static final double LEAST_SCALE = 0.62;
  private static final double SPLIT_SCALE = 0.85;
  private static final int PAD = 4;
  private static final int WIDEST = 190;
  private static final int MEASURED = 300;

  private final PrintedGrid table;
  private final String project;
  private final PageFormat format;
  private final Palette palette = Palette.onPaper();
  private final Font plain = new Font(Font.SANS_SERIF, Font.PLAIN, POINTS);
  private final Font soft = plain.deriveFont(Font.ITALIC);
  private final Font bold = plain.deriveFont(Font.BOLD);
  private final FontMetrics metrics;
  private final int[] widths;
  private final double scale;
  private final List<List<Integer>> groups = new ArrayList<>();
  private final int rowsOnPage;

  /**
   * Lays a sheet out.
   *
   * @param project what stands above every page
   * @param format the paper
   */
  public SheetPages(PrintedGrid table, String project, PageFormat format) {
    this.table = table;
    this.project = project;
    this.format = format;
    Graphics2D ruler = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    metrics = ruler.getFontMetrics(bold);
    ruler.dispose();
    widths = new int[table.headings().size()];
    int total = 0;
    for (int at = 0; at < widths.length; at++) {
      widths[at] = width(at);
      total += widths[at];
    }
    double fitting = format.getImageableWidth() / Math.max(1, total);
    scale = fitting >= LEAST_SCALE ? Math.min(1, fitting) : SPLIT_SCALE;
    divide(format.getImageableWidth() / scale);
    double room = format.getImageableHeight() / scale - headHeight() - 2.0 * edge();
    rowsOnPage = Math.max(1, (int) (room / rowHeight()));
  }

  private int width(int at) {
    PrintedGrid.Heading heading = table.headings().get(at);
    int most =
        Math.max(
            WrappedName.of(heading.name(), metrics).width(), metrics.stringWidth(heading.unit()));
    for (PrintedGrid.Line line : table.rows().subList(0, Math.min(MEASURED, table.rows().size()))) {
      if (!line.band()) {
        most = Math.max(most, metrics.stringWidth(line.cells().get(at).text()));
      }
    }
    return Math.min(WIDEST, most) + 2 * PAD;
  }

  /** Puts columns on as many pages as they need, the first ones on each. */
  private void divide(double room) {
    int repeated = Math.min(table.repeated(), widths.length);
    double taken = 0;
    List<Integer> head = new ArrayList<>();
    for (int at = 0; at < repeated; at++) {
      head.add(at);
      taken += widths[at];
    }
    List<Integer> group = new ArrayList<>(head);
    double used = taken;
    for (int at = repeated; at < widths.length; at++) {
      if (used + widths[at] > room + 0.5 && group.size() > repeated) {
        groups.add(group);
        group = new ArrayList<>(head);
        used = taken;
      }
      group.add(at);
      used += widths[at];
    }
    groups.add(group);
  }

  private int rowHeight() {
    return metrics.getHeight() + 5;
  }

  private boolean banded() {
    return table.headings().stream().anyMatch(heading -> !heading.band().isEmpty());
  }

  private int headHeight() {
    return (banded() ? rowHeight() : 0) + 3 * metrics.getHeight() + 6;
  }

  /** Returns the height of the line above, and of that below, with its air. */
  private int edge() {
    return metrics.getHeight() + 8;
  }

  private int pagesDown() {
    return Math.max(1, (table.rows().size() + rowsOnPage - 1) / rowsOnPage);
  }

  @Override
  public int getNumberOfPages() {
    return groups.size() * pagesDown();
  }

  @Override
  public PageFormat getPageFormat(int page) {
    return format;
  }

  @Override
  public Printable getPrintable(int page) {
    return this;
  }

  @Override
  public int print(Graphics graphics, PageFormat paper, int page) {
    if (page >= getNumberOfPages()) {
      return NO_SUCH_PAGE;
    }
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    AffineTransform move =
        AffineTransform.getTranslateInstance(format.getImageableX(), format.getImageableY());
    move.scale(scale, scale);
    pen.transform(move);
    double right = format.getImageableWidth() / scale;
    double bottom = format.getImageableHeight() / scale;
    edges(pen, page, right, bottom);
    List<Integer> columns = groups.get(page / pagesDown());
    int first = page % pagesDown() * rowsOnPage;
    int last = Math.min(table.rows().size(), first + rowsOnPage);
    double y = edge();
    head(pen, columns, y);
    y += headHeight();
    for (PrintedGrid.Line line : table.rows().subList(first, last)) {
      row(pen, line, columns, y);
      y += rowHeight();
    }
    pen.dispose();
    return PAGE_EXISTS;
  }

  private void edges(Graphics2D pen, int page, double right, double bottom) {
    pen.setFont(bold);
    pen.setColor(palette.ink());
    pen.drawString(project, 0, metrics.getAscent());
    pen.setFont(plain);
    pen.setColor(palette.muted());
    write(pen, table.title(), right, metrics.getAscent());
    String number = "page %s of %s".formatted(page + 1, getNumberOfPages());
    write(pen, number, right, bottom - metrics.getDescent());
    pen.drawString(
        "Zonewright · local codes and licensed practice decide",
        0,
        (float) bottom - metrics.getDescent());
  }

  private static void write(Graphics2D pen, String text, double right, double base) {
    int width = pen.getFontMetrics().stringWidth(text);
    pen.drawString(text, (float) (right - width), (float) base);
  }

  private void head(Graphics2D pen, List<Integer> columns, double top) {
    int band = banded() ? rowHeight() : 0;
    double x = 0;
    String before = "";
    for (int at : columns) {
      PrintedGrid.Heading heading = table.headings().get(at);
      if (band > 0) {
        pen.setColor(palette.band(place(heading.band())));
        fill(pen, x, top, widths[at], band);
        if (!heading.band().equals(before)) {
          pen.setFont(bold);
          pen.setColor(palette.ink());
          pen.drawString(heading.band(), (float) x + PAD, (float) top + base(band));
        }
        before = heading.band();
      }
      pen.setColor(palette.headingGround());
      fill(pen, x, top + band, widths[at], headHeight() - band);
      heading(pen, heading, x, top + band + 3, widths[at]);
      x += widths[at];
    }
    pen.setColor(palette.strongLine());
    fill(pen, 0, top + headHeight() - 0.7, x, 0.7);
  }

  private void heading(
      Graphics2D pen, PrintedGrid.Heading heading, double x, double top, int width) {
    pen.setFont(bold);
    pen.setColor(palette.ink());
    double base = top + metrics.getAscent();
    for (String line : WrappedName.within(heading.name(), metrics, width - 2 * PAD).lines()) {
      aligned(pen, line, heading.right(), x, base, width);
      base += metrics.getHeight();
    }
    pen.setFont(plain);
    pen.setColor(palette.muted());
    double last = top + metrics.getAscent() + 2.0 * metrics.getHeight();
    aligned(pen, heading.unit(), heading.right(), x, last, width);
  }

  private int place(String band) {
    return table.headings().stream()
        .map(PrintedGrid.Heading::band)
        .distinct()
        .toList()
        .indexOf(band);
  }

  private float base(int height) {
    return (height - metrics.getHeight()) / 2f + metrics.getAscent();
  }

  private static void fill(Graphics2D pen, double x, double y, double width, double height) {
    pen.fill(new java.awt.geom.Rectangle2D.Double(x, y, width, height));
  }

  private void row(Graphics2D pen, PrintedGrid.Line line, List<Integer> columns, double top) {
    double x = 0;
    for (int at : columns) {
      PrintedGrid.Cell cell = line.cells().get(at);
      Color ink = cell.soft() ? palette.muted() : palette.ink();
      if (line.band()) {
        pen.setColor(palette.headingGround());
        fill(pen, x, top, widths[at], rowHeight());
      }
      pen.setFont(line.band() ? bold : cell.soft() ? soft : plain);
      pen.setColor(ink);
      String text = cut(pen, cell.text(), widths[at] - 2 * PAD);
      boolean right = !line.band() && table.headings().get(at).right();
      aligned(pen, text, right, x, top + base(rowHeight()), widths[at]);
      x += widths[at];
    }
    pen.setColor(palette.line());
    fill(pen, 0, top + rowHeight() - 0.5, x, 0.5);
  }

  private static void aligned(
      Graphics2D pen, String text, boolean right, double x, double base, int width) {
    if (right) {
      write(pen, text, x + width - PAD, base);
    } else {
      pen.drawString(text, (float) x + PAD, (float) base);
    }
  }

  private static String cut(Graphics2D pen, String text, int width) {
    FontMetrics own = pen.getFontMetrics();
    if (own.stringWidth(text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && own.stringWidth(text.substring(0, end) + "…") > width) {
      end--;
    }
    return text.substring(0, end).strip() + "…";
  }
}
