package zonewright.paper;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The paper of the country, upright. */
public enum PaperSize {
  LETTER(PDRectangle.LETTER),
  A4(PDRectangle.A4);

  private final PDRectangle rectangle;

  PaperSize(PDRectangle rectangle) {
    this.rectangle = rectangle;
  }

  float width() {
    return rectangle.getWidth();
  }

  float height() {
    return rectangle.getHeight();
  }

  PDRectangle rectangle() {
    return rectangle;
  }
}
