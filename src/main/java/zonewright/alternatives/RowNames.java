package zonewright.alternatives;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Pattern;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;

/** How the rows of a sheet are told apart in words: by their names, else by their places. */
final class RowNames {
  private static final Pattern PLACE = Pattern.compile("row (\\d{1,9})");

  private final Map<Long, String> names = new HashMap<>();
  private final Map<String, Long> rows = new HashMap<>();

  RowNames(List<Row> list) {
    List<String> folded = list.stream().map(row -> folded(name(row))).toList();
    Set<String> once = new HashSet<>();
    Set<String> more = new HashSet<>(Set.of(""));
    folded.stream().filter(name -> !once.add(name)).forEach(more::add);
    for (int place = 0; place < list.size(); place++) {
      Row row = list.get(place);
      String name = folded.get(place);
      boolean own = !more.contains(name) && !PLACE.matcher(name).matches();
      String byPlace = "row " + (place + 1);
      names.put(row.id(), own ? name(row) : byPlace);
      rows.put(own ? name : byPlace, row.id());
    }
  }

  private static String name(Row row) {
    return row.entry(0) instanceof Entry.Words words ? words.text() : "";
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** Returns how a row is told. */
  String of(Row row) {
    return names.get(row.id());
  }

  /** Returns the identity of the row told so; none where there is no such row. */
  OptionalLong row(String told) {
    Long id = rows.get(folded(told));
    return id == null ? OptionalLong.empty() : OptionalLong.of(id);
  }

  /** Tells a row that the design has not, by its name or by a number, and returns how. */
  String put(Row row) {
    String told = name(row);
    for (int number = 1; !put(told, row.id()); number++) {
      told = "new " + number;
    }
    return told;
  }

  /** Tells a row so; says whether no other was. */
  boolean put(String told, long id) {
    if (told.isBlank() || PLACE.matcher(folded(told)).matches() || rows.containsKey(folded(told))) {
      return false;
    }
    rows.put(folded(told), id);
    names.put(id, told);
    return true;
  }
}
