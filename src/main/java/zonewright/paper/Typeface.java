package zonewright.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of all pages, embedded so that it looks alike everywhere; it is the one that
 * comes with the library and holds Latin, Greek and Cyrillic letters.
 */
final class Typeface {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final PDFont font;
  private final Map<Integer, Boolean> known = new HashMap<>();

  Typeface(PDDocument document) throws IOException {
    try (InputStream stream = PDDocument.class.getResourceAsStream(FILE)) {
      font = PDType0Font.load(document, stream, true);
    }
  }

  PDFont font() {
    return font;
  }

  /** Returns the words with a question mark for each letter the typeface lacks. */
  String printable(String words) {
    StringBuilder text = new StringBuilder();
    words
        .codePoints()
        .map(each -> Character.isWhitespace(each) || Character.isISOControl(each) ? ' ' : each)
        .forEach(each -> text.append(has(each) ? Character.toString(each) : "?"));
    return text.toString();
  }

  private boolean has(int letter) {
    return known.computeIfAbsent(letter, this::encodes);
  }

  private boolean encodes(int letter) {
    try {
      return font.encode(Character.toString(letter)).length > 0;
    } catch (IOException | IllegalArgumentException lacking) {
      return false;
    }
  }

  /** Returns the width of words that are printable. */
  float width(String words, float size) {
    try {
      return font.getStringWidth(words) * size / 1000;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Returns words broken into lines no wider than {@code room}; a longer word is cut. */
  List<String> lines(String words, float size, float room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : printable(words).split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, size) <= room) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
      }
      String rest = word;
      while (width(rest, size) > room && rest.length() > 1) {
        int end = rest.length() - 1;
        while (end > 1 && width(rest.substring(0, end), size) > room) {
          end--;
        }
        int hyphen = rest.lastIndexOf('-', end - 1);
        end = hyphen > 0 ? hyphen + 1 : end;
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      line.setLength(0);
      line.append(rest);
    }
    lines.add(line.toString());
    return lines;
  }
}
