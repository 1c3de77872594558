package zonewright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import zonewright.design.Synonyms;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;

/** What firms call our columns over their lists, beside what people call them anywhere. */
final class ListHeadings {
  private static final Properties NAMES = names();

  private ListHeadings() {}

  private static Properties names() {
    Properties names = new Properties();
    try (InputStream stream = ListHeadings.class.getResourceAsStream("list-headings.properties")) {
      names.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return names;
  }

  /** Returns the keys of the columns that have names in lists only. */
  static Set<String> columns() {
    return NAMES.stringPropertyNames();
  }

  /** Returns what else a column is called over a list, in small letters. */
  static List<String> of(Column column) {
    String key = column.reference().key();
    String names = NAMES.getProperty(key, "");
    if (!names.isBlank()) {
      return List.of(names.strip().split("\\s*,\\s*"));
    }
    // Zones as found are called as zones are.
    return Synonyms.of(key.replaceFirst("^" + Sheets.FOUND + "\\.", Sheets.ZONES + "."));
  }

  /** Says whether a heading, without a unit in parentheses, is another name of a column. */
  static boolean means(Column column, String heading) {
    return of(column).contains(Synonyms.plain(heading));
  }
}
