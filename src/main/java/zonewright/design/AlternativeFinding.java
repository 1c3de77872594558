package zonewright.design;

import java.util.List;
import java.util.Optional;
import zonewright.alternatives.Alternatives;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/** Changes of alternatives that mean nothing any more: their zone went, or their value is none. */
final class AlternativeFinding {
  private static final String CURE =
      "name a sheet, row and column that are there, or delete the row of the change";

  private AlternativeFinding() {}

  /** Returns them; nothing in most designs, which have no alternatives. */
  static List<Finding> of(Book book) {
    if (book.rows(Sheets.CHANGES) == 0) {
      return List.of();
    }
    Reference first = book.schema().table(Sheets.CHANGES).columns().get(0).reference();
    return new Alternatives(book)
        .problems().entrySet().stream()
            .map(
                problem ->
                    new Finding(
                        Severity.CHECK,
                        first,
                        problem.getKey(),
                        new FindingWords.Plain(
                            Finder.where(book.cellName(first, problem.getKey())),
                            problem.getValue(),
                            CURE,
                            Optional.empty())))
            .toList();
  }
}
