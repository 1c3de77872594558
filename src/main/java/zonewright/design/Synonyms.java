package zonewright.design;

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
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Schema;

/** What people call our columns, in questions and in lists of their own. */
public final class Synonyms {
  private static final Properties NAMES = names();

  private Synonyms() {}

  private static Properties names() {
    Properties names = new Properties();
    try (InputStream stream = Synonyms.class.getResourceAsStream("synonyms.properties")) {
      names.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return names;
  }

  /** Returns the keys of the columns that have other names. */
  public static Set<String> columns() {
    return NAMES.stringPropertyNames();
  }

  /** Returns what else a column is called, in small letters. */
  public static List<String> of(Column column) {
    return of(column.reference().key());
  }

  /** Returns what else the column of a key is called, in small letters. */
  public static List<String> of(String key) {
    String names = NAMES.getProperty(key, "");
    return names.isBlank() ? List.of() : List.of(names.strip().split("\\s*,\\s*"));
  }

  /** Says whether a heading, without a unit in parentheses, is another name of a column. */
  public static boolean means(Column column, String heading) {
    return of(column).contains(plain(heading));
  }

  /** Returns a heading in small letters, its words set apart by single blanks. */
  public static String plain(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  /**
   * Returns a finder that knows these names.
   *
   * @param preferred identifier of the table whose column is meant where several have the name
   */
  public static ColumnFinder finder(Schema schema, String preferred) {
    return new ColumnFinder(schema, preferred, Synonyms::of);
  }
}
