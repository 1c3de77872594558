package zonewright.fieldwork;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How a zone looks to whoever stands in it. */
public enum Judgement {
  TOO_DRY("too dry"),
  RIGHT("right"),
  TOO_WET("too wet");

  private final String word;

  Judgement(String word) {
    this.word = word;
  }

  /** Returns the word a person chooses. */
  public String word() {
    return word;
  }

  /** Returns all words, in their order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Judgement::word).toList();
  }

  /** Returns the judgement of a word; none for other words. */
  public static Optional<Judgement> of(String word) {
    return Arrays.stream(values()).filter(each -> each.word.equalsIgnoreCase(word)).findFirst();
  }

  /** Returns the judgement opposite to this one. */
  Judgement opposite() {
    return switch (this) {
      case TOO_DRY -> TOO_WET;
      case RIGHT -> RIGHT;
      case TOO_WET -> TOO_DRY;
    };
  }
}
