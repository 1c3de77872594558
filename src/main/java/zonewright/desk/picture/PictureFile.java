package zonewright.desk.picture;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import zonewright.desk.part.Palette;

/** Pictures as files: PNG for screens and mail, SVG for paper and further drawing. */
public final class PictureFile {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int POINTS = 12;

  /** How many pixels of a PNG stand for one of the screen, so that it prints well. */
  private static final int FINENESS = 3;

  private PictureFile() {}

  /**
   * Writes a drawing in the light colours, as SVG where the name ends so and else as PNG.
   *
   * @param size the size it has on an unscaled screen
   * @throws IOException when the file cannot be written
   */
  public static void write(Drawing drawing, Dimension size, Path file) throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    byte[] content = name.endsWith(".svg") ? svg(drawing, size) : png(drawing, size);
    Files.write(file, content);
  }

  private static Font font() {
    return new Font(Font.SANS_SERIF, Font.PLAIN, POINTS);
  }

  /** Returns a drawing as PNG. */
  static byte[] png(Drawing drawing, Dimension size) throws IOException {
    BufferedImage image =
        new BufferedImage(
            size.width * FINENESS, size.height * FINENESS, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    Painting.smooth(pen);
    pen.scale(FINENESS, FINENESS);
    all(drawing, pen, size);
    pen.dispose();
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    ImageIO.write(image, "png", content);
    return content.toByteArray();
  }

  private static void all(Drawing drawing, Graphics2D pen, Dimension size) {
    Palette palette = Palette.onPaper();
    pen.setColor(palette.paper());
    pen.fillRect(0, 0, size.width, size.height);
    Painting.paint(drawing, pen, size, font(), palette, 1, true);
  }

  /** Returns a drawing as SVG, with its title and what it shows in words. */
  static byte[] svg(Drawing drawing, Dimension size) throws IOException {
    Document document = blank();
    SVGGraphics2D pen = new SVGGraphics2D(document);
    pen.setSVGCanvasSize(size);
    all(drawing, pen, size);
    Element root = pen.getRoot();
    root.setAttribute("viewBox", "0 0 " + size.width + " " + size.height);
    root.setAttribute("role", "img");
    describe(document, root, "desc", drawing.inWords());
    describe(document, root, "title", drawing.title());
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    try (Writer writer = new OutputStreamWriter(content, StandardCharsets.UTF_8)) {
      pen.stream(root, writer, true, false);
    } catch (SVGGraphics2DIOException problem) {
      throw new IOException(problem);
    } finally {
      pen.dispose();
    }
    return content.toByteArray();
  }

  private static void describe(Document document, Element root, String tag, String words) {
    Element element = document.createElementNS(SVG, tag);
    element.setTextContent(words);
    root.insertBefore(element, root.getFirstChild());
  }

  private static Document blank() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setNamespaceAware(true);
      return factory.newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException impossible) {
      throw new UncheckedIOException(new IOException(impossible));
    }
  }
}
