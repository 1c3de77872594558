package zonewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Finds the columns of a table in a row of headings, in any order and either unit system. */
public final class Headings {
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");

  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** Which columns of a table a heading can mean; worked out once for each list of columns. */
  private static final Map<List<Column>, Map<String, List<Column>>> KNOWN =
      Collections.synchronizedMap(new WeakHashMap<>());

  /** Where a column stands in the sheet and which unit its heading names. */
  public record Found(int position, Unit unit, boolean unitKnown) {}

  private final UnitSystem system;
  private final Map<String, List<Column>> meant;
  private final Map<Column, Found> found = new LinkedHashMap<>();
  private final List<Integer> unknown = new ArrayList<>();

  /** Prepares for one table; headings without a unit are taken in the unit system given. */
  public Headings(TableDefinition table, UnitSystem system) {
    this.system = system;
    this.meant = KNOWN.computeIfAbsent(table.columns(), Headings::meant);
  }

  private static Map<String, List<Column>> meant(List<Column> columns) {
    Map<String, List<Column>> meant = new HashMap<>();
    for (Column column : columns) {
      Stream.concat(
              Stream.of(
                  column.name(), column.heading(UnitSystem.US), column.heading(UnitSystem.SI)),
              column.formerNames().stream())
          .map(Headings::plain)
          .distinct()
          .forEach(name -> meant.computeIfAbsent(name, any -> new ArrayList<>()).add(column));
    }
    return meant;
  }

  /** Takes a heading; returns the column it means. */
  public Optional<Column> take(int position, String heading) {
    String plain = plain(heading);
    for (Column column : meant.getOrDefault(plain, List.of())) {
      if (!found.containsKey(column)) {
        found.put(column, new Found(position, unit(column, heading), true));
        return Optional.of(column);
      }
    }
    Matcher matcher = WITH_UNIT.matcher(heading.strip());
    if (matcher.matches()) {
      String words = plain(matcher.group(1));
      for (Column column : meant.getOrDefault(words, List.of())) {
        if (!found.containsKey(column)) {
          found.put(column, inUnit(column, position, matcher.group(2)));
          return Optional.of(column);
        }
      }
    }
    if (!plain.isEmpty()) {
      unknown.add(position);
    }
    return Optional.empty();
  }

  private Unit unit(Column column, String heading) {
    UnitSystem other = system == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    boolean inOther =
        plain(heading).equals(plain(column.heading(other)))
            && !column.heading(other).equals(column.heading(system));
    return column.kind().unit(inOther ? other : system);
  }

  private Found inUnit(Column column, int position, String words) {
    Unit own = column.kind().unit(system);
    return Units.named(words)
        .filter(unit -> unit.dimension().equals(own.dimension()))
        .map(unit -> new Found(position, unit, true))
        .orElse(new Found(position, own, false));
  }

  /** Returns the columns found. */
  public Map<Column, Found> found() {
    return found;
  }

  /** Returns the positions of headings that mean no column. */
  public List<Integer> unknown() {
    return unknown;
  }

  /** Returns a heading so that capitals and spaces do not matter. */
  public static String plain(String heading) {
    return SPACES.matcher(heading.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
  }
}
