package zonewright.uncertainty;

import java.util.List;
import java.util.stream.IntStream;
import zonewright.sheet.Column;

/** What is known of some answers over all ranges, row by row. */
final class Ranging {
  private final List<Column> answers;
  private final Spans spans;
  private final Profile[][] alone;
  private final boolean[][] steady;

  /**
   * Holds what was found.
   *
   * @param spans what they came to in all designs tried
   * @param alone what each input alone does to each of them
   * @param steady of which the ends are sure
   */
  Ranging(List<Column> answers, Spans spans, Profile[][] alone, boolean[][] steady) {
    this.answers = List.copyOf(answers);
    this.spans = spans;
    this.alone = alone;
    this.steady = steady;
  }

  /** Returns the answers it tells of. */
  List<Column> answers() {
    return answers;
  }

  /** Says whether it tells of an answer. */
  boolean tells(Column answer) {
    return answers.contains(answer);
  }

  /** Returns what an answer lies between. */
  HowSure.Span span(Column answer, int row) {
    int at = answers.indexOf(answer);
    return new HowSure.Span(
        answer,
        spans.held[at][row],
        spans.least[at][row],
        spans.greatest[at][row],
        steady[at][row],
        spans.missing[at][row]);
  }

  /** Returns what an input alone does to an answer. */
  Profile alone(int input, Column answer) {
    return alone[input][answers.indexOf(answer)];
  }

  /** Says whether an input moves any of the answers by itself. */
  boolean moves(int input, int row) {
    return IntStream.range(0, answers.size()).anyMatch(at -> alone[input][at].moves(row));
  }
}
