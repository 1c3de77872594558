package zonewright.weather;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads a file of days or hours by what its columns hold. */
final class ColumnReader {
  private static final int TELL_EVERY = 1 << 18;
  private static final int LINES_FOR_DATES = 3000;
  private static final Set<String> MARKS =
      Set.of("m", "na", "n/a", "nan", "null", "none", "-", "--", "---", ".", "x", "missing", "*");
  private static final Set<String> TRACES = Set.of("t", "tr", "trace");

  private final String text;
  private final char delimiter;
  private final int headLine;
  private final ColumnMatch match;
  private final Optional<Boolean> dayFirst;
  private final Quality quality = new Quality();
  private final DateReading dates = new DateReading();
  private boolean comma;
  private boolean hoursEnd;

  /** Where a value stands, what it counts, and where its publisher's doubts stand. */
  private record Field(
      WeatherElement element, int position, WeatherElement.Measure measure, int doubts) {}

  /**
   * Makes a reader.
   *
   * @param headLine the number of the line with the headings
   * @param dayFirst whether the day stands before the month, where a person said so
   */
  ColumnReader(
      String text, char delimiter, int headLine, ColumnMatch match, Optional<Boolean> dayFirst) {
    this.text = text;
    this.delimiter = delimiter;
    this.headLine = headLine;
    this.match = match;
    this.dayFirst = dayFirst;
  }

  private LineReader below() {
    LineReader reader = new LineReader(text, delimiter);
    while (reader.line() < headLine && reader.next()) {
      // the headings and what stands above them
    }
    return reader;
  }

  /**
   * Reads all lines.
   *
   * @throws WeatherProblem where it cannot be told what they mean
   */
  Observations read(StationSite said, HowFar howFar) throws WeatherProblem {
    Field[] fields = fields();
    look(fields);
    Observations.Collector collector = new Observations.Collector(match.step(), quality);
    LineReader reader = below();
    OptionalInt station = match.position(WeatherElement.STATION);
    String first = null;
    StationSite site = StationSite.UNKNOWN;
    int told = 0;
    while (reader.next()) {
      if (reader.position() - told > TELL_EVERY) {
        told = reader.position();
        howFar.at(told, text.length());
      }
      if (station.isPresent()) {
        String name = reader.cell(station.getAsInt());
        first = first == null ? name : first;
        if (!first.equals(name)) {
          quality.line(Quality.Fault.OTHER_STATION, reader.line());
          continue;
        }
      }
      long minutes = when(reader);
      if (minutes == DateReading.NONE) {
        quality.line(Quality.Fault.NO_DATE, reader.line());
        continue;
      }
      long steps =
          Math.floorDiv(
              minutes, match.step() == WeatherStep.HOUR ? 60L : DateReading.MINUTES_A_DAY);
      collector.begin((int) steps, reader.line());
      for (Field field : fields) {
        site = take(reader, field, collector, site);
      }
    }
    if (first != null && !first.isEmpty()) {
      site =
          new StationSite(first, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN)
              .with(site);
    }
    return collector.collected(site.with(said), false);
  }

  private Field[] fields() {
    Map<WeatherElement, Map.Entry<Integer, WeatherElement.Measure>> measured = match.measured();
    return measured.entrySet().stream()
        .map(
            each -> {
              int position = each.getValue().getKey();
              String attributes = match.headings().get(position) + "_ATTRIBUTES";
              return new Field(
                  each.getKey(),
                  position,
                  each.getValue().getValue(),
                  match.settled() ? match.headings().indexOf(attributes) : -1);
            })
        .toArray(Field[]::new);
  }

  private StationSite take(
      LineReader reader, Field field, Observations.Collector collector, StationSite site) {
    int position = field.position();
    WeatherElement element = field.element();
    if (!element.measured()) {
      double value = element.kept(reader.number(position, comma), field.measure());
      return Double.isNaN(value) || !element.possible(value)
          ? site
          : site.with(told(element, value));
    }
    if (reader.blank(position)) {
      quality.value(element, Quality.Fault.MISSING, reader.line());
      return site;
    }
    double number = reader.number(position, comma);
    if (Double.isNaN(number)) {
      String cell = reader.cell(position).toLowerCase(Locale.ROOT);
      if (element == WeatherElement.RAIN && TRACES.contains(cell)) {
        collector.put(element, 0);
      } else {
        boolean mark = MARKS.contains(cell);
        quality.value(
            element, mark ? Quality.Fault.MISSING : Quality.Fault.UNREADABLE, reader.line());
      }
      return site;
    }
    double value = element.kept(number, field.measure());
    if (missing(number) && (number < 0 || !element.possible(value))) {
      quality.value(element, Quality.Fault.MISSING, reader.line());
    } else if (field.doubts() >= 0 && doubted(reader.cell(field.doubts()))) {
      quality.value(element, Quality.Fault.DOUBTED, reader.line());
    } else {
      collector.put(element, value);
    }
    return site;
  }

  private static StationSite told(WeatherElement element, double value) {
    double none = Double.NaN;
    return new StationSite(
        "",
        element == WeatherElement.LATITUDE ? value : none,
        element == WeatherElement.LONGITUDE ? value : none,
        element == WeatherElement.ELEVATION ? value : none,
        none,
        none);
  }

