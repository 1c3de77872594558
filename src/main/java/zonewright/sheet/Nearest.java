package zonewright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the names a person may have meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * Returns up to {@code most} of the names, the likeliest first: those that start with what was
   * written or hold it, then those that fewest letters tell from it. At least one, where there are
   * names, and no others that are quite unlike it.
   */
  public static List<String> to(String written, List<String> names, int most) {
    String plain = written.strip().toLowerCase(Locale.ROOT);
    List<String> sorted =
        names.stream()
            .distinct()
            .sorted(
                Comparator.comparingInt(
                        (String name) -> unlike(plain, name.toLowerCase(Locale.ROOT)))
                    .thenComparingInt(name -> distance(plain, name.toLowerCase(Locale.ROOT))))
            .limit(most)
            .toList();
    return sorted.stream()
        .filter(name -> name.equals(sorted.get(0)) || alike(plain, name.toLowerCase(Locale.ROOT)))
        .toList();
  }

  /** Returns the name a person most likely meant; none where all are quite unlike it. */
  public static Optional<String> alike(String written, List<String> names) {
    String plain = written.strip().toLowerCase(Locale.ROOT);
    return to(written, names, 1).stream()
        .filter(name -> alike(plain, name.toLowerCase(Locale.ROOT)))
        .findFirst();
  }

  private static boolean alike(String written, String name) {
    int few = Math.max(2, written.length() / 3);
    return unlike(written, name) < 2 || distance(written, name) <= few;
  }

  private static int unlike(String written, String name) {
    if (written.length() < 3) {
      return 2;
    }
    return name.startsWith(written) ? 0 : beginsAWord(written, name) ? 1 : 2;
  }

  private static boolean beginsAWord(String written, String name) {
    for (int at = name.indexOf(written); at > 0; at = name.indexOf(written, at + 1)) {
      if (!Character.isLetterOrDigit(name.charAt(at - 1))) {
        return true;
      }
    }
    return false;
  }

  /** Letters to insert, drop or change to get from one word to the other (Levenshtein 1965). */
  static int distance(String first, String second) {
    int[] above = new int[second.length() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= first.length(); i++) {
      int diagonal = above[0];
      above[0] = i;
      for (int j = 1; j < above.length; j++) {
        int changed = diagonal + (first.charAt(i - 1) == second.charAt(j - 1) ? 0 : 1);
        diagonal = above[j];
        above[j] = Math.min(changed, Math.min(above[j], above[j - 1]) + 1);
      }
    }
    return above[second.length()];
  }
}
