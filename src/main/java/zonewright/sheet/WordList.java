package zonewright.sheet;

import java.util.List;
import java.util.Optional;
import zonewright.formula.ReferenceTable;

/** Where the words of a choice come from. */
public sealed interface WordList {
  /** The keys of a reference table. */
  record Published(ReferenceTable table) implements WordList {
    /** Written out: what a record makes by itself is slow at its first use, which is each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Published that && table.equals(that.table);
    }

    @Override
    public int hashCode() {
      return table.hashCode();
    }
  }

  /** A few words that belong to the program. */
  record Fixed(List<String> words) implements WordList {
    public Fixed {
      words = List.copyOf(words);
    }

    /** Written out, as that of {@link Published}. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Fixed that && words.equals(that.words);
    }

    @Override
    public int hashCode() {
      return words.hashCode();
    }
  }

  /** The names that the rows of another table have. */
  record RowsOf(String table) implements WordList {
    /** Written out, as that of {@link Published}. */
    @Override
    public boolean equals(Object other) {
      return other instanceof RowsOf that && table.equals(that.table);
    }

    @Override
    public int hashCode() {
      return table.hashCode();
    }
  }

  /** Returns the words as far as they do not depend on what was entered. */
  default Optional<List<String>> constant() {
    if (this instanceof Published published) {
      return Optional.of(published.table().keys());
    }
    return this instanceof Fixed fixed ? Optional.of(fixed.words()) : Optional.empty();
  }

  /** Returns the word that is also called so, of a table that knows other names. */
  default Optional<String> alsoCalled(String word) {
    return this instanceof Published published
        ? published.table().alsoCalled(word)
        : Optional.empty();
  }
}
