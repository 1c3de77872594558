package zonewright.desk.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import zonewright.budget.SiteBudget;
import zonewright.design.Design;
import zonewright.fieldwork.Watching;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;

/** The percents a controller showed, over what the months ask. */
final class WatchPicture implements Picture {
  @Override
  public String id() {
    return "controller-watched";
  }

  @Override
  public String name() {
    return "Controller against the months";
  }

  @Override
  public Subject subject() {
    return Subject.row(Sheets.CONTROLLER);
  }

  @Override
  public Drawing of(Design design, int row) {
    Book book = design.book();
    List<WatchDrawing.Point> points = new ArrayList<>();
    for (int at = 0; at < book.rows(Sheets.CONTROLLER); at++) {
      double day = book.number(Watching.DATE.reference(), at);
      double shown = book.number(Watching.SHOWN.reference(), at);
      if (!Double.isNaN(day + shown)) {
        String zone = book.outcome(Watching.ZONE.reference(), at).text();
        points.add(new WatchDrawing.Point(day, shown, zone, at == row));
      }
    }
    List<Double> months = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      months.add(book.number(SiteBudget.PERCENT.reference(), month));
    }
    if (points.isEmpty()) {
      return Drawing.saying(name(), "No reading has a date and a percent yet.");
    }
    points.sort(Comparator.comparingDouble(WatchDrawing.Point::day));
    double tolerance = book.number(Watching.TOLERANCE.reference(), 0);
    return new WatchDrawing(name(), points, months, Double.isNaN(tolerance) ? 0 : tolerance);
  }
}
