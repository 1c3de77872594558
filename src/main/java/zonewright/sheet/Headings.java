package zonewright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Finds the columns of a table in a row of headings, in any order and either unit system. */
public final class Headings {
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");

  /** Where a column stands in the sheet and which unit its heading names. */
  public record Found(int position, Unit unit, boolean unitKnown) {}

  private final TableDefinition table;
  private final UnitSystem system;
  private final Map<Column, Found> found = new LinkedHashMap<>();
  private final List<Integer> unknown = new ArrayList<>();

  /** Prepares for one table; headings without a unit are taken in the unit system given. */
  public Headings(TableDefinition table, UnitSystem system) {
    this.table = table;
    this.system = system;
  }

  /** Takes a heading; returns the column it means. */
  public Optional<Column> take(int position, String heading) {
    String plain = plain(heading);
    for (Column column : table.columns()) {
      if (found.containsKey(column)) {
        continue;
      }
      if (plain.equals(plain(column.name()))
          || formerly(column, plain)
          || plain.equals(plain(column.heading(UnitSystem.US)))
          || plain.equals(plain(column.heading(UnitSystem.SI)))) {
        found.put(column, new Found(position, unit(column, heading), true));
        return Optional.of(column);
      }
    }
    Matcher matcher = WITH_UNIT.matcher(heading.strip());
    if (matcher.matches()) {
      for (Column column : table.columns()) {
        String words = plain(matcher.group(1));
        if (!found.containsKey(column)
            && (words.equals(plain(column.name())) || formerly(column, words))) {
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

  private static boolean formerly(Column column, String plain) {
    return column.formerNames().stream().anyMatch(name -> plain(name).equals(plain));
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
    return heading.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}
