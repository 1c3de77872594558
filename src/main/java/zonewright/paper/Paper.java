package zonewright.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A document of pages filled from top to bottom. What does not fit goes on to a further page with
 * the same title. The same words make the same file, to the byte.
 */
public final class Paper implements AutoCloseable {
  private static final float MARGIN = 48;
  private static final float INDENT = 16;
  private static final float FOOT = 34;
  private static final float LEADING = 1.28f;

  /** Ink of letters, lines and grounds: grey values from 0, black. */
  private static final float INK = 0.08f;

  private static final float SOFT = 0.38f;
  private static final float LINE = 0.78f;
  private static final float GROUND = 0.94f;

  private final PDDocument document = new PDDocument();
  private final Typeface typeface;
  private final PaperSize size;
  private final String project;
  private final String foot;
  private PDPageContentStream pen;
  private String title = "";
  private float y;

  /**
   * Begins a document without pages.
   *
   * @param name what the document is called
   * @param project what stands above every page
   * @param foot what stands below every page
   */
  public Paper(PaperSize size, String name, String project, String foot) {
    try {
      this.size = size;
      this.project = project;
      this.foot = foot;
      this.typeface = new Typeface(document);
      PDDocumentInformation facts = document.getDocumentInformation();
      facts.setTitle(name);
      facts.setCreator("Zonewright");
      document.setDocumentId(1L);
      document.getDocumentCatalog().setLanguage("en");
      PDViewerPreferences view = new PDViewerPreferences(new COSDictionary());
      view.setDisplayDocTitle(true);
      document.getDocumentCatalog().setViewerPreferences(view);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private interface Drawing {
    void with(PDPageContentStream pen) throws IOException;
  }

  private void draw(Drawing drawing) {
    try {
      drawing.with(pen);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private float width() {
    return size.width() - 2 * MARGIN;
  }

  /** Returns how many points are left on the page. */
  float left() {
    return y - MARGIN - FOOT;
  }

  /** Begins a page with its title in large letters and what it is for below. */
  public Paper page(String heading, String under) {
    title = heading;
    sheet();
    write(heading, MARGIN, 24, INK, true);
    y -= 24 * LEADING;
    if (!under.isEmpty()) {
      sentences(under, 11);
    }
    y -= 8;
    return this;
  }

  private void sheet() {
    try {
      if (pen != null) {
        pen.close();
      }
      PDPage page = new PDPage(size.rectangle());
      document.addPage(page);
      pen = new PDPageContentStream(document, page);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    y = size.height() - MARGIN;
    write(project, MARGIN, 10, SOFT, false);
    y -= 34;
  }

  private void goOn() {
    sheet();
    write(title + ", continued", MARGIN, 14, INK, true);
    y -= 14 * LEADING + 6;
  }

  private void need(float height) {
    if (left() < height && height < size.height() - 2 * MARGIN - 80) {
      goOn();
    }
  }

  private void write(String words, float x, float points, float grey, boolean strong) {
    String text = typeface.printable(words);
    if (text.isBlank()) {
      return;
    }
    draw(
        each -> {
          each.beginText();
          each.setFont(typeface.font(), points);
          each.setNonStrokingColor(grey);
          each.setStrokingColor(grey);
          each.setLineWidth(points * 0.035f);
          each.setRenderingMode(strong ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
          each.newLineAtOffset(x, y - points);
          each.showText(text);
          each.endText();
        });
  }

  private void line(float x1, float y1, float x2, float y2, float grey, float thick) {
    draw(
        each -> {
          each.setStrokingColor(grey);
          each.setLineWidth(thick);
          each.moveTo(x1, y1);
          each.lineTo(x2, y2);
          each.stroke();
        });
  }

  /** Writes the head of a part of the page. */
  public Paper heading(String words) {
    need(60);
    y -= 10;
    write(words, MARGIN, 13, INK, true);
    y -= 13 * LEADING + 1;
    line(MARGIN, y, MARGIN + width(), y, INK, 0.9f);
    y -= 7;
    return this;
  }

  /** Writes sentences over the whole width. */
  public Paper sentences(String words, double points) {
    paragraph(words, MARGIN, width(), (float) points, SOFT);
    return this;
  }

  /** Writes a line that stands out. */
  public Paper strong(String words, double points) {
    float size = (float) points;
    for (String line : typeface.lines(words, size, width())) {
      need(3 * size * LEADING);
      write(line, MARGIN, size, INK, true);
      y -= size * LEADING;
    }
    return this;
  }

  /** Writes what is read first, such as an equation, a little to the right. */
  public Paper indented(String words, double points) {
    paragraph(words, MARGIN + INDENT, width() - INDENT, (float) points, INK);
    return this;
  }

  private void paragraph(String words, float x, float room, float points, float grey) {
    for (String line : typeface.lines(words, points, room)) {
      need(points * LEADING);
      write(line, x, points, grey, false);
      y -= points * LEADING;
    }
    y -= points * 0.3f;
  }

  /** Writes what must be seen first: a head and sentences in a frame. */
  public Paper box(String head, List<String> sentences) {
    float points = 11;
    float inset = 8;
    List<String> lines = new ArrayList<>();
    for (String each : sentences) {
      lines.addAll(typeface.lines(each, points, width() - 2 * inset));
    }
    need(13 * LEADING + 3 * points * LEADING + 2 * inset);
    float top = y;
    y -= inset;
    write(head, MARGIN + inset, 13, INK, true);
    y -= 13 * LEADING + 2;
    for (String each : lines) {
      if (left() < points * LEADING + inset) {
        frame(top, y - inset);
        goOn();
        top = y;
        y -= inset;
      }
      write(each, MARGIN + inset, points, INK, false);
      y -= points * LEADING;
    }
    y -= inset;
    frame(top, y);
    y -= 10;
    return this;
  }

  private void frame(float top, float bottom) {
    draw(
        each -> {
          each.setStrokingColor(INK);
          each.setLineWidth(1.6f);
          each.addRect(MARGIN, bottom, width(), top - bottom);
          each.stroke();
        });
  }

  /** Writes a name and what it is, the name in a column of its own. */
  public Paper fact(String name, String value, double points) {
    float size = (float) points;
    float column = width() * 0.36f;
    List<String> lines = typeface.lines(value, size, width() - column);
    need(lines.size() * size * LEADING);
    write(name, MARGIN, size, SOFT, false);
    for (String line : lines) {
      write(line, MARGIN + column, size, INK, false);
      y -= size * LEADING;
    }
    y -= size * 0.25f;
    return this;
  }

  /** Writes a few large words, such as start times, that are read from afar. */
  public Paper large(String name, String value) {
    need(52);
    write(name, MARGIN, 11, SOFT, false);
    y -= 11 * LEADING;
    for (String line : typeface.lines(value, 20, width())) {
      need(20 * LEADING);
      write(line, MARGIN, 20, INK, true);
      y -= 20 * LEADING;
    }
    y -= 6;
    return this;
  }

  /**
   * Writes a table as large as fits the rest of the page, between two sizes of letters; one that
   * does not fit at the smaller goes on to further pages with its headings.
   */
  public Paper table(PaperTable table, double largest, double smallest, double keptFree) {
    float points = (float) largest;
    while (points > smallest && height(table, points) > left() - keptFree) {
      points -= 0.5f;
    }
    TableLayout layout = new TableLayout(typeface, table, width(), points);
    headings(layout);
    boolean shaded = false;
    for (TableLayout.Row row : layout.rows()) {
      if (left() < row.height()) {
        goOn();
        headings(layout);
      }
      row(layout, row, shaded);
      shaded = !shaded;
    }
    line(MARGIN, y, MARGIN + width(), y, INK, 0.9f);
    y -= 10;
    return this;
  }

  private float height(PaperTable table, float points) {
    return new TableLayout(typeface, table, width(), points).height() + 12;
  }

  private void headings(TableLayout layout) {
    if (layout.headings().cells().isEmpty()) {
      return;
    }
    float top = y;
    for (TableLayout.Cell cell : layout.headings().cells()) {
      cell(cell, top, SOFT, false, layout.headingSize());
    }
    y = top - layout.headings().height();
    line(MARGIN, y, MARGIN + width(), y, INK, 0.9f);
  }

  private void row(TableLayout layout, TableLayout.Row row, boolean shaded) {
    float top = y;
    if (shaded) {
      draw(
          each -> {
            each.setNonStrokingColor(GROUND);
            each.addRect(MARGIN, top - row.height(), width(), row.height());
            each.fill();
          });
    }
    for (TableLayout.Cell cell : row.cells()) {
      cell(cell, top, INK, cell.strong(), layout.size());
    }
    y = top - row.height();
    line(MARGIN, y, MARGIN + width(), y, LINE, 0.4f);
  }

  private void cell(TableLayout.Cell cell, float top, float grey, boolean strong, float points) {
    y = top - TableLayout.PADDING;
    for (String line : cell.lines()) {
      float shift = cell.number() ? cell.room() - typeface.width(line, points) : 0;
      write(line, MARGIN + cell.x() + shift, points, grey, strong);
      y -= points * TableLayout.LEADING;
    }
  }

  /** Writes a thing to be done with a box to tick and room for initials. */
  public Paper tick(String words) {
    float points = 11;
    float room = width() - 22 - 70;
    List<String> lines = typeface.lines(words, points, room);
    need(lines.size() * points * LEADING + 8);
    float top = y;
    draw(
        each -> {
          each.setStrokingColor(INK);
          each.setLineWidth(0.9f);
          each.addRect(MARGIN, top - 12, 11, 11);
          each.stroke();
        });
    float end = MARGIN + width();
    line(end - 58, top - 13, end, top - 13, LINE, 0.8f);
    for (String line : lines) {
      write(line, MARGIN + 22, points, INK, false);
      y -= points * LEADING;
    }
    y -= 6;
    return this;
  }

  /** Writes lines to sign on, side by side. */
  public Paper signatures(List<String> names) {
    need(56);
    y -= 30;
    float each = width() / names.size();
    for (int i = 0; i < names.size(); i++) {
      float x = MARGIN + i * each;
      line(x, y, x + each - 18, y, INK, 0.8f);
      y -= 3;
      write(names.get(i), x, 9, SOFT, false);
      y += 3;
    }
    y -= 22;
    return this;
  }

  /**
   * A bar of a picture.
   *
   * @param amount how long it is, beside the others; not below 0
   * @param value what stands behind it
   */
  public record Bar(String name, double amount, String value) {}

  /** Draws bars below each other, the longest as long as fits, each with its name and value. */
  public Paper bars(List<Bar> bars) {
    need(bars.size() * 24f + 6);
    double most = bars.stream().mapToDouble(Bar::amount).max().orElse(0);
    float from = width() * 0.28f;
    float room = width() * 0.5f;
    for (Bar bar : bars) {
      float length = most > 0 ? (float) (bar.amount() / most * room) : 0;
      float top = y;
      write(bar.name(), MARGIN, 11, SOFT, false);
      draw(
          each -> {
            each.setNonStrokingColor(SOFT);
            each.addRect(MARGIN + from, top - 15, length, 15);
            each.fill();
          });
      write(bar.value(), MARGIN + from + length + 6, 11, INK, false);
      y -= 24;
    }
    y -= 4;
    return this;
  }

  /** Leaves some room. */
  public Paper space(double points) {
    y -= (float) points;
    return this;
  }

  /** Returns the finished file; nothing can be added after. */
  public byte[] file() {
    try {
      if (pen != null) {
        pen.close();
        pen = null;
      }
      feet();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private void feet() throws IOException {
    int count = document.getNumberOfPages();
    for (int i = 0; i < count; i++) {
      PDPage page = document.getPage(i);
      pen =
          new PDPageContentStream(
              document, page, PDPageContentStream.AppendMode.APPEND, true, true);
      y = MARGIN - 6;
      line(MARGIN, y + 6, MARGIN + width(), y + 6, LINE, 0.6f);
      write(foot, MARGIN, 8.5f, SOFT, false);
      String number = "Page %s of %s".formatted(i + 1, count);
      float end = MARGIN + width() - typeface.width(number, 8.5f);
      write(number, end, 8.5f, SOFT, false);
      pen.close();
      pen = null;
    }
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
