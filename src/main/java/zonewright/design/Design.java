package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import zonewright.alternatives.AlternativeEdits;
import zonewright.climate.Climate;
import zonewright.climate.RecordedWeather;
import zonewright.climate.Weather;
import zonewright.nights.Nights;
import zonewright.pipes.ValveLosses;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.SchemaSource;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.AllowedDays;
import zonewright.weather.YearsOfWeather;

/**
 * An irrigation design: its sheets, and what there is to say about it. Serves one thread at a time.
 */
public final class Design {
  private static final int[] MONTH_LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private final Book book;
  private final Findings findings;
  private final Nights nights;

  private Design(Book book) {
    this.book = book;
    this.nights = new Nights(book);
    this.findings = new Findings(book);
    book.completeEdits(
        edit -> AlternativeEdits.completed(book, OwnColumnChange.completed(book, edit)));
  }

  /** Returns a design with its months and two programs, some usual valves, and no zones yet. */
  public static Design blank(UnitSystem system) {
    return new Design(blankBook(OwnColumns.source(), system));
  }

  /**
   * Returns the sheets of a blank design, of a source that declares the same tables and columns.
   */
  static Book blankBook(SchemaSource source, UnitSystem system) {
    Book book = new Book(source, system);
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    for (int month = 0; month < MONTH_LENGTHS.length; month++) {
      Entry number = new Entry.Figure(month + 1);
      parts.add(edits.set(Climate.NUMBER.reference(), month, number));
      parts.add(edits.set(Weather.NUMBER.reference(), month, number));
      parts.add(edits.set(Climate.DAYS.reference(), month, new Entry.Figure(MONTH_LENGTHS[month])));
    }
    for (int row = 0; row < book.rows(Sheets.RECORD); row++) {
      int days =
          row < MONTH_LENGTHS.length
              ? MONTH_LENGTHS[row]
              : YearsOfWeather.SPANS.get(row - MONTH_LENGTHS.length);
      parts.add(edits.set(RecordedWeather.DAYS.reference(), row, new Entry.Figure(days)));
    }
    for (int night = 0; night < AllowedDays.DAY_NAMES.size(); night++) {
      parts.add(edits.set(AllowedDays.NUMBER.reference(), night, new Entry.Figure(night + 1)));
    }
    parts.add(
        edits.appended(
            Sheets.PROGRAMS,
            List.of(List.of(new Entry.Words("A")), List.of(new Entry.Words("B")))));
    parts.add(edits.appended(Sheets.VALVES, ValveLosses.usual(system)));
    parts.addAll(PricingSheets.numbering(edits));
    book.start(new Edit.Several("new design", parts));
    return book;
  }

  /**
   * Returns a design of its own with what another held when the snapshot was taken, all calculated.
   */
  public static Design of(BookSnapshot snapshot) {
    Book book = new Book(OwnColumns.source(), snapshot);
    book.settle();
    return new Design(book);
  }

  /** Returns the sheets. */
  public Book book() {
    return book;
  }

  /** Returns a maker of edits for the sheets. */
  public Edits edits() {
    return new Edits(book);
  }

  /** Returns the timetable of its nights. */
  public Nights nights() {
    return nights;
  }

  /**
   * Returns what the designer should know, the worst first. What the timetable found is among it
   * once the timetable is made; see {@link Nights#plan}.
   */
  public List<Finding> findings() {
    return findings.all(nights.findings());
  }
}
