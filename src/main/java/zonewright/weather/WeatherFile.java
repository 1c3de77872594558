package zonewright.weather;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A file of weather: which of the known forms it has, and what it says of its place. Nothing is
 * calculated before {@link #read}.
 */
public final class WeatherFile {
  /** No larger file is read: 150 MB. */
  static final long LARGEST = 150L << 20;

  private static final int LINES_LOOKED_AT = 80;
  private static final int SAMPLES = 12;
  private static final int FEWEST_NAMED = 3;

  /** Which form a file has. */
  private enum Form {
    HOURLY_YEAR("an hourly weather file (EPW)"),
    SUMMARIES("daily summaries of a weather service (GHCN-Daily), a column for each element"),
    SUMMARY_LINES("daily summaries of a weather service (GHCN-Daily), a line for each element"),
    COLUMNS("a table with a line for each day"),
    HOURS("a table with a line for each hour");

    private final String words;

    Form(String words) {
      this.words = words;
    }
  }

  private final String name;
  private final String text;
  private final Form form;
  private final char delimiter;
  private final int headLine;
  private final Optional<ColumnMatch> match;

  private WeatherFile(
      String name,
      String text,
      Form form,
      char delimiter,
      int headLine,
      Optional<ColumnMatch> match) {
    this.name = name;
    this.text = text;
    this.form = form;
    this.delimiter = delimiter;
    this.headLine = headLine;
    this.match = match;
  }

  /**
   * Opens a file.
   *
   * @throws WeatherProblem where it is not there, is too large, or is nothing that could be weather
   */
  public static WeatherFile open(Path file) throws WeatherProblem {
    String name = String.valueOf(file.getFileName());
    byte[] content;
    try {
      if (!Files.isRegularFile(file)) {
        throw new WeatherProblem("There is no file %s.".formatted(file));
      }
      if (Files.size(file) > LARGEST) {
        throw new WeatherProblem(
            "%s has %s MB; weather files up to %s MB are read."
                .formatted(name, Files.size(file) >> 20, LARGEST >> 20));
      }
      content = Files.readAllBytes(file);
    } catch (IOException problem) {
      throw new WeatherProblem("%s cannot be read.".formatted(name), problem);
    }
    return of(content, name);
  }

  /**
   * Looks at the content of a file.
   *
   * @param name what to call it
   */
  static WeatherFile of(byte[] content, String name) throws WeatherProblem {
    boolean gzip = content.length > 1 && (content[0] & 0xFF) == 0x1F && (content[1] & 0xFF) == 0x8B;
    boolean zip = content.length > 1 && content[0] == 'P' && content[1] == 'K';
    if (gzip || zip) {
      throw new WeatherProblem("%s is packed; unpack it first.".formatted(name));
    }
    String text = LineReader.decoded(content);
    if (text.isBlank()) {
      throw new WeatherProblem("%s holds nothing.".formatted(name));
    }
    if (text.indexOf('\0') >= 0) {
      throw new WeatherProblem(
          "%s is not a file of text; save the weather as CSV.".formatted(name));
    }
    if (HourlyYearReader.reads(text)) {
      return new WeatherFile(name, text, Form.HOURLY_YEAR, ',', 0, Optional.empty());
    }
    LineReader first = new LineReader(text, ',');
    first.next();
    if (DailySummaries.readsLine(first)) {
      return new WeatherFile(name, text, Form.SUMMARY_LINES, ',', 0, Optional.empty());
    }
    return columns(name, text);
  }

  private static WeatherFile columns(String name, String text) throws WeatherProblem {
    char delimiter = ',';
    int headLine = 0;
    int most = 0;
    List<String> headings = List.of();
    for (char each : new char[] {',', ';', '\t'}) {
      LineReader reader = new LineReader(text, each);
      for (int i = 0; i < LINES_LOOKED_AT && reader.next(); i++) {
        List<String> cells = cells(reader);
        int speaks = 1000 * ColumnMatch.named(cells) + (headLine == 0 ? cells.size() : 0);
        if (cells.size() > 1 && speaks > most) {
          most = speaks;
          delimiter = each;
          headLine = reader.line();
          headings = cells;
        }
      }
    }
    if (headings.isEmpty()) {
      throw new WeatherProblem(
          "%s is no table of days or hours: no line has cells set apart by commas, semicolons or tabs."
              .formatted(name));
    }
    if (DailySummaries.reads(headings)) {
      ColumnMatch match = DailySummaries.match(headings, below(text, delimiter, headLine));
      return new WeatherFile(name, text, Form.SUMMARIES, delimiter, headLine, Optional.of(match));
    }
    List<List<String>> samples = new ArrayList<>();
    LineReader reader = below(text, delimiter, headLine);
    while (samples.size() < SAMPLES && reader.next()) {
      samples.add(cells(reader));
    }
    ColumnMatch match = new ColumnMatch(headings, samples);
    if (!samples.isEmpty()) {
      match.takesUnits(samples.get(0));
    }
    return new WeatherFile(name, text, Form.COLUMNS, delimiter, headLine, Optional.of(match));
  }

  private static LineReader below(String text, char delimiter, int headLine) {
    LineReader reader = new LineReader(text, delimiter);
    while (reader.line() < headLine && reader.next()) {
      // the headings and what stands above them
    }
    return reader;
  }

  private static List<String> cells(LineReader reader) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < reader.cells(); i++) {
      cells.add(reader.cell(i));
    }
    return cells;
  }

  /**
   * Says whether a file that was dropped is weather and not another list: by its ending, or by what
   * its headings name.
   */
  public static boolean looksLikeWeather(Path file) {
    String ending = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (ending.endsWith(".epw")) {
      return true;
    }
    if (!ending.endsWith(".csv") && !ending.endsWith(".tsv") && !ending.endsWith(".txt")) {
      return false;
    }
    try {
      WeatherFile opened = open(file);
      return opened.match.isEmpty()
          || opened.match.get().settled()
          || (ColumnMatch.named(opened.match.get().headings()) >= FEWEST_NAMED
              && ColumnMatch.measured(opened.match.get().headings()) > 1);
    } catch (WeatherProblem none) {
      return false;
    }
  }

  /** Returns the file's name. */
  public String name() {
    return name;
  }

  /** Returns which of the known forms it has, in words. */
  public String form() {
    boolean hours = form == Form.COLUMNS && match.orElseThrow().step() == WeatherStep.HOUR;
    return (hours ? Form.HOURS : form).words;
  }

  /** Returns which column holds what; none where the form of the file leaves nothing open. */
  public Optional<ColumnMatch> match() {
    return match.filter(each -> !each.settled());
  }

  /** Returns what the file says of its place before all of it is read. */
  public StationSite site() {
    return switch (form) {
      case HOURLY_YEAR -> HourlyYearReader.site(text);
      case SUMMARIES, SUMMARY_LINES -> windAt(DailySummaries.windHeight());
      default -> windAt(match.orElseThrow().windHeight());
    };
  }

  private static StationSite windAt(double height) {
    return new StationSite("", Double.NaN, Double.NaN, Double.NaN, height, Double.NaN);
  }

  /**
   * Reads all of it and calculates each day.
   *
   * @throws WeatherProblem where something must be said first, or nothing can be calculated
   */
  public DailyRecord read(WeatherChoices choices, HowFar howFar) throws WeatherProblem {
    List<String> open = match().map(ColumnMatch::problems).orElse(List.of());
    if (!open.isEmpty()) {
      throw new WeatherProblem(String.join(" ", open));
    }
    StationSite said = site().with(choices.place());
    Observations observed =
        switch (form) {
          case HOURLY_YEAR -> HourlyYearReader.read(text, said, howFar);
          case SUMMARY_LINES -> DailySummaries.readLines(text, said, howFar);
          default ->
              new ColumnReader(text, delimiter, headLine, match.orElseThrow(), choices.dayFirst())
                  .read(said, howFar);
        };
    if (form == Form.SUMMARIES) {
      observed
          .quality()
          .remark(
              DailySummaries.writingInWords(
                  match.orElseThrow().headings(), below(text, delimiter, headLine)));
    }
    if (observed.size() == 0) {
      throw new WeatherProblem(
          "%s holds no %s that can be read. %s"
              .formatted(
                  name, observed.step().one(), String.join(" ", observed.quality().sentences()))
              .strip());
    }
    return new DailyCalculation(name, form(), observed, choices).record();
  }
}
