package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import zonewright.budget.ZoneBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;

/** The zones by their share of the site's water, the greatest first. */
final class SharePicture implements Picture {
  private static final String NAME = "Zones by share of the water";

  private final KnownZones known = new KnownZones();

  @Override
  public String id() {
    return "shares";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.whole(Sheets.ZONES);
  }

  @Override
  public Drawing of(Design design, int row) {
    return known
        .of(design)
        .map(some -> drawn(some.design().book(), NAME + some.without()))
        .orElseGet(() -> drawn(design.book(), NAME));
  }

  private static Drawing drawn(Book book, String title) {
    Reference share = ZoneBudget.SHARE.reference();
    List<ShareDrawing.Share> shares = new ArrayList<>();
    int unknown = 0;
    for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
      double value = book.number(share, zone);
      if (Double.isNaN(value)) {
        unknown++;
      } else {
        shares.add(new ShareDrawing.Share(name(book, zone), value, percent(value)));
      }
    }
    if (shares.isEmpty()) {
      return Drawing.saying(
          title,
          unknown == 0
              ? "There is no zone yet."
              : ZoneBudget.SHARE.name() + ": " + book.outcome(share, 0).sentence());
    }
    shares.sort(Comparator.comparingDouble(ShareDrawing.Share::value).reversed());
    return new ShareDrawing(title, shares, unknown);
  }

  private static String percent(double value) {
    return QuantityText.fixed(value * 100, 1) + " %";
  }

  private static String name(Book book, int zone) {
    String name = words(book, Facts.ZONE_NAME.reference(), zone);
    String place = words(book, Facts.ZONE_PLACE.reference(), zone);
    return place.isEmpty() ? name : name + "  " + place;
  }

  private static String words(Book book, Reference column, int zone) {
    return book.entry(column, zone) instanceof Entry.Words words ? words.text() : "";
  }
}
