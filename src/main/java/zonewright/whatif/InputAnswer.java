package zonewright.whatif;

import java.util.List;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Place;

/** What came of an {@link InputQuestion}. */
public sealed interface InputAnswer {
  /** Returns it in words, a line each. */
  List<String> lines();

  /**
   * The question makes no sense as it stands.
   *
   * @param sentence what is wrong and what would be right
   */
  record Refused(String sentence) implements InputAnswer {
    @Override
    public List<String> lines() {
      return List.of(sentence);
    }
  }

  /**
   * No number the cell may hold gives what is wanted.
   *
   * @param sentence says so, with what comes nearest
   * @param nearest the number that comes nearest
   */
  record OutOfReach(String sentence, double nearest) implements InputAnswer {
    @Override
    public List<String> lines() {
      return List.of(sentence);
    }
  }

  /**
   * A number was found.
   *
   * @param input the cell to type it into
   * @param value the number, in the unit of its column: of those that do, one that is near to what
   *     the cell holds; just that where it does already
   * @param ranges all that do, in their order, as far as was looked
   * @param already whether nothing need be changed
   * @param lines what changes and what comes of it, with the working of the answer
   */
  record Reached(
      Place input,
      double value,
      List<NumberSearch.Span> ranges,
      boolean already,
      List<String> lines)
      implements InputAnswer {
    public Reached {
      ranges = List.copyOf(ranges);
      lines = List.copyOf(lines);
    }

    /** Returns the edit that types it, for a book like the one that was asked about. */
    public Edit edit(Book book) {
      return new Edits(book).set(input.column(), input.row(), new Entry.Figure(value));
    }
  }
}
