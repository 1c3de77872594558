package zonewright.desk.grid;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.util.ArrayList;
import java.util.List;
import zonewright.desk.part.Palette;
import zonewright.paper.DrawnPages;
import zonewright.sheet.Tint;

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
    this(table, project, format, PageScale.AS_IT_FITS);
  }

  /** Lays a sheet out in a size that was chosen. */
  public SheetPages(PrintedGrid table, String project, PageFormat format, PageScale chosen) {
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
    scale = scale(chosen, format.getImageableWidth() / Math.max(1, total));
    divide(format.getImageableWidth() / scale);
    double room = format.getImageableHeight() / scale - headHeight() - 2.0 * edge();
    rowsOnPage = Math.max(1, (int) (room / rowHeight()));
  }

  private static double scale(PageScale chosen, double fitting) {
    if (chosen.scale() > 0) {
      return chosen.scale();
    }
    boolean onePage = fitting >= LEAST_SCALE || chosen == PageScale.TO_THE_WIDTH;
    return onePage ? Math.min(1, fitting) : SPLIT_SCALE;
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

  /**
   * Puts columns on as few pages as they need, the first ones on each, and about as much on each:
   * the last page never holds the one column that was left over.
   */
  private void divide(double room) {
    List<List<Integer>> fewest = divided(room);
    double least = 0;
    double most = room;
    for (int i = 0; i < 20; i++) {
      double middle = (least + most) / 2;
      if (divided(middle).size() <= fewest.size()) {
        most = middle;
      } else {
        least = middle;
      }
    }
    groups.addAll(divided(most));
  }

  private List<List<Integer>> divided(double room) {
    List<List<Integer>> divided = new ArrayList<>();
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
        divided.add(group);
        group = new ArrayList<>(head);
        used = taken;
      }
      group.add(at);
      used += widths[at];
    }
    divided.add(group);
    return divided;
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
    AffineTransform move =
        AffineTransform.getTranslateInstance(format.getImageableX(), format.getImageableY());
    move.scale(scale, scale);
    pen.transform(move);
    draw(PagePen.on(pen), page);
    pen.dispose();
    return PAGE_EXISTS;
  }

  /** Returns all pages as a file (PDF). */
  public byte[] file() {
    try (DrawnPages pages = new DrawnPages(format.getWidth(), format.getHeight())) {
      PagePen pen = PagePen.in(pages, format.getImageableX(), format.getImageableY(), scale);
      for (int page = 0; page < getNumberOfPages(); page++) {
        pages.page();
        draw(pen, page);
      }
      return pages.file();
    }
  }

  private void draw(PagePen pen, int page) {
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
  }

  private void edges(PagePen pen, int page, double right, double bottom) {
    pen.words(palette.ink(), project, bold, 0, metrics.getAscent());
    write(pen, palette.muted(), table.title(), plain, right, metrics.getAscent());
    double base = bottom - metrics.getDescent();
    String number = "page %s of %s".formatted(page + 1, getNumberOfPages());
    write(pen, palette.muted(), number, plain, right, base);
    String caution = "Zonewright · local codes and licensed practice decide";
    pen.words(palette.muted(), caution, plain, 0, base);
  }

  private static void write(
      PagePen pen, Color colour, String text, Font font, double right, double base) {
    pen.words(colour, text, font, right - pen.width(text, font), base);
  }

  private void head(PagePen pen, List<Integer> columns, double top) {
    int band = banded() ? rowHeight() : 0;
    double x = 0;
    String before = "";
    for (int at : columns) {
      PrintedGrid.Heading heading = table.headings().get(at);
      if (band > 0) {
        pen.fill(palette.band(place(heading.band())), x, top, widths[at], band);
        if (!heading.band().equals(before)) {
          pen.words(palette.ink(), heading.band(), bold, x + PAD, top + base(band));
        }
        before = heading.band();
      }
      pen.fill(palette.headingGround(), x, top + band, widths[at], headHeight() - band);
      heading(pen, heading, x, top + band + 3, widths[at]);
      x += widths[at];
    }
    pen.fill(palette.strongLine(), 0, top + headHeight() - 0.7, x, 0.7);
  }

  private void heading(PagePen pen, PrintedGrid.Heading heading, double x, double top, int width) {
    double base = top + metrics.getAscent();
    for (String line : WrappedName.within(heading.name(), metrics, width - 2 * PAD).lines()) {
      aligned(pen, new Words(palette.ink(), line, bold), heading.right(), x, base, width);
      base += metrics.getHeight();
    }
    double last = top + metrics.getAscent() + 2.0 * metrics.getHeight();
    Words unit = new Words(palette.muted(), heading.unit(), plain);
    aligned(pen, unit, heading.right(), x, last, width);
  }

  private record Words(Color colour, String text, Font font) {}

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

  private void row(PagePen pen, PrintedGrid.Line line, List<Integer> columns, double top) {
    double x = 0;
    for (int at : columns) {
      PrintedGrid.Cell cell = line.cells().get(at);
      double left = x;
      palette
          .tint(cell.tint())
          .ifPresent(tint -> pen.fill(tint, left, top, widths[at], rowHeight()));
      Color ink = cell.soft() && cell.tint() == Tint.NONE ? palette.muted() : palette.ink();
      if (line.band()) {
        pen.fill(palette.headingGround(), x, top, widths[at], rowHeight());
      }
      Font font = line.band() ? bold : cell.soft() ? soft : plain;
      String text = cut(pen, cell.text(), font, widths[at] - 2 * PAD);
      boolean right = !line.band() && table.headings().get(at).right();
      aligned(pen, new Words(ink, text, font), right, x, top + base(rowHeight()), widths[at]);
      x += widths[at];
    }
    pen.fill(palette.line(), 0, top + rowHeight() - 0.5, x, 0.5);
  }

  private static void aligned(
      PagePen pen, Words words, boolean right, double x, double base, int width) {
    if (right) {
      write(pen, words.colour(), words.text(), words.font(), x + width - PAD, base);
    } else {
      pen.words(words.colour(), words.text(), words.font(), x + PAD, base);
    }
  }

  private static String cut(PagePen pen, String text, Font font, int width) {
    if (pen.width(text, font) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && pen.width(text.substring(0, end) + "…", font) > width) {
      end--;
    }
    return text.substring(0, end).strip() + "…";
  }
}
