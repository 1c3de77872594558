package zonewright.formula;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * A table of published values that formulas look things up in: a key, numbers with units, and where
 * each row comes from.
 *
 * <p>Read from a CSV resource whose first column is the key, whose headings carry their unit in
 * parentheses, and whose last two columns are {@code Source} and {@code Status}.
 */
public final class ReferenceTable {
  private static final Pattern HEADING = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");

  private final String name;
  private final List<String> headings;
  private final List<List<String>> rows;
  private final Map<String, Integer> positions = new HashMap<>();

  private int bundled;

  /** What else its keys are called; read when it is asked for. */
  private Supplier<Map<String, String>> otherNames = Map::of;

  private ReferenceTable(String name, List<String> headings, List<List<String>> rows) {
    this.name = name;
    this.headings = List.copyOf(headings);
    this.rows = List.copyOf(rows);
    this.bundled = rows.size();
    for (int row = 0; row < rows.size(); row++) {
      if (positions.put(folded(rows.get(row).get(0)), row) != null) {
        throw new IllegalArgumentException(
            name + " holds " + rows.get(row).get(0) + " more than once");
      }
    }
  }

  /**
   * Reads the table in a CSV resource beside {@code owner}.
   *
   * @param resource a file; what else its keys are called may stand beside it in one that ends in
   *     {@code -also-called.csv}
   * @param name what the table is called in workbooks and messages, one word
   */
  public static ReferenceTable read(Class<?> owner, String resource, String name) {
    List<List<String>> all =
        lines(owner, resource)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the table " + resource + " is not in the program"));
    ReferenceTable table = new ReferenceTable(name, all.get(0), all.subList(1, all.size()));
    table.otherNames = () -> otherNames(owner, resource.replace(".csv", "-also-called.csv"));
    return table;
  }

