package zonewright.workbook;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.sheet.Entry;
import zonewright.sheet.Headings;

/**
 * Finds which rows of one table belong to which of another that may have been sorted, renamed,
 * thinned or grown since: by the number that stays with a row; in files without such numbers by
 * name where only one row has it, then by place.
 */
final class AlongsideMatch {
  private final Map<Integer, Integer> places = new HashMap<>();
  private final Map<Integer, String> renamed = new LinkedHashMap<>();
  private final Map<Integer, String> lost = new LinkedHashMap<>();

  /**
   * Matches rows.
   *
   * @param lines the rows as they were read, their names first
   * @param names the names of the other table, blank where a row has none
   * @param identities the numbers that stay with its rows; not a number where a row has none
   */
  AlongsideMatch(List<TableReading.Line> lines, List<String> names, List<Double> identities) {
    BitSet taken = new BitSet();
    byIdentity(lines, identities, taken);
    Map<String, Integer> once = once(names);
    Map<String, Integer> here = once(lines.stream().map(AlongsideMatch::name).toList());
    for (TableReading.Line line : lines) {
      if (!Double.isNaN(line.identity())) {
        continue;
      }
      String name = Headings.plain(name(line));
      if (once.getOrDefault(name, -1) >= 0 && here.getOrDefault(name, -1) >= 0) {
        places.put(line.row(), once.get(name));
        taken.set(once.get(name));
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      TableReading.Line line = lines.get(i);
      if (places.containsKey(line.row())) {
        continue;
      }
      if (Double.isNaN(line.identity()) && i < names.size() && !taken.get(i)) {
        places.put(line.row(), i);
        taken.set(i);
        if (!Headings.plain(name(line)).equals(Headings.plain(names.get(i)))) {
          renamed.put(line.row(), "“%s” was taken for “%s”".formatted(name(line), names.get(i)));
        }
      } else if (line.entries().stream().skip(1).anyMatch(entry -> !entry.equals(Entry.BLANK))) {
        lost.put(line.row(), "“%s”".formatted(name(line)));
      }
    }
  }

  private void byIdentity(List<TableReading.Line> lines, List<Double> identities, BitSet taken) {
    Map<Double, Integer> known = new HashMap<>();
    for (int place = 0; place < identities.size(); place++) {
      known.putIfAbsent(identities.get(place), place);
    }
    for (TableReading.Line line : lines) {
      Integer place = Double.isNaN(line.identity()) ? null : known.get(line.identity());
      if (place != null && !taken.get(place)) {
        places.put(line.row(), place);
        taken.set(place);
      }
    }
  }

  private static String name(TableReading.Line line) {
    return line.entries().get(0) instanceof Entry.Words words ? words.text() : "";
  }

  /** Returns the places of names; -1 where a name stands twice. */
  private static Map<String, Integer> once(List<String> names) {
    Map<String, Integer> once = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      String name = Headings.plain(names.get(i));
      if (!name.isEmpty()) {
        once.put(name, once.containsKey(name) ? -1 : i);
      }
    }
    return once;
  }

  /** Returns the place in the other table, counted from 0, for each row of the sheet. */
  Map<Integer, Integer> places() {
    return places;
  }

  /** Returns what is to be told about rows of the sheet. */
  Map<Integer, String> notes(String title) {
    Map<Integer, String> notes = new LinkedHashMap<>();
    renamed.forEach(
        (row, words) -> notes.put(row, words + ", which stands in the same row of its table"));
    lost.forEach(
        (row, name) -> notes.put(row, name + " is no row of " + title + " any more; it was left"));
    return notes;
  }
}
