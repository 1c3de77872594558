package zonewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which word of a list a person means: capitals do not matter, nor does the order of several words,
 * nor what stands between them. {@code fri, mon} is {@code Mon Fri}, and so is {@code Friday
 * Monday}.
 */
public final class WordMatch {
  /** Short names of this many letters, as those of weekdays, may be written out. */
  private static final int SHORT_NAME = 3;

  private WordMatch() {}

  /** Returns the word of a list that a text means exactly, in the list's own spelling. */
  public static Optional<String> in(List<String> words, String typed) {
    String plain = typed.strip();
    for (String word : words) {
      if (word.equalsIgnoreCase(plain)) {
        return Optional.of(word);
      }
    }
    List<String> parts = parts(plain);
    return parts.size() < 2
        ? words.stream().filter(word -> isShort(word) && sameParts(parts(word), parts)).findFirst()
        : words.stream().filter(word -> sameParts(parts(word), parts)).findFirst();
  }

  /** Says whether a word holds what was typed, or words that begin as those typed do. */
  public static boolean fits(String word, String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    return word.toLowerCase(Locale.ROOT).contains(plain)
        || paired(parts(word), parts(plain), WordMatch::begins);
  }

  /** Says whether a part of a word, such as the turf of {@code warm-season turf}, begins so. */
  public static boolean beginsAPart(String word, String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    String known = word.toLowerCase(Locale.ROOT);
    for (int at = known.indexOf(plain); at >= 0; at = known.indexOf(plain, at + 1)) {
      if (at == 0 || !Character.isLetterOrDigit(known.charAt(at - 1))) {
        return true;
      }
      if (plain.isEmpty()) {
        return false;
      }
    }
    return paired(parts(word), parts(plain), WordMatch::begins);
  }

  private static boolean isShort(String word) {
    return word.length() == SHORT_NAME;
  }

  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    for (String part : text.toLowerCase(Locale.ROOT).split("[\\s,;/+&]+", -1)) {
      if (!part.isEmpty() && !part.equals("and")) {
        parts.add(part);
      }
    }
    return parts;
  }

  private static boolean sameParts(List<String> word, List<String> typed) {
    return word.size() == typed.size()
        && paired(word, typed, (own, other) -> own.equals(other) || writtenOut(own, other));
  }

  /** Says whether a part is the whole of a short name: {@code thursday} of {@code thu}. */
  private static boolean writtenOut(String own, String typed) {
    return own.length() == SHORT_NAME && typed.startsWith(own);
  }

  private static boolean begins(String own, String typed) {
    return own.startsWith(typed) || writtenOut(own, typed);
  }

  private interface Pair {
    boolean fit(String own, String typed);
  }

  /** Says whether each part that was typed has a part of the word to itself. */
  private static boolean paired(List<String> word, List<String> typed, Pair pair) {
    if (typed.isEmpty() || typed.size() > word.size()) {
      return false;
    }
    List<String> left = new ArrayList<>(word);
    for (String part : typed) {
      Optional<String> own = left.stream().filter(each -> pair.fit(each, part)).findFirst();
      if (own.isEmpty()) {
        return false;
      }
      left.remove(own.get());
    }
    return true;
  }
}
