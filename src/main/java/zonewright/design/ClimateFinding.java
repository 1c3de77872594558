package zonewright.design;

import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/** That zones are there and nobody has said how much water their climate asks for. */
public final class ClimateFinding {
  private static final String SENTENCE =
      "the climate is not known, and water, run times and budget of every zone rest on it";
  private static final String CURE =
      "choose the climate place, type twelve months of reference ET on the sheet Months, or take a weather file";

  private ClimateFinding() {}

  /** Returns what is missing; nothing where the climate is known or no zone waits for it. */
  static Optional<Finding> of(Book book) {
    return lacking(book)
        ? Optional.of(
            new Finding(
                Severity.MISSING,
                Climate.PLACE.reference(),
                0,
                new FindingWords.Plain("Site:", SENTENCE, CURE, Optional.empty())))
        : Optional.empty();
  }

  /** Returns the same as a sentence of its own, for whoever took a list of zones. */
  public static Optional<String> sentence(Book book) {
    return lacking(book)
        ? Optional.of("T%s: %s.".formatted(SENTENCE.substring(1), CURE))
        : Optional.empty();
  }

  private static boolean lacking(Book book) {
    return book.outcome(Peak.REFERENCE_ET.reference(), 0) instanceof Outcome.Missing
        && IntStream.range(0, book.rows(Sheets.ZONES)).anyMatch(row -> begun(book, row));
  }

  /** Says whether a row is a zone somebody began; blank ones stand ready in a new design. */
  private static boolean begun(Book book, int row) {
    return book.entry(Facts.ZONE_NAME.reference(), row) instanceof Entry.Words
        || !(book.entry(Emitters.AREA.reference(), row) instanceof Entry.Blank);
  }
}
