package zonewright.fieldwork;

import static zonewright.trade.Sheets.TESTS;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;

/** Makes a test the source of its zone's rate and uniformity, and takes that back. */
public final class TestUse {
  private TestUse() {}

  /** Says whether a test is in use. */
  public static boolean inUse(Book book, int test) {
    return book.outcome(CatchTests.IN_USE.reference(), test).text().equals(CatchTests.YES);
  }

  /**
   * Returns the edit that makes a test the only source of its zone's rate and uniformity; what was
   * typed over the uniformity goes, or it would win. None where the test names no zone or has no
   * result yet.
   */
  public static Optional<Edit> use(Book book, int test) {
    int zone = zone(book, test);
    boolean result =
        !Double.isNaN(book.number(CatchTests.LOW_QUARTER.reference(), test))
            && !Double.isNaN(book.number(CatchTests.RATE.reference(), test));
    if (zone < 0 || !result) {
      return Optional.empty();
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    for (int other = 0; other < book.rows(TESTS); other++) {
      if (other == test || (zone(book, other) == zone && inUse(book, other))) {
        Entry word = new Entry.Words(other == test ? CatchTests.YES : CatchTests.NO);
        parts.add(edits.set(CatchTests.IN_USE.reference(), other, word));
      }
    }
    parts.add(edits.set(Emitters.RATE_METHOD.reference(), zone, new Entry.Words(Emitters.BY_TEST)));
    parts.add(cleared(edits, Emitters.DISTRIBUTION_UNIFORMITY.reference(), zone));
    return Optional.of(new Edit.Several("use of " + name(book, test), parts));
  }

  /**
   * Returns the edit after which a test no longer counts: the zone goes back to its usual rate and
   * uniformity unless another test is in use. None where the test was not in use.
   */
  public static Optional<Edit> drop(Book book, int test) {
    if (!inUse(book, test)) {
      return Optional.empty();
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    parts.add(cleared(edits, CatchTests.IN_USE.reference(), test));
    int zone = zone(book, test);
    boolean others = false;
    for (int other = 0; other < book.rows(TESTS); other++) {
      others |= other != test && zone(book, other) == zone && inUse(book, other);
    }
    boolean byTest =
        zone >= 0
            && book.outcome(Emitters.RATE_METHOD.reference(), zone).text().equals(Emitters.BY_TEST);
    if (byTest && !others) {
      parts.add(cleared(edits, Emitters.RATE_METHOD.reference(), zone));
    }
    return Optional.of(new Edit.Several("end of the use of " + name(book, test), parts));
  }

  private static Edit cleared(Edits edits, Reference column, int row) {
    return edits.cleared(List.of(column), List.of(row));
  }

  private static String name(Book book, int test) {
    return book.cellName(CatchTests.NAME.reference(), test).row();
  }

  private static int zone(Book book, int test) {
    double zone = book.number(CatchTests.ZONE.reference(), test);
    return Double.isNaN(zone) || zone >= book.rows(ZONES) ? -1 : (int) zone;
  }

  /** Uses the test a finding is about. */
  static Optional<Edit> mend(Book book, Reference cell, int row) {
    return use(book, row);
  }

  /** Lets the zone a finding is about go by its usual rate again. */
  static Optional<Edit> backToUsualRate(Book book, Reference cell, int row) {
    return Optional.of(cleared(new Edits(book), Emitters.RATE_METHOD.reference(), row));
  }
}