  private static Optional<List<List<String>>> lines(Class<?> owner, String resource) {
    try (InputStream stream = owner.getResourceAsStream(resource)) {
      if (stream == null) {
        return Optional.empty();
      }
      Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
      List<List<String>> lines = new ArrayList<>();
      for (CSVRecord line : CSVFormat.RFC4180.parse(reader)) {
        lines.add(List.copyOf(line.toList()));
      }
      return Optional.of(lines);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Map<String, String> otherNames(Class<?> owner, String resource) {
    Map<String, String> names = new HashMap<>();
    List<List<String>> all = lines(owner, resource).orElse(List.of());
    for (List<String> line : all.subList(Math.min(1, all.size()), all.size())) {
      for (String other : line.get(1).split(";", -1)) {
        names.put(folded(other), line.get(0));
      }
    }
    return names;
  }

  /** Returns the key that is also called so; none where the word is a key, or not known at all. */
  public Optional<String> alsoCalled(String word) {
    Map<String, String> names = otherNames.get();
    otherNames = () -> names;
    return Optional.ofNullable(names.get(folded(word)));
  }

  /**
   * Returns a table with values that stand in other bundled tables, arranged as formulas look them
   * up.
   *
   * @param name what the table is called in workbooks and messages, one word
   * @param headings the key's heading first, {@code Source} and {@code Status} last
   * @param rows as many texts a row as there are headings
   */
  public static ReferenceTable arranged(
      String name, List<String> headings, List<List<String>> rows) {
    return new ReferenceTable(name, headings, rows);
  }

  /**
   * Returns the table with further rows behind its own.
   *
   * @param further as many texts a row as there are headings, keyed by what is no key yet
   */
  public ReferenceTable with(List<List<String>> further) {
    List<List<String>> all = new ArrayList<>(rows);
    all.addAll(further);
    ReferenceTable extended = new ReferenceTable(name, headings, all);
    extended.otherNames = otherNames;
    extended.bundled = bundled;
    return extended;
  }

  /** Returns how many of its rows, the first, come with the program. */
  public int bundled() {
    return bundled;
  }

  /** Returns the texts of a row, counted from 0, in the order of the headings. */
  public List<String> row(int row) {
    return List.copyOf(rows.get(row));
  }

  /** Returns what the table is called. */
  public String name() {
    return name;
  }

  /** Returns the heading of the key column. */
  public String keyHeading() {
    return headings.get(0);
  }

  /** Returns the headings as in the resource, units of the resource included. */
  public List<String> headings() {
    return headings;
  }

  /** Returns the keys in the order of the table. */
  public List<String> keys() {
    return rows.stream().map(row -> row.get(0)).toList();
  }

  /** Returns the number of rows. */
  public int size() {
    return rows.size();
  }

  /** Returns the row of a key; capitals and the space around do not matter. */
  public OptionalInt position(String key) {
    Integer position = positions.get(folded(key));
    return position == null ? OptionalInt.empty() : OptionalInt.of(position);
  }

  /** Returns the text in a row, counted from 0, under a heading. */
  public String text(int row, String heading) {
    int column = headings.indexOf(heading);
    if (column < 0) {
      throw new IllegalArgumentException(name + " has no column " + heading);
    }
    return rows.get(row).get(column);
  }

  /** Returns where the row comes from and what that is worth, in one line. */
  public String origin(int row) {
    return text(row, "Source") + " (" + text(row, "Status") + ")";
  }

  /** Returns the numbers under a heading, as the resource writes it with its unit. */
  public Numbers numbers(String heading, QuantityKind kind) {
    return new Numbers(this, heading, kind);
  }

  private static String folded(String key) {
    return key.strip().toLowerCase(Locale.ROOT);
  }

  /** A column of numbers; a blank cell is no number. */
  public static final class Numbers {
    private final ReferenceTable table;
    private final String heading;
    private final String name;
    private final Unit unit;
    private final QuantityKind kind;

    private Numbers(ReferenceTable table, String heading, QuantityKind kind) {
      Matcher matcher = HEADING.matcher(heading);
      boolean hasUnit = matcher.matches();
      this.table = table;
      this.heading = heading;
      this.kind = kind;
      this.name = hasUnit ? matcher.group(1) : heading;
      this.unit = hasUnit ? Units.named(matcher.group(2)).orElseThrow() : Units.ONE;
      if (!unit.dimension().equals(kind.dimension())) {
        throw new IllegalArgumentException(
            heading + " of " + table.name + " is no " + kind.words());
      }
      for (int row = 0; row < table.size(); row++) {
        String text = table.text(row, heading);
        if (!text.isBlank()) {
          Double.parseDouble(text);
        }
      }
    }

    /** Returns the number for the word in a cell. */
    public Formula of(Cells word) {
      return new Formula.Lookup(word.reference(), this);
    }

    /** Returns the table it stands in. */
    public ReferenceTable table() {
      return table;
    }

    /** Returns the kind of its numbers. */
    public QuantityKind kind() {
      return kind;
    }

    /** Returns what the column is called, without unit. */
    public String name() {
      return name;
    }

    /** Returns the heading it has in the resource. */
    public String sourceHeading() {
      return heading;
    }

    /** Returns the heading it has in a workbook of the system. */
    public String heading(UnitSystem system) {
      String symbol = kind.unit(system).symbol();
      return symbol.isEmpty() ? name : name + " (" + symbol + ")";
    }

    /** Returns the number of a row in the unit of the system; no number where blank. */
    public double value(int row, UnitSystem system) {
      String text = table.text(row, heading);
      return text.isBlank()
          ? Double.NaN
          : unit.convert(Double.parseDouble(text), kind.unit(system));
    }

    /** Returns all numbers in the unit of the system, in the order of the keys. */
    public double[] values(UnitSystem system) {
      double[] values = new double[table.size()];
      for (int row = 0; row < values.length; row++) {
        values[row] = value(row, system);
      }
      return values;
    }

    /** Returns a number in the unit of the system as the resource would write it. */
    public String written(double value, UnitSystem system) {
      return QuantityText.exact(kind.unit(system).convert(value, unit));
    }

    /** Says whether every row has a number. */
    public boolean complete() {
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, heading).isBlank()) {
          return false;
        }
      }
      return true;
    }

    /** Returns the number as written, with the unit it has in the resource. */
    public String asPublished(int row) {
      String symbol = unit.symbol();
      return QuantityText.exact(Double.parseDouble(table.text(row, heading)))
          + (symbol.isEmpty() ? "" : " " + symbol);
    }
  }
}
