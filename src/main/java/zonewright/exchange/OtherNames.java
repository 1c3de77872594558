package zonewright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;

/** What people call our columns in lists of their own. */
final class OtherNames {
  private static final Properties NAMES = names();

  private OtherNames() {}

  private static Properties names() {
    Properties names = new Properties();
    try (InputStream stream = OtherNames.class.getResourceAsStream("other-names.properties")) {
      names.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return names;
  }

  /** Returns the keys of the columns that have other names. */
  static Set<String> columns() {
    return NAMES.stringPropertyNames();
  }

  /** Returns what else a column is called. */
  static List<String> of(Column column) {
    String key = column.reference().key();
    // Zones as found are called as zones are.
    String zones = key.replaceFirst("^" + Sheets.FOUND + "\\.", Sheets.ZONES + ".");
    String names = NAMES.getProperty(key, NAMES.getProperty(zones, ""));
    return names.isBlank() ? List.of() : List.of(names.strip().split("\\s*,\\s*"));
  }

  /** Says whether a heading, without a unit in parentheses, is another name of a column. */
  static boolean means(Column column, String heading) {
    return of(column).contains(plain(heading));
  }

  private static String plain(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }
}