  /** Says whether a number is one of those that files write for nothing: 99.9, -999, 9999. */
  static boolean missing(double number) {
    double size = Math.abs(number);
    return size == 99
        || size == 99.9
        || size == 999
        || size == 999.9
        || size == 9999
        || size == 9999.9
        || size == 99999
        || size == 6999;
  }

  /** The second of the letters that the network of daily summaries gives to a value. */
  private static boolean doubted(String attributes) {
    int from = attributes.indexOf(',') + 1;
    return from > 0 && from < attributes.length() && attributes.charAt(from) != ',';
  }

  /** Looks at the first lines: the decimal sign, the order of day and month, how hours count. */
  private void look(Field[] fields) throws WeatherProblem {
    LineReader reader = below();
    OptionalInt date = match.position(WeatherElement.DATE);
    OptionalInt hour = match.position(WeatherElement.HOUR);
    int commas = 0;
    int points = 0;
    boolean twoWays = false;
    long[] before = {DateReading.NONE, DateReading.NONE};
    int[] speaks = {0, 0};
    long stride = match.step() == WeatherStep.HOUR ? 60 : DateReading.MINUTES_A_DAY;
    for (int lines = 0; lines < LINES_FOR_DATES && reader.next(); lines++) {
      for (Field field : fields) {
        String cell = reader.cell(field.position());
        commas += cell.indexOf(',') >= 0 ? 1 : 0;
        points += cell.indexOf('.') >= 0 ? 1 : 0;
      }
      if (date.isPresent()) {
        String cell = reader.cell(date.getAsInt());
        twoWays |= DateReading.twoWays(cell);
        for (int way = 0; way < 2; way++) {
          dates.dayFirst(way == 1);
          long now = dates.minutes(cell);
          // a date that is none in one order counts against it more than one step out of order
          speaks[way] += now == DateReading.NONE ? -2 : 0;
          long apart =
              now == DateReading.NONE || before[way] == DateReading.NONE ? 0 : now - before[way];
          speaks[way] += apart == stride || apart == DateReading.MINUTES_A_DAY ? 1 : 0;
          before[way] = now;
        }
      }
      if (hour.isPresent()) {
        double value = reader.number(hour.getAsInt(), false);
        hoursEnd |= value == 24 || value == 2400;
      }
    }
    comma = delimiter != ',' && commas > points;
    if (commas > 0 && points > 0 && delimiter != ',') {
      quality.remark(
          "Some numbers have a comma before the decimals and some a point; those with a %s were read."
              .formatted(comma ? "comma" : "point"));
    }
    if (twoWays && dayFirst.isEmpty() && speaks[0] == speaks[1]) {
      throw new WeatherProblem(
          "The dates can be read with the day or the month first, and nothing tells which; say it, or write them as 2026-06-30.");
    }
    dates.dayFirst(dayFirst.orElse(speaks[1] > speaks[0]));
    if (twoWays) {
      quality.remark(
          "Dates were read with the %s first."
              .formatted(dayFirst.orElse(speaks[1] > speaks[0]) ? "day" : "month"));
    }
    if (match.step() == WeatherStep.HOUR) {
      quality.remark(
          hoursEnd
              ? "Hours are counted to 24, so each was taken to name its end."
              : "Each hour was taken to name its beginning.");
    }
  }

  private long when(LineReader reader) {
    long day = day(reader);
    OptionalInt hour = match.position(WeatherElement.HOUR);
    if (day == DateReading.NONE || hour.isEmpty()) {
      return day;
    }
    String cell = reader.cell(hour.getAsInt());
    int colon = cell.indexOf(':');
    double number =
        colon > 0 ? whole(cell.substring(0, colon)) : reader.number(hour.getAsInt(), false);
    double clock = number > 24 ? Math.floor(number / 100) : number;
    if (!(clock >= 0 && clock <= 24)) {
      return DateReading.NONE;
    }
    return Math.floorDiv(day, DateReading.MINUTES_A_DAY) * DateReading.MINUTES_A_DAY
        + 60L * ((int) clock - (hoursEnd ? 1 : 0));
  }

  private long day(LineReader reader) {
    OptionalInt date = match.position(WeatherElement.DATE);
    if (date.isPresent()) {
      return dates.minutes(reader.cell(date.getAsInt()));
    }
    int year = whole(cell(reader, WeatherElement.YEAR));
    if (match.position(WeatherElement.DAY_OF_YEAR).isPresent()) {
      return DateReading.dayOfYear(year, whole(cell(reader, WeatherElement.DAY_OF_YEAR)));
    }
    return DateReading.day(
        year, whole(cell(reader, WeatherElement.MONTH)), whole(cell(reader, WeatherElement.DAY)));
  }

  private String cell(LineReader reader, WeatherElement element) {
    OptionalInt position = match.position(element);
    return position.isPresent() ? reader.cell(position.getAsInt()) : "";
  }

  private static int whole(String text) {
    return text.matches("\\d{1,6}(\\.0*)?") ? Integer.parseInt(text.replaceAll("\\.0*$", "")) : -1;
  }
}
