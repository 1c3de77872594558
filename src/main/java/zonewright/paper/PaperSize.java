package zonewright.paper;

import org.apache.pdfbox.pdmodel.common.PDRectangle;
import zonewright.units.UnitSystem;

/** The paper of the country, upright. */
public enum PaperSize {
  LETTER,
  A4;

  /** Returns the paper where people measure in a unit system. */
  public static PaperSize of(UnitSystem system) {
    return system == UnitSystem.US ? LETTER : A4;
  }

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
