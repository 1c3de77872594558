package zonewright.formula;

import java.util.List;

/** What a cell holds: a number, or the reason why there is none. */
public sealed interface Outcome {
  /** Reads the outcome; every kind has its own answer, so that none is forgotten. */
  <R> R read(Cases<R> cases);

  /** One answer for each kind of outcome. */
  interface Cases<R> {
    R amount(double value);

    R words(String text);

    R blank();

    R missing(Missing missing);

    R refused(Refused refused);

    R notApplicable(NotApplicable not);
  }

  /** A number in the unit of its column. */
  record Amount(double value) implements Outcome {
    @Override
    public <R> R read(Cases<R> cases) {
      return cases.amount(value);
    }

    @Override
    public String sentence() {
      return "";
    }
  }

  /** Words. */
  record Words(String text) implements Outcome {
    @Override
    public <R> R read(Cases<R> cases) {
      return cases.words(text);
    }

    @Override
    public String sentence() {
      return "";
    }
  }

  /** An input with nothing in it. */
  record Blank() implements Outcome {
    @Override
    public <R> R read(Cases<R> cases) {
      return cases.blank();
    }

    @Override
    public String sentence() {
      return "";
    }
  }

  /** No number because inputs are blank; carried on to every cell that depends on them. */
  record Missing(List<CellName> needs) implements Outcome {
    public Missing {
      needs = List.copyOf(needs);
    }

    @Override
    public <R> R read(Cases<R> cases) {
      return cases.missing(this);
    }

    @Override
    public String sentence() {
      return "needs " + String.join("; ", needs.stream().map(CellName::inWords).toList());
    }
  }

  /**
   * No number because something is wrong in {@code where}; carried on to every cell that depends on
   * it.
   */
  record Refused(CellName where, String because) implements Outcome {
    @Override
    public <R> R read(Cases<R> cases) {
      return cases.refused(this);
    }

    @Override
    public String sentence() {
      return where.inWords() + ": " + because;
    }
  }

  /** No number because the question does not arise. */
  record NotApplicable(String shown, String because) implements Outcome {
    @Override
    public <R> R read(Cases<R> cases) {
      return cases.notApplicable(this);
    }

    @Override
    public String sentence() {
      return because;
    }
  }

  /** A cell as a person would name it: {@code zone 7}, {@code Area}. */
  record CellName(String row, Reference column) {
    /** Returns row and column in words. */
    public String inWords() {
      return row.isEmpty() ? column.name() : row + ", " + column.name();
    }
  }

  /** Returns one sentence for a person; empty for a number, words or a blank. */
  String sentence();

  /** Returns the words it holds; empty for all else. */
  default String text() {
    return this instanceof Words words ? words.text() : "";
  }

  /** Says whether a number is lacking that should be there. */
  default boolean lacks() {
    return this instanceof Missing || this instanceof Refused;
  }

  /** Returns the number, or not-a-number. */
  default double number() {
    return this instanceof Amount amount ? amount.value() : Double.NaN;
  }
}
