package zonewright.alternatives;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import zonewright.sheet.Entry;

/**
 * One thing that an alternative does otherwise than the design, in words that a person can read and
 * type.
 *
 * @param kind what is done
 * @param sheet the title of the sheet
 * @param row the name of the row in the design, or “row 3”; empty on a sheet with one row
 * @param column the name of the column; empty where a row is put in or taken out
 * @param value what is typed, or the name of the row above the one that is put in
 */
public record Change(Kind kind, String sheet, String row, String column, String value) {
  /** What is done. */
  public enum Kind {
    TYPED("value"),
    CLEARED("emptied"),
    ROW_ADDED("row put in"),
    ROW_GONE("row taken out");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns the words on the sheet. */
    public String words() {
      return words;
    }
  }

  /** Returns what its row on the sheet of changes holds behind the number. */
  List<Entry> entries(String alternative) {
    return List.of(
        Entry.words(alternative),
        Entry.words(kind.words()),
        Entry.words(sheet),
        Entry.words(row),
        Entry.words(column),
        Entry.words(value));
  }

  /** Reads the entries of a row on the sheet of changes; none where nothing is said. */
  static Optional<Change> of(List<String> texts) {
    if (texts.subList(3, texts.size()).stream().allMatch(String::isEmpty)) {
      return Optional.empty();
    }
    Kind kind =
        Arrays.stream(Kind.values())
            .filter(each -> each.words().equalsIgnoreCase(texts.get(2)))
            .findFirst()
            .orElse(Kind.TYPED);
    return Optional.of(new Change(kind, texts.get(3), texts.get(4), texts.get(5), texts.get(6)));
  }

  /** Returns what comes of it: the value, or what is done. */
  public String told() {
    return kind == Kind.TYPED ? value : kind.words();
  }

  /** Returns where it is, as {@code Zones, 7, Emitter}. */
  public String where() {
    return String.join(
        ", ", List.of(sheet, row, column).stream().filter(part -> !part.isEmpty()).toList());
  }
}
