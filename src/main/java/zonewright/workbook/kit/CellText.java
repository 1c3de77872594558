package zonewright.workbook.kit;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Words as the file format can hold them: what XML cannot carry, and what would be taken for such,
 * is written as {@code _xHHHH_}.
 *
 * <p>Source: ECMA-376 part 1, 22.4.2.4 (bstr).
 */
public final class CellText {
  /** No cell holds more letters; encoding may make several of one. */
  private static final int LONGEST = 32_767;

  private static final Pattern LOOKS_ENCODED = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {}

  /** Words that no cell can hold; the message is a sentence for a designer. */
  public static final class TooLong extends RuntimeException {
    TooLong(String sentence) {
      super(sentence);
    }
  }

  /** Returns {@code words} so that a reader gets them back letter by letter. */
  public static String encoded(String words) {
    if (words.length() > LONGEST / 2) {
      throw new TooLong(
          "a cell holds %s letters (“%s …”); a workbook takes at most %s."
              .formatted(words.length(), words.substring(0, 30), LONGEST / 2));
    }
    String plain = LOOKS_ENCODED.matcher(words).replaceAll("_x005F_");
    StringBuilder text = new StringBuilder(plain.length());
    for (int i = 0; i < plain.length(); i++) {
      char letter = plain.charAt(i);
      boolean pair =
          Character.isHighSurrogate(letter)
              && i + 1 < plain.length()
              && Character.isLowSurrogate(plain.charAt(i + 1));
      boolean lone = Character.isSurrogate(letter) && !pair;
      boolean control = (letter < 0x20 && letter != '\n' && letter != '\t') || letter >= 0xFFFE;
      if (pair) {
        text.append(letter).append(plain.charAt(++i));
      } else if (lone || control) {
        text.append(String.format(Locale.ROOT, "_x%04X_", (int) letter));
      } else {
        text.append(letter);
      }
    }
    return text.toString();
  }

  /** Says whether a spreadsheet would take the words for a formula were they typed. */
  public static boolean looksLikeFormula(String words) {
    return !words.isEmpty() && "=+-@".indexOf(words.charAt(0)) >= 0;
  }

  /** Returns words cut to so many letters, with an ellipsis where some are gone. */
  public static String shortened(String words, int most) {
    return words.length() <= most ? words : words.substring(0, most - 2) + " …";
  }
}
