package zonewright.alternatives;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Wording;
import zonewright.units.Arithmetic;
import zonewright.units.UnitSystem;

/**
 * Between entries and the words in which a change tells them: with units, so any system reads them.
 */
final class CellValues {
  /** A number with the arithmetic it was typed as behind it. */
  private static final Pattern WITH_SUM = Pattern.compile("(.*?) \\((=.*)\\)");

  private CellValues() {}

  /** Returns an entry that is not blank in words that read back as the very same entry. */
  static String words(Column column, Entry entry, Wording wording) {
    if (!(entry instanceof Entry.Figure figure)) {
      return Entries.typed(column, entry);
    }
    String number = wording.exactly(column, figure.value());
    return figure.sum().isEmpty() ? number : "%s (%s)".formatted(number, figure.sum());
  }

  /**
   * Reads such words. Arithmetic stays beside its number where it comes to it, which it does not
   * after units were switched.
   */
  static Entry read(Column column, String words, UnitSystem system) {
    Matcher sum = WITH_SUM.matcher(words);
    if (column.content() == Column.Content.NUMBER && sum.matches()) {
      Entry plain = Entries.read(column, sum.group(1), system);
      Entry typed = Entries.read(column, sum.group(2), system);
      boolean same =
          plain instanceof Entry.Figure one
              && typed instanceof Entry.Figure other
              && one.value() == other.value();
      return same && Arithmetic.begins(sum.group(2)) ? typed : plain;
    }
    return Entries.read(column, words, system);
  }
}
