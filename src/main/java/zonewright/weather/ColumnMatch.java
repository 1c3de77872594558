package zonewright.weather;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Which column of somebody's weather file holds what, in which unit. Headings are taken at their
 * word; where they leave something open, a person says it.
 */
public final class ColumnMatch {
  private static final Pattern UNIT = Pattern.compile("^(.*?)\\s*[(\\[]([^()\\[\\]]*)[)\\]]\\s*$");
  private static final Pattern HEIGHT =
      Pattern.compile("\\b(?:at )?(\\d{1,2}(?:\\.\\d)?) ?m(?:etres|eters|etre|eter)?\\b");

  /** Words that mean the same in headings; what says nothing becomes nothing. */
  private static final Map<String, String> SAME =
      Map.ofEntries(
          Map.entry("maximum", "max"),
          Map.entry("highest", "max"),
          Map.entry("high", "max"),
          Map.entry("minimum", "min"),
          Map.entry("lowest", "min"),
          Map.entry("low", "min"),
          Map.entry("average", "mean"),
          Map.entry("avg", "mean"),
          Map.entry("temp", "temperature"),
          Map.entry("hum", "humidity"),
          Map.entry("vapor", "vapour"),
          Map.entry("rel", ""),
          Map.entry("relative", ""),
          Map.entry("air", ""),
          Map.entry("daily", ""),
          Map.entry("total", ""));

  private static final Map<String, WeatherElement> NAMES = names();

  private final List<String> headings;
  private final List<List<String>> samples;
  private final Map<Integer, Column> columns = new HashMap<>();
  private final boolean settled;
  private boolean hourly;
  private double windHeight = Double.NaN;

  /**
   * A column of the file that is read.
   *
   * @param unit as somebody wrote it; empty where nobody did
   */
  private record Column(
      WeatherElement element, String unit, Optional<WeatherElement.Measure> set) {}

  /**
   * Matches by the headings.
   *
   * @param samples the first lines below them
   */
  ColumnMatch(List<String> headings, List<List<String>> samples) {
    this.headings = List.copyOf(headings);
    this.samples = List.copyOf(samples);
    this.settled = false;
    for (int i = 0; i < headings.size(); i++) {
      guess(i);
    }
    hourly = position(WeatherElement.HOUR).isPresent() || timed();
  }

  private ColumnMatch(List<String> headings) {
    this.headings = List.copyOf(headings);
    this.samples = List.of();
    this.settled = true;
  }

  /** Returns a match by a published form: its columns' elements and units are known. */
  static ColumnMatch published(
      List<String> headings,
      Map<String, WeatherElement> elements,
      Map<WeatherElement, WeatherElement.Measure> measures) {
    ColumnMatch match = new ColumnMatch(headings);
    for (int i = 0; i < headings.size(); i++) {
      WeatherElement element = elements.get(headings.get(i));
      if (element != null) {
        match.columns.put(i, new Column(element, "", Optional.ofNullable(measures.get(element))));
      }
    }
    return match;
  }

