package zonewright.weather;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The lines of a file, each parted into cells as it goes by.
 *
 * <p>Lists of people's zones are read by {@code sheet.ListText}, which keeps every cell as a text.
 * A station's century of days has millions of cells, of which few are wanted: nothing is kept here.
 */
final class LineReader {
  private static final int MOST_CELLS = 400;

  private final String text;
  private final char delimiter;
  private final int[] starts = new int[MOST_CELLS];
  private final int[] ends = new int[MOST_CELLS];
  private int cells;
  private int at;
  private int line;

  LineReader(String text, char delimiter) {
    this.text = text;
    this.delimiter = delimiter;
  }

  /** Returns the text in a file's bytes; letters that are none become a sign of their own. */
  static String decoded(byte[] content) {
    if (starts(content, 0xFF, 0xFE)) {
      return new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE);
    }
    if (starts(content, 0xFE, 0xFF)) {
      return new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE);
    }
    int from = starts(content, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(content, from, content.length - from))
          .toString();
    } catch (CharacterCodingException older) {
      return new String(content, from, content.length - from, Charset.forName("windows-1252"));
    }
  }

  private static boolean starts(byte[] content, int... bytes) {
    for (int i = 0; i < bytes.length; i++) {
      if (content.length <= i || (content[i] & 0xFF) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  /** Returns what parts the cells of a line: of semicolon, tab and comma the most frequent. */
  static char delimiter(String line) {
    char best = ',';
    long most = 0;
    for (char each : new char[] {';', '\t', ','}) {
      long count = line.chars().filter(sign -> sign == each).count();
      if (count > most) {
        most = count;
        best = each;
      }
    }
    return best;
  }

  /** Goes on to the next line that is not blank; false at the end. */
  boolean next() {
    while (at < text.length()) {
      int end = at;
      while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
        end++;
      }
      int from = at;
      at = end;
      if (at < text.length()) {
        at +=
            text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n'
                ? 2
                : 1;
      }
      line++;
      part(from, end);
      if (cells > 1 || (cells == 1 && starts[0] < ends[0])) {
        return true;
      }
    }
    return false;
  }

  private void part(int from, int end) {
    cells = 0;
    int start = from;
    boolean quoted = false;
    for (int i = from; i <= end && cells < MOST_CELLS; i++) {
      if (i < end && text.charAt(i) == '"') {
        quoted = !quoted;
      } else if (i == end || (text.charAt(i) == delimiter && !quoted)) {
        trim(start, i);
        start = i + 1;
      }
    }
  }

  private void trim(int from, int to) {
    int start = from;
    int end = to;
    while (start < end && idle(text.charAt(start))) {
      start++;
    }
    while (start < end && idle(text.charAt(end - 1))) {
      end--;
    }
    starts[cells] = start;
    ends[cells] = end;
    cells++;
  }

  private static boolean idle(char sign) {
    return sign <= ' ' || sign == '"' || sign == '\u00a0';
  }

  /** Returns the number of the line, counted from 1. */
  int line() {
    return line;
  }

  /** Returns how many cells the line has. */
  int cells() {
    return cells;
  }

  /** Returns how far the reading is, in letters. */
  int position() {
    return at;
  }

  /** Returns a cell without the space and quotation marks around it; empty beyond the last. */
  String cell(int index) {
    return index < cells ? text.substring(starts[index], ends[index]) : "";
  }

  /** Says whether a cell is blank. */
  boolean blank(int index) {
    return index >= cells || starts[index] == ends[index];
  }

  /**
   * Reads a cell as a number.
   *
   * @param comma whether a comma stands before the decimals, else a point
   * @return not-a-number where it is none
   */
  double number(int index, boolean comma) {
    if (blank(index)) {
      return Double.NaN;
    }
    int i = starts[index];
    int end = ends[index];
    boolean minus = text.charAt(i) == '-' || text.charAt(i) == '\u2212';
    i += minus || text.charAt(i) == '+' ? 1 : 0;
    char sign = comma ? ',' : '.';
    long digits = 0;
    int read = 0;
    int decimals = -1;
    for (; i < end; i++) {
      char each = text.charAt(i);
      if (each >= '0' && each <= '9' && read < 17) {
        digits = 10 * digits + (each - '0');
        read++;
        decimals += decimals >= 0 ? 1 : 0;
      } else if (each == sign && decimals < 0) {
        decimals = 0;
      } else {
        return slowly(index, comma);
      }
    }
    if (read == 0) {
      return Double.NaN;
    }
    double value = decimals > 0 ? digits / POWERS[decimals] : digits;
    return minus ? -value : value;
  }

  private static final double[] POWERS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17
  };

  /** Reads what is longer or has an exponent. */
  private double slowly(int index, boolean comma) {
    String cell = cell(index);
    String plain = comma ? cell.replace(',', '.') : cell;
    if (!plain.matches("[+-]?(\\d{1,40}\\.?\\d{0,40}|\\.\\d{1,40})([eE][+-]?\\d{1,3})?")) {
      return Double.NaN;
    }
    return Double.parseDouble(plain);
  }
}
