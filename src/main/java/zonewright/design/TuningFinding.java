package zonewright.design;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.fieldwork.Tuning;
import zonewright.fieldwork.TuningAdvice;
import zonewright.fieldwork.Verdicts;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;

/** What the tuning log comes to, as a finding that can be carried out. */
final class TuningFinding {
  private static final Remedy TAKE = new Remedy("Set it so", TuningFinding::take);

  private TuningFinding() {}

  /** Returns the advice at the last verdict that waits; nothing where none does. */
  static Optional<Finding> of(Book book) {
    List<Integer> waiting = Tuning.waiting(book);
    if (waiting.isEmpty()) {
      return Optional.empty();
    }
    TuningAdvice advice = TuningAdvice.on(Tuning.state(book));
    boolean calm =
        advice.kind() == TuningAdvice.Kind.KEEP || advice.kind() == TuningAdvice.Kind.LOOK_AT_MORE;
    int last = waiting.get(waiting.size() - 1);
    return Optional.of(
        new Finding(
            calm ? Severity.NOTE : Severity.CHECK,
            Verdicts.VERDICT.reference(),
            last,
            new FindingWords.Plain(
                "Tuning log:",
                begun(String.join(" ", advice.reasons())),
                begun(advice.sentence()),
                advice.changes() ? Optional.of(TAKE) : Optional.empty())));
  }

  /** Returns sentences that go on from words before them, without the last full stop. */
  private static String begun(String sentences) {
    String first = sentences.substring(0, 1).toLowerCase(Locale.ROOT);
    return first + sentences.substring(1, sentences.length() - 1);
  }

  private static Optional<Edit> take(Book book, Reference cell, int row) {
    TuningAdvice advice = TuningAdvice.on(Tuning.state(book));
    return Tuning.applied(book, advice, LocalDate.now(ZoneId.systemDefault()));
  }
}
