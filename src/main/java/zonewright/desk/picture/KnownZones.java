package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.ZoneBudget;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.trade.Sheets;

/**
 * A design without the zones whose water is not known, so that one of them leaves a picture of the
 * site as it is without it, and not blank.
 */
final class KnownZones {
  /** Of more zones no second design is made while somebody types. */
  private static final int MOST = 400;

  private Design of;
  private Edit last;
  private Optional<Known> known = Optional.empty();

  /**
   * The design without them.
   *
   * @param without says which are left out, to stand behind a title
   */
  record Known(Design design, String without) {}

  /** Returns the design without them; none where all are known, or none is. */
  Optional<Known> of(Design design) {
    Edit now = design.book().journal().toUndo().orElse(null);
    if (design != of || now != last) {
      of = design;
      last = now;
      known = made(design);
    }
    return known;
  }

  private static Optional<Known> made(Design design) {
    Book book = design.book();
    int rows = book.rows(Sheets.ZONES);
    List<Integer> unknown = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      if (Double.isNaN(book.number(ZoneBudget.VOLUME_PER_WEEK.reference(), row))) {
        unknown.add(row);
      }
    }
    if (unknown.isEmpty() || unknown.size() == rows || rows > MOST) {
      return Optional.empty();
    }
    Design other = Design.of(book.snapshot());
    other.book().perform(new Edits(other.book()).removed(Sheets.ZONES, unknown));
    String without =
        unknown.size() == 1
            ? book.cellName(ZoneBudget.VOLUME_PER_WEEK.reference(), unknown.get(0)).row()
            : unknown.size() + " zones that are not known yet";
    return Optional.of(new Known(other, ", without " + without));
  }
}
