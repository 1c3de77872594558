package zonewright.desk.picture;

import zonewright.design.Design;
import zonewright.fieldwork.Cans;
import zonewright.fieldwork.CatchSurface;
import zonewright.fieldwork.CatchTests;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;

/** The cans of a test on their plan, shaded by depth; beside the tests, and beside the cans. */
final class CatchPicture implements Picture {
  private final boolean besideCans;

  CatchPicture(boolean besideCans) {
    this.besideCans = besideCans;
  }

  @Override
  public String id() {
    return besideCans ? "catch-of-can" : "catch";
  }

  @Override
  public String name() {
    return "Water caught";
  }

  @Override
  public Subject subject() {
    return Subject.row(besideCans ? Sheets.CANS : Sheets.TESTS);
  }

  @Override
  public Drawing of(Design design, int row) {
    Book book = design.book();
    if (row >= book.rows(subject().sheet())) {
      return Drawing.saying(name(), "There is no test of the field yet.");
    }
    double test = besideCans ? book.number(Cans.TEST.reference(), row) : row;
    if (Double.isNaN(test) || test >= book.rows(Sheets.TESTS)) {
      return Drawing.saying(name(), "This can names no test yet.");
    }
    int at = (int) test;
    String title = name() + ", " + book.cellName(CatchTests.NAME.reference(), at).row();
    CatchSurface surface = CatchSurface.of(book, at);
    if (surface.drawable()) {
      return new CatchDrawing(title, surface, at(book, at));
    }
    return Drawing.saying(
        title,
        "Shading needs at least three cans with a depth and a place: type Across and Up in the sheet Cans, or paste the catches"
            + " as a grid (menu Field).");
  }

  private static String at(Book book, int test) {
    return "Low-quarter uniformity "
        + book.shown(
            CatchTests.LOW_QUARTER.reference(),
            book.outcome(CatchTests.LOW_QUARTER.reference(), test))
        + ", net rate "
        + book.shown(CatchTests.RATE.reference(), book.outcome(CatchTests.RATE.reference(), test));
  }
}
