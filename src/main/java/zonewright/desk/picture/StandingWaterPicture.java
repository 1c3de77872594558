package zonewright.desk.picture;

import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;
import zonewright.water.StandingWater;

/** The water that stands on the soil of a zone while its cycles run and soak. */
final class StandingWaterPicture implements Picture {
  private static final String NAME = "Water standing on the soil";

  @Override
  public String id() {
    return "standing-water";
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Subject subject() {
    return Subject.row(Sheets.ZONES);
  }

  @Override
  public Drawing of(Design design, int row) {
    Book book = design.book();
    String title =
        NAME
            + ", "
            + book.cellName(book.schema().table(Sheets.ZONES).columns().get(0).reference(), row)
                .row();
    StandingWater.Answer answer = StandingWater.of(book, row);
    if (answer instanceof StandingWater.Shown shown) {
      return shown.water().greatestAtOnce() == 0
          ? Drawing.saying(title, "No water stands: the soil takes it in as fast as it comes.")
          : new StandingWaterDrawing(title, shown.water());
    }
    return Drawing.saying(title, ((StandingWater.NotKnown) answer).sentence());
  }
}
