package zonewright.uncertainty;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Schema;
import zonewright.trade.Sheets;
import zonewright.water.InputRange;

/**
 * A calculated cell that rests on a range somebody typed, so that its working says what it lies
 * between. All other cells are known to have nothing to say without a design being tried.
 *
 * @param column a number of zones, on whatever sheet, or an answer of the site
 * @param row its row; 0 for the site
 */
public record CellSpan(Column column, int row) {
  /** Returns it for a cell; none where it rests on no range that was typed. */
  public static Optional<CellSpan> of(Book book, Place place) {
    Column column = book.schema().column(place.column());
    boolean typed = !(book.entry(place.column(), place.row()) instanceof Entry.Blank);
    if (typed || column.formula().isEmpty() || column.content() != Column.Content.NUMBER) {
      return Optional.empty();
    }
    Set<Reference> typedOver = new HashSet<>();
    if (book.schema().sameRows(place.column().table(), Sheets.ZONES)) {
      addTyped(book, place.row(), typedOver);
    } else if (SureAnswer.OF_SITE.contains(column)) {
      IntStream.range(0, book.rows(Sheets.ZONES)).forEach(zone -> addTyped(book, zone, typedOver));
    }
    boolean rests = !typedOver.isEmpty() && rests(book.schema(), column, typedOver);
    return rests ? Optional.of(new CellSpan(column, place.row())) : Optional.empty();
  }

  /** Adds the inputs of a zone, and those of the site, that have a range somebody typed. */
  private static void addTyped(Book book, int zone, Set<Reference> inputs) {
    for (InputRange range : InputRange.all()) {
      int row = range.ofSite() ? 0 : zone;
      if (Stream.of(range.least(), range.greatest())
          .anyMatch(end -> !(book.entry(end.reference(), row) instanceof Entry.Blank))) {
        inputs.add(range.input().reference());
      }
    }
  }

  private static boolean rests(Schema schema, Column column, Set<Reference> inputs) {
    Set<Reference> seen = new HashSet<>();
    Deque<Reference> open = new ArrayDeque<>(Set.of(column.reference()));
    while (!open.isEmpty()) {
      Reference next = open.pop();
      if (inputs.contains(next)) {
        return true;
      }
      schema.dependencies(schema.column(next)).stream()
          .flatMap(needs -> Stream.concat(needs.cells().stream(), needs.columns().stream()))
          .filter(seen::add)
          .forEach(open::add);
    }
    return false;
  }
}
