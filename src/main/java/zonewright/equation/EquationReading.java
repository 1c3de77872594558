package zonewright.equation;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Column;

/** What became of an equation that was typed. */
public sealed interface EquationReading {
  /**
   * It gives what was wanted.
   *
   * @param names where it names columns, from left to right
   * @param words the words it holds columns against that are names of rows, which come and go
   */
  record Understood(Formula formula, List<Name> names, List<RowWord> words)
      implements EquationReading {
    public Understood {
      names = List.copyOf(names);
      words = List.copyOf(words);
    }
  }

  /**
   * A word that should be the name of a row, as of a zone or a program.
   *
   * @param column what is held against it
   * @param word the word without its quotation marks
   * @param from where it begins in the text, its quotation mark with it
   * @param to where it ends, exclusive
   */
  record RowWord(Column column, String word, int from, int to) {
    /** Returns what is wrong with it where rows have other names; none where one has this. */
    public Optional<Problem> problem(List<String> rows) {
      List<String> named = rows.stream().filter(row -> !row.isBlank()).toList();
      return named.stream().anyMatch(row -> row.strip().equalsIgnoreCase(word.strip()))
          ? Optional.empty()
          : Optional.of(Combining.never(column, word, named, from, to));
    }
  }

  /**
   * A column as an equation names it.
   *
   * @param from where the name alone begins in the text, behind its sheet and a bracket
   * @param to where it ends, exclusive, before a bracket
   */
  record Name(Reference column, int from, int to) {}

  /**
   * It cannot be calculated.
   *
   * @param from where in the text it goes wrong, counted from 0
   * @param to where that ends, exclusive; as {@code from} where something is missing there
   * @param sentence what is wrong and what would be right, for a designer
   * @param offers what could stand between {@code from} and {@code to} instead, the likeliest first
   */
  record Problem(int from, int to, String sentence, List<String> offers)
      implements EquationReading {
    public Problem {
      offers = List.copyOf(offers);
    }
  }
}