  private static Map<String, WeatherElement> names() {
    Properties lists = new Properties();
    try (InputStream stream = ColumnMatch.class.getResourceAsStream("element-names.properties")) {
      lists.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    Map<String, WeatherElement> names = new HashMap<>();
    for (WeatherElement element : WeatherElement.values()) {
      String key = element.name().toLowerCase(Locale.ROOT).replace('_', '-');
      for (String name : lists.getProperty(key).strip().split("\\s*,\\s*", -1)) {
        WeatherElement before = names.put(Named.plain(name), element);
        if (before != null && before != element) {
          throw new IllegalStateException("two elements are called " + name);
        }
      }
    }
    return names;
  }

  /** Returns how many of some cells name an element, a date among them; else 0. */
  static int named(List<String> cells) {
    int count = 0;
    boolean when = false;
    for (String cell : cells) {
      Optional<WeatherElement> element = Named.of(cell).map(Named::element);
      count += element.isPresent() ? 1 : 0;
      when |= element.filter(ColumnMatch::tellsDay).isPresent();
    }
    return when ? count : 0;
  }

  /** Returns how many of some cells name something measured. */
  static long measured(List<String> cells) {
    return cells.stream()
        .flatMap(cell -> Named.of(cell).stream())
        .filter(named -> named.element().measured())
        .count();
  }

  private static boolean tellsDay(WeatherElement element) {
    return element == WeatherElement.DATE || element == WeatherElement.YEAR;
  }

  /**
   * What a heading says.
   *
   * @param unit empty where it names none
   * @param height metres above ground, not-a-number where it names none
   */
  private record Named(WeatherElement element, String unit, double height) {
    static Optional<Named> of(String heading) {
      Matcher parted = UNIT.matcher(heading.strip());
      boolean has = parted.matches();
      String unit = has ? parted.group(2).strip() : "";
      String words = (has ? parted.group(1) : heading).toLowerCase(Locale.ROOT);
      Matcher high = HEIGHT.matcher(words.replace('_', ' '));
      double height = high.find() ? Double.parseDouble(high.group(1)) : Double.NaN;
      String plain = plain(Double.isNaN(height) ? words : high.replaceAll(" "));
      WeatherElement element = NAMES.getOrDefault(plain(words), NAMES.get(plain));
      if (element != null) {
        return Optional.of(new Named(element, unit, height));
      }
      String bare = words.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
      int blank = bare.lastIndexOf(' ');
      if (!has && blank > 0) {
        WeatherElement shorter = NAMES.get(plain(bare.substring(0, blank)));
        String last = bare.substring(blank + 1);
        if (shorter != null && shorter.unit(last, WeatherStep.DAY).isPresent()) {
          return Optional.of(new Named(shorter, last, height));
        }
      }
      return Optional.empty();
    }

    /** Brings words of one meaning together; their order does not matter. */
    private static String plain(String words) {
      return Arrays.stream(words.replaceAll("[^\\p{L}\\p{N}]+", " ").strip().split(" ", -1))
          .map(word -> SAME.getOrDefault(word, word))
          .filter(word -> !word.isEmpty())
          .sorted()
          .collect(Collectors.joining(" "));
    }
  }

  private void guess(int position) {
    Optional<Named> named = Named.of(headings.get(position));
    if (named.isPresent() && position(named.get().element()).isEmpty()) {
      put(position, named.get().element(), named.get().unit());
      if (named.get().element() == WeatherElement.WIND && named.get().height() > 0) {
        windHeight = named.get().height();
      }
    }
  }

  private boolean timed() {
    OptionalInt date = position(WeatherElement.DATE);
    return date.isPresent()
        && samples.stream()
            .map(line -> date.getAsInt() < line.size() ? line.get(date.getAsInt()) : "")
            .anyMatch(text -> DateReading.hasTime(text));
  }

  /** Returns the headings of the file. */
  public List<String> headings() {
    return headings;
  }

  /** Returns some of the first values below a heading. */
  public List<String> samples(int position) {
    return samples.stream()
        .map(line -> position < line.size() ? line.get(position) : "")
        .filter(text -> !text.isEmpty())
        .limit(3)
        .toList();
  }

  /** Says whether nothing is left to say: the form of the file is published. */
  public boolean settled() {
    return settled;
  }

  /** Returns what one line stands for. */
  public WeatherStep step() {
    return hourly ? WeatherStep.HOUR : WeatherStep.DAY;
  }

  /** Returns what a column holds; nothing where it is left out. */
  public Optional<WeatherElement> element(int position) {
    return Optional.ofNullable(columns.get(position)).map(Column::element);
  }

  /** Returns the unit a column is in, as somebody wrote it; empty where nobody did. */
  public String unit(int position) {
    return columns.containsKey(position) ? columns.get(position).unit() : "";
  }

  /** Returns the column that holds an element. */
  public OptionalInt position(WeatherElement element) {
    return columns.entrySet().stream()
        .filter(each -> each.getValue().element() == element)
        .mapToInt(Map.Entry::getKey)
        .min();
  }

  /** Returns the position of a heading; capitals and spaces do not matter. */
  public OptionalInt position(String heading) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).strip().equalsIgnoreCase(heading.strip())) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Says what a column holds, in place of what was said of it or of another column before.
   *
   * @param unit as a person writes it; empty to say nothing of it
   */
  public void set(int position, WeatherElement element, String unit) {
    columns.values().removeIf(column -> column.element() == element);
    put(position, element, unit);
    hourly = position(WeatherElement.HOUR).isPresent() || timed();
  }

  private void put(int position, WeatherElement element, String unit) {
    columns.put(position, new Column(element, unit.strip(), Optional.empty()));
  }

  /** Leaves a column out. */
  public void leave(int position) {
    columns.remove(position);
    hourly = position(WeatherElement.HOUR).isPresent() || timed();
  }

  /** Returns the height a heading names for the wind, in metres; not-a-number where none does. */
  double windHeight() {
    return windHeight;
  }

  /** Returns what still has to be said before the file can be read, each a sentence. */
  public List<String> problems() {
    List<String> problems = new ArrayList<>();
    boolean date =
        position(WeatherElement.DATE).isPresent()
            || (position(WeatherElement.YEAR).isPresent()
                && (position(WeatherElement.DAY_OF_YEAR).isPresent()
                    || (position(WeatherElement.MONTH).isPresent()
                        && position(WeatherElement.DAY).isPresent())));
    if (!date) {
      problems.add(
          "No column tells the day: choose the one with the date, or those with year, month and day.");
    }
    boolean temperatures =
        hourly
            ? position(WeatherElement.TEMPERATURE).isPresent()
            : position(WeatherElement.HIGHEST).isPresent()
                && position(WeatherElement.LOWEST).isPresent();
    if (!temperatures && position(WeatherElement.EVAPOTRANSPIRATION).isEmpty()) {
      problems.add(
          hourly
              ? "No column holds the temperature of the hour, nor evapotranspiration itself."
              : "No columns hold the highest and the lowest temperature, nor is there one with evapotranspiration itself.");
    }
    for (int i = 0; i < headings.size(); i++) {
      Column column = columns.get(i);
      if (column != null && measure(column).isEmpty() && column.element().measured()) {
        String choices = String.join(", ", column.element().unitChoices());
        problems.add(
            column.unit().isEmpty()
                ? "“%s” names no unit for %s; say which: %s."
                    .formatted(headings.get(i), column.element().words(), choices)
                : "“%s” is no unit of %s that is known here; choose one of %s."
                    .formatted(column.unit(), column.element().words(), choices));
      }
    }
    return problems;
  }

  private Optional<WeatherElement.Measure> measure(Column column) {
    return column.set().isPresent() ? column.set() : column.element().unit(column.unit(), step());
  }

  /** Returns the columns to read, by element, with what their numbers count. */
  Map<WeatherElement, Map.Entry<Integer, WeatherElement.Measure>> measured() {
    Map<WeatherElement, Map.Entry<Integer, WeatherElement.Measure>> all =
        new EnumMap<>(WeatherElement.class);
    columns.forEach(
        (position, column) ->
            measure(column)
                .filter(any -> column.element().measured() || place(column.element()))
                .ifPresent(measure -> all.put(column.element(), Map.entry(position, measure))));
    return all;
  }

  private static boolean place(WeatherElement element) {
    return List.of(WeatherElement.LATITUDE, WeatherElement.LONGITUDE, WeatherElement.ELEVATION)
        .contains(element);
  }

  /** Takes units from a line of its own below the headings. */
  boolean takesUnits(List<String> line) {
    int taken = 0;
    for (int i = 0; i < Math.min(line.size(), headings.size()); i++) {
      Column column = columns.get(i);
      String unit = line.get(i).replaceAll("[()\\[\\]]", "").strip();
      if (column != null
          && column.unit().isEmpty()
          && !unit.isEmpty()
          && column.element().unit(unit, step()).isPresent()) {
        put(i, column.element(), unit);
        taken++;
      }
    }
    return taken > 1;
  }
}
