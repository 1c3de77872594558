package zonewright.whatif;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.NumberSearch;

/** What came of a search for an input, in words. */
final class InputWords {
  private static final int MOST_RANGES = 4;

  private final Book book;
  private final InputQuestion question;
  private final TriedRange range;
  private final NumberSearch search;
  private final Column input;
  private final Column answer;
  private final String inputName;
  private final String answerName;

  InputWords(Book book, InputQuestion question, TriedRange range, NumberSearch search) {
    this.book = book;
    this.question = question;
    this.range = range;
    this.search = search;
    this.input = book.schema().column(question.input().column());
    this.answer = book.schema().column(question.answer().column());
    this.inputName = InputQuestion.name(book, question.input());
    this.answerName = InputQuestion.name(book, question.answer());
  }

  private String typed(double number) {
    return book.wording().exactly(input, number);
  }

  private String held(double number) {
    return book.shown(input.reference(), new Outcome.Amount(number));
  }

  private String comes(double number) {
    return book.shown(answer.reference(), new Outcome.Amount(search.at(number)));
  }

  /** Returns what is wanted, as "at most 3". */
  private String goal() {
    String number = book.wording().exactly(answer, question.wanted());
    return switch (question.goal()) {
      case EQUAL -> number;
      case AT_MOST -> "at most " + number;
      case AT_LEAST -> "at least " + number;
    };
  }

  /** Returns why an answer has no number, whatever is typed. */
  String noNumber(Outcome why) {
    return why instanceof Outcome.NotApplicable not
        ? "%s has no number here: %s.".formatted(answerName, not.because().replaceFirst("\\.$", ""))
        : "%s has no number yet; it %s."
            .formatted(
                answerName,
                why instanceof Outcome.Missing missing
                    ? missing.sentence()
                    : "cannot be worked out: " + why.sentence());
  }

  /** Returns that an answer does not follow from the input. */
  String nothingMoves(double always) {
    boolean follows = FollowsFrom.answers(book.schema(), input).contains(answer);
    boolean typed =
        answer.takesEntries() && book.working(answer.reference(), row()).symbols().isEmpty();
    return "%s stays %s whatever %s is%s."
        .formatted(
            answerName,
            book.shown(answer.reference(), new Outcome.Amount(always)),
            inputName,
            typed
                ? ", for it is typed over; clear it first"
                : follows
                    ? ""
                    : "; it follows from other inputs"
                        + FollowsFrom.fewInputs(book.schema(), answer));
  }

  private int row() {
    return question.answer().row();
  }

  /** Returns that no number does, and what the nearest comes to. */
  String outOfReach(double nearest) {
    return "None in range (%s): nothing typed for %s makes %s %s. The nearest is %s, with %s."
        .formatted(range.inWords(), inputName, answerName, goal(), comes(nearest), held(nearest));
  }

  /** Returns what changes, and all that would do. */
  List<String> reached(
      Outcome before, double value, List<NumberSearch.Span> spans, boolean already) {
    List<String> lines = new ArrayList<>();
    String now = comes(value);
    if (already) {
      lines.add(
          "%s is %s already, with %s at %s.".formatted(answerName, now, inputName, held(value)));
    } else {
      String held = Double.isNaN(range.held()) ? "blank" : held(range.held());
      lines.add("%s: from %s to %s".formatted(inputName, held, typed(value)));
      lines.add(
          "%s: from %s to %s, where %s is wanted"
              .formatted(answerName, book.shown(answer.reference(), before), now, goal()));
    }
    ranges(lines, spans);
    return lines;
  }

  private void ranges(List<String> lines, List<NumberSearch.Span> spans) {
    if (spans.size() > 1) {
      String told = String.join("; ", spans.stream().limit(MOST_RANGES).map(this::told).toList());
      lines.add(
          "%s ranges do: %s%s. The number nearest to the present one is taken."
              .formatted(spans.size(), told, spans.size() > MOST_RANGES ? "; and more" : ""));
    } else if (!spans.get(0).single()) {
      lines.add("What does: " + told(spans.get(0)));
    }
  }

  /** Returns a range in words, each end safely within it. */
  private String told(NumberSearch.Span span) {
    if (span.single()) {
      return typed(range.single(search, span));
    }
    String from = typed(range.within(search, span, false));
    String to = typed(range.within(search, span, true));
    boolean least = range.isLeast(span.from());
    boolean greatest = range.isGreatest(span.to());
    if (least && greatest) {
      return "all from %s to %s".formatted(from, to);
    }
    return least ? to + " or less" : greatest ? from + " or more" : from + " to " + to;
  }

  /** Returns how the answer comes about now, a line each. */
  List<String> working() {
    List<String> lines = new ArrayList<>(List.of(""));
    lines.addAll(book.working(answer.reference(), row()).asText().lines().toList());
    return lines;
  }
}
