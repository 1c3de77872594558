package zonewright.whatif;

import java.util.Optional;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Place;
import zonewright.units.QuantityText;

/**
 * Asks what must be typed into one cell of a design, so that another is as wanted.
 *
 * @param input the cell to type into
 * @param answer the cell that follows
 * @param goal whether it is to be just so, or at most or at least so
 * @param wanted the number wanted of it, in the unit of its column
 */
public record InputQuestion(Place input, Place answer, NumberSearch.Goal goal, double wanted) {

  /**
   * Returns the number that is wanted of an answer, as a person wrote it.
   *
   * @return a number, or a sentence that says what would be right
   */
  public static QuantityText.Reading wanted(Book book, Place answer, String written) {
    return QuantityText.read(written, answer.column().kind(), book.system());
  }

  /** Returns why a cell cannot be found by an answer; empty where it can. */
  public static Optional<String> refused(Book book, Place input, Place answer) {
    return refusedInput(book, input).or(() -> refusedAnswer(book, input, answer));
  }

  /** Returns why a number cannot be found for a cell; empty where it can. */
  public static Optional<String> refusedInput(Book book, Place input) {
    Column column = book.schema().column(input.column());
    String cell = name(book, input);
    if (!column.takesEntries()) {
      return Optional.of(
          "%s is calculated, so nothing is typed there; choose an input it follows from%s."
              .formatted(cell, FollowsFrom.fewInputs(book.schema(), column)));
    }
    return column.content() == Column.Content.NUMBER
        ? Optional.empty()
        : Optional.of("%s holds words; only numbers can be found.".formatted(cell));
  }

  private static Optional<String> refusedAnswer(Book book, Place input, Place answer) {
    Column column = book.schema().column(answer.column());
    if (answer.equals(input)) {
      return Optional.of("Choose an answer that follows from %s.".formatted(name(book, input)));
    }
    if (column.content() != Column.Content.NUMBER) {
      return Optional.of(
          "%s holds words; choose an answer that is a number.".formatted(name(book, answer)));
    }
    return column.formula().isPresent()
        ? Optional.empty()
        : Optional.of(
            "%s is typed and follows from nothing; choose an answer that is calculated."
                .formatted(name(book, answer)));
  }

  /** Returns a cell as a person would name it. */
  static String name(Book book, Place cell) {
    return book.cellName(cell.column(), cell.row()).inWords();
  }
}
