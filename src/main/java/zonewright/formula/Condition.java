package zonewright.formula;

import java.util.List;

/** Something that is so or is not, for one row. */
public sealed interface Condition {
  /** Asks a visitor for its answer to this kind of condition. */
  <R> R accept(ConditionVisitor<R> visitor);

  /** One number held against another of the same dimension. */
  record Comparison(Comparator comparator, Formula left, Formula right) implements Condition {
    @Override
    public <R> R accept(ConditionVisitor<R> visitor) {
      return visitor.comparison(this);
    }
  }

  /** The cell holds one of these words. */
  record WordIs(Reference word, List<String> words) implements Condition {
    public WordIs {
      words = List.copyOf(words);
    }

    @Override
    public <R> R accept(ConditionVisitor<R> visitor) {
      return visitor.wordIs(this);
    }
  }

  /** The input cell is not blank. */
  record Given(Reference cell) implements Condition {
    @Override
    public <R> R accept(ConditionVisitor<R> visitor) {
      return visitor.given(this);
    }
  }

  /** Both, or at least one. */
  record Joined(boolean both, Condition left, Condition right) implements Condition {
    @Override
    public <R> R accept(ConditionVisitor<R> visitor) {
      return visitor.joined(this);
    }
  }

  /** Not so. */
  record Not(Condition condition) implements Condition {
    @Override
    public <R> R accept(ConditionVisitor<R> visitor) {
      return visitor.not(this);
    }
  }

  /** Returns: this and the other. */
  default Condition and(Condition other) {
    return new Joined(true, this, other);
  }

  /** Returns: this or the other or both. */
  default Condition or(Condition other) {
    return new Joined(false, this, other);
  }

  /** Returns: not this. */
  default Condition negated() {
    return new Not(this);
  }

  /** One answer for each kind of condition. */
  interface ConditionVisitor<R> {
    R comparison(Comparison comparison);

    R wordIs(WordIs wordIs);

    R given(Given given);

    R joined(Joined joined);

    R not(Not not);
  }
}
