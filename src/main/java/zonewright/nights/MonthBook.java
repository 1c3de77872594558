package zonewright.nights;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.trade.Sheets;
import zonewright.water.Demand;

/**
 * The nights of a month in which zones need another share of their peak water. The minutes of a
 * week are scaled; run times, cycles and soaks then follow by the same formulas as ever.
 */
public final class MonthBook {
  private MonthBook() {}

  /**
   * Returns what the timetable depends on when every zone needs {@code share} of its peak water.
   *
   * @param share 1 for the peak month; not negative
   */
  public static Optional<NightsInput> input(Book peak, double share) {
    return scaled(peak.schema(), peak.snapshot(), minutes(peak), share);
  }

  /** Returns the minutes a week of each zone, to hand to {@link #scaled} with a snapshot. */
  public static double[] minutes(Book peak) {
    double[] minutes = new double[peak.rows(Sheets.ZONES)];
    for (int row = 0; row < minutes.length; row++) {
      minutes[row] = peak.number(Demand.NEED_PER_WEEK.reference(), row);
    }
    return minutes;
  }

  /** As {@link #input}, of a book as it was; on any thread. */
  public static Optional<NightsInput> scaled(
      Schema schema, BookSnapshot snapshot, double[] minutes, double share) {
    Book book = new Book(schema.withInputs(Set.of(Demand.NEED_PER_WEEK.reference())), snapshot);
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    for (int row = 0; row < minutes.length; row++) {
      if (!Double.isNaN(minutes[row])) {
        Entry scaled = new Entry.Figure(minutes[row] * share);
        parts.add(edits.set(Demand.NEED_PER_WEEK.reference(), row, scaled));
      }
    }
    book.start(new Edit.Several("month", parts));
    return NightsReading.of(book).input();
  }

  /** A month with its share of the peak, 1 for the peak itself. */
  public record Month(String name, double share) {
    /** Returns it as on a card, such as {@code Jul 90 %}. */
    public String percent() {
      return name.substring(0, 3) + " " + Math.round(share * 100) + " %";
    }
  }

  /** Returns the months whose share is known. */
  public static List<Month> months(Book book) {
    return months(book, SiteBudget.PERCENT);
  }

  /** Returns the months with the percent that the controller is set to, as far as known. */
  public static List<Month> toKeyIn(Book book) {
    return months(book, SiteBudget.PERCENT_TO_KEY_IN);
  }

  private static List<Month> months(Book book, Column percent) {
    List<Month> months = new ArrayList<>();
    for (int row = 0; row < Climate.MONTH_NAMES.size(); row++) {
      double share = book.number(percent.reference(), row);
      if (!Double.isNaN(share)) {
        months.add(new Month(Climate.MONTH_NAMES.get(row), share));
      }
    }
    return months;
  }
}
