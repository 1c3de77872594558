package zonewright.equation;

import java.util.Optional;
import java.util.stream.IntStream;

/** How names stand in a text: capitals, the width of gaps and the kind of dash do not matter. */
final class NameText {
  private static final String DASHES = "-–‑−";
  private static final String CALCULATING = DASHES + "+/×·%";
  private static final String APOSTROPHES = "'’";

  private NameText() {}

  /**
   * Returns where a name that begins at {@code at} ends in a text, exclusive; -1 where it does not
   * stand there as a whole.
   */
  static int end(String text, int at, String name) {
    int place = at;
    for (int i = 0; i < name.length(); i++) {
      char letter = name.charAt(i);
      if (gap(letter)) {
        int start = place;
        while (place < text.length() && gap(text.charAt(place))) {
          place++;
        }
        if (place == start) {
          return -1;
        }
      } else if (place < text.length() && same(letter, text.charAt(place))) {
        place++;
      } else {
        return -1;
      }
    }
    boolean whole =
        place == text.length()
            || !Character.isLetterOrDigit(name.charAt(name.length() - 1))
            || !Character.isLetterOrDigit(text.charAt(place));
    return whole && place > at ? place : -1;
  }

  static boolean gap(char letter) {
    // what is copied from elsewhere may hold signs that show as nothing
    return Character.isWhitespace(letter)
        || Character.isSpaceChar(letter)
        || Character.getType(letter) == Character.FORMAT;
  }

  private static boolean same(char first, char second) {
    return Character.toLowerCase(first) == Character.toLowerCase(second)
        || (DASHES.indexOf(first) >= 0 && DASHES.indexOf(second) >= 0)
        || (APOSTROPHES.indexOf(first) >= 0 && APOSTROPHES.indexOf(second) >= 0);
  }

  /** Returns the place of the first sign in a name that calculates where it stands alone. */
  static Optional<Integer> sign(String name) {
    return IntStream.range(0, name.length())
        .filter(at -> CALCULATING.indexOf(name.charAt(at)) >= 0)
        .boxed()
        .findFirst();
  }

  /** Says whether a name needs no brackets for whoever reads it: letters, figures and blanks. */
  static boolean plain(String name) {
    return !name.isEmpty()
        && Character.isLetter(name.charAt(0))
        && name.chars().allMatch(each -> Character.isLetterOrDigit(each) || each == ' ');
  }

  /** Returns where the words end that begin at a place: before a sign, a bracket or the end. */
  static int wordsEnd(String text, int at) {
    int place = at;
    while (place < text.length() && ofWords(text.charAt(place))) {
      place++;
    }
    while (place > at && gap(text.charAt(place - 1))) {
      place--;
    }
    return place;
  }

  private static boolean ofWords(char letter) {
    return Character.isLetterOrDigit(letter)
        || gap(letter)
        || letter == '_'
        || APOSTROPHES.indexOf(letter) >= 0;
  }
}
