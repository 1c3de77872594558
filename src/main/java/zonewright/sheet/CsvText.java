package zonewright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * Comma-separated lines as RFC 4180 has them, which a spreadsheet program opens without calculating
 * anything of them.
 */
public final class CsvText {
  private static final String STARTS_A_FORMULA = "=+-@＝＋－＠";

  private CsvText() {}

  /** Returns one line with its line end. */
  public static String line(List<String> cells) {
    StringBuilder line = new StringBuilder();
    try {
      CSVFormat.RFC4180.printRecord(line, cells.toArray());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return line.toString();
  }

  /** Returns words as they were before {@link #harmless}. */
  public static String asWritten(String cell) {
    boolean guarded =
        cell.startsWith("'") && !harmless(cell.substring(1)).equals(cell.substring(1));
    return guarded ? cell.substring(1) : cell;
  }

  /**
   * Returns words so that no spreadsheet program takes them for a formula: with an apostrophe in
   * front where they would start one. Numbers do not pass here.
   */
  public static String harmless(String words) {
    String visible = words.stripLeading();
    boolean risky = !visible.isEmpty() && STARTS_A_FORMULA.indexOf(visible.charAt(0)) >= 0;
    boolean control = !words.isEmpty() && Character.isISOControl(words.charAt(0));
    return risky || control ? "'" + words : words;
  }
}
