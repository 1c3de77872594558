package zonewright.paper;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The paper of the country, upright. */
public enum PaperSize {
  LETTER,
  A4;

  float width() {
    return rectangle().getWidth();
  }

  float height() {
    return rectangle().getHeight();
  }

  PDRectangle rectangle() {
    return this == LETTER ? PDRectangle.LETTER : PDRectangle.A4;
  }
}
