package zonewright.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * A document of pages on which somebody else places words and grounds. Places are in points from
 * the upper left corner, colours as red, green and blue of eight bits each.
 */
public final class DrawnPages implements AutoCloseable {
  private static final float SLANT = 0.21f;

  private final PDDocument document = new PDDocument();
  private final Typeface typeface;
  private final float width;
  private final float height;
  private PDPageContentStream pen;

  /** Begins a document of pages of one size, in points. */
  public DrawnPages(double width, double height) {
    this.width = (float) width;
    this.height = (float) height;
    try {
      typeface = new Typeface(document);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Begins a page. */
  public void page() {
    try {
      if (pen != null) {
        pen.close();
      }
      PDPage page = new PDPage(new PDRectangle(width, height));
      document.addPage(page);
      pen = new PDPageContentStream(document, page);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Fills a rectangle. */
  public void fill(int colour, double x, double y, double wide, double high) {
    try {
      colour(colour);
      pen.addRect((float) x, height - (float) (y + high), (float) wide, (float) high);
      pen.fill();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Writes words on a base line. */
  public void words(
      int colour,
      String words,
      double x,
      double base,
      double points,
      boolean strong,
      boolean slanted) {
    String text = typeface.printable(words);
    if (text.isBlank()) {
      return;
    }
    try {
      colour(colour);
      pen.setLineWidth((float) points * 0.035f);
      pen.beginText();
      pen.setFont(typeface.font(), (float) points);
      pen.setRenderingMode(strong ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
      float y = height - (float) base;
      pen.setTextMatrix(new Matrix(1, 0, slanted ? SLANT : 0, 1, (float) x, y));
      pen.showText(text);
      pen.endText();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private void colour(int colour) throws IOException {
    float red = (colour >> 16 & 0xff) / 255f;
    float green = (colour >> 8 & 0xff) / 255f;
    float blue = (colour & 0xff) / 255f;
    pen.setNonStrokingColor(red, green, blue);
    pen.setStrokingColor(red, green, blue);
  }

  /** Returns how wide words are, in points. */
  public double width(String words, double points) {
    return typeface.width(typeface.printable(words), (float) points);
  }

  /** Returns the finished file; nothing can be added after. */
  public byte[] file() {
    try {
      if (pen != null) {
        pen.close();
        pen = null;
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
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
