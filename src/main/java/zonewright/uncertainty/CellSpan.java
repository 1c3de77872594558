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
    return asked(book, place)
        .filter(cell -> cell.rests(book.schema(), cell.typedOver(book)))
        .filter(cell -> told(book, cell.column));
  }

  /** Returns it for a cell, also where only published ranges count. */
  public static Optional<CellSpan> any(Book book, Place place) {
    return asked(book, place).filter(cell -> told(book, cell.column));
  }

  private static Optional<CellSpan> asked(Book book, Place place) {
    Column column = book.schema().column(place.column());
    boolean typed = !(book.entry(place.column(), place.row()) instanceof Entry.Blank);
    boolean number = column.formula().isPresent() && column.content() == Column.Content.NUMBER;
    return number && !typed && (ofZones(book, column) || SureAnswer.OF_SITE.contains(column))
        ? Optional.of(new CellSpan(column, place.row()))
        : Optional.empty();
  }

  private static boolean ofZones(Book book, Column column) {
    return book.schema().sameRows(column.reference().table(), Sheets.ZONES);
  }

  /** An answer of the site is told where the design has what it is held against. */
  private static boolean told(Book book, Column column) {
    return ofZones(book, column)
        || SureAnswer.ofSite(book).stream().anyMatch(answer -> answer.column().equals(column));
  }

  /** Returns the inputs with a range somebody typed, of the zone and the site, or of all zones. */
  private Set<Reference> typedOver(Book book) {
    Set<Reference> inputs = new HashSet<>();
    if (ofZones(book, column)) {
      addTyped(book, row, inputs);
    } else {
      IntStream.range(0, book.rows(Sheets.ZONES)).forEach(zone -> addTyped(book, zone, inputs));
    }
    return inputs;
  }

  private static void addTyped(Book book, int zone, Set<Reference> inputs) {
    for (InputRange range : InputRange.all()) {
      int row = range.ofSite() ? 0 : zone;
      if (Stream.of(range.least(), range.greatest())
          .anyMatch(end -> !(book.entry(end.reference(), row) instanceof Entry.Blank))) {
        inputs.add(range.input().reference());
      }
    }
  }

  /** Says whether the cell follows from any of some inputs. */
  private boolean rests(Schema schema, Set<Reference> inputs) {
    Set<Reference> seen = new HashSet<>();
    Deque<Reference> open = new ArrayDeque<>(Set.of(column.reference()));
    while (!inputs.isEmpty() && !open.isEmpty()) {
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
