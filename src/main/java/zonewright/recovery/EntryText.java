package zonewright.recovery;

import java.util.regex.Pattern;
import zonewright.sheet.Entry;

/** Entries as text on one line, without tabs. */
final class EntryText {
  /** As {@link #of} writes numbers; the library would read {@code 12d} and {@code 0x1p3} too. */
  private static final Pattern FIGURE = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");

  private EntryText() {}

  /** Returns an entry as text. */
  static String of(Entry entry) {
    if (entry instanceof Entry.Figure figure) {
      return figure.sum().isEmpty()
          ? "F" + figure.value()
          : "S" + figure.value() + "\\;" + escaped(figure.sum());
    }
    if (entry instanceof Entry.Words words) {
      return "W" + escaped(words.text());
    }
    if (entry instanceof Entry.Unreadable unreadable) {
      return "X" + escaped(unreadable.text()) + "\\;" + escaped(unreadable.problem());
    }
    return "-";
  }

  /**
   * Returns the entry that a text means.
   *
   * @throws IllegalArgumentException when it means none
   */
  static Entry read(String text) {
    String rest = text.isEmpty() ? "" : text.substring(1);
    return switch (text.isEmpty() ? ' ' : text.charAt(0)) {
      case '-' -> Entry.BLANK;
      case 'F' -> figure(rest);
      case 'S' -> calculated(rest);
      case 'W' -> new Entry.Words(plain(rest));
      case 'X' -> unreadable(rest);
      default -> throw new IllegalArgumentException("no entry: " + text);
    };
  }

  private static Entry figure(String rest) {
    if (!FIGURE.matcher(rest).matches()) {
      throw new IllegalArgumentException("no number: " + rest);
    }
    return new Entry.Figure(Double.parseDouble(rest));
  }

  private static Entry calculated(String rest) {
    int split = rest.indexOf("\\;");
    if (split < 0) {
      throw new IllegalArgumentException("no entry: S" + rest);
    }
    Entry.Figure figure = (Entry.Figure) figure(rest.substring(0, split));
    return new Entry.Figure(figure.value(), plain(rest.substring(split + 2)));
  }

  private static Entry unreadable(String rest) {
    int split = rest.indexOf("\\;");
    if (split < 0) {
      throw new IllegalArgumentException("no entry: X" + rest);
    }
    return new Entry.Unreadable(plain(rest.substring(0, split)), plain(rest.substring(split + 2)));
  }

  /** Returns a text without tabs, ends of lines and single backslashes. */
  static String escaped(String plain) {
    return plain
        .replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  /** Returns what was escaped. */
  static String plain(String escaped) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < escaped.length(); i++) {
      char sign = escaped.charAt(i);
      if (sign == '\\' && i + 1 < escaped.length()) {
        i++;
        plain.append(
            switch (escaped.charAt(i)) {
              case 't' -> '\t';
              case 'n' -> '\n';
              case 'r' -> '\r';
              default -> escaped.charAt(i);
            });
      } else {
        plain.append(sign);
      }
    }
    return plain.toString();
  }
}
