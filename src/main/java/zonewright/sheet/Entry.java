package zonewright.sheet;

/** What was entered in an input cell. */
public sealed interface Entry {
  /** Nothing. */
  Entry BLANK = new Blank();

  /** Nothing; not the same as zero. */
  record Blank() implements Entry {
    /** Written out: what a record makes by itself is slow at its first use, which is each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Blank;
    }

    @Override
    public int hashCode() {
      return 0;
    }
  }

  /**
   * A number in the unit of its column.
   *
   * @param sum the arithmetic it was typed as, such as {@code =35*40}; empty for a plain number
   */
  record Figure(double value, String sum) implements Entry {
    /** A plain number. */
    public Figure(double value) {
      this(value, "");
    }

    public Figure {
      if (Double.isNaN(value) || Double.isInfinite(value)) {
        throw new IllegalArgumentException("an entry is a number, not " + value);
      }
    }
  }

  /** Words, or the word chosen. */
  record Words(String text) implements Entry {
    public Words {
      if (text.isBlank()) {
        throw new IllegalArgumentException("no words are a blank entry");
      }
    }
  }

  /**
   * Something that is no number, kept as it was typed so that nothing is lost.
   *
   * @param text as typed
   * @param problem one sentence: what is wrong and what would be right
   */
  record Unreadable(String text, String problem) implements Entry {}

  /** Returns words, or a blank where there are none. */
  static Entry words(String text) {
    return text.isBlank() ? BLANK : new Words(text.strip());
  }
}
