package zonewright.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.Column;

/**
 * What exercises are about: a column asked for, the columns given with the range their figures are
 * drawn from, and what is said as it is.
 *
 * @param title what it is called
 * @param asked the column asked for
 * @param drawn the columns given
 * @param fixed what is always said
 */
public record Topic(String title, Column asked, List<Drawn> drawn, Map<Column, String> fixed) {
  private static final Pattern RANGE = Pattern.compile("([\\d.]+)\\.\\.([\\d.]+)\\s*(.*)");

  /** A column given: the least and the greatest figure, in the unit written here. */
  public record Drawn(Column column, double least, double greatest, String unit) {}

  public Topic {
    drawn = List.copyOf(drawn);
    fixed = Collections.unmodifiableMap(new LinkedHashMap<>(fixed));
  }

  /** Returns all topics, from precipitation rate to pressure at the worst head. */
  public static List<Topic> all() {
    try (InputStream stream = Topic.class.getResourceAsStream("topics.csv")) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .stream()
          .map(Topic::read)
          .toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Topic read(CSVRecord line) {
    List<Drawn> drawn = new ArrayList<>();
    pairs(line.get("Drawn")).forEach((column, range) -> drawn.add(drawn(column, range)));
    return new Topic(line.get("Topic"), column(line.get("Asked")), drawn, pairs(line.get("Fixed")));
  }

  private static Drawn drawn(Column column, String range) {
    Matcher parts = RANGE.matcher(range);
    if (!parts.matches()) {
      throw new IllegalArgumentException(column.name() + ": no range " + range);
    }
    double least = Double.parseDouble(parts.group(1));
    return new Drawn(column, least, Double.parseDouble(parts.group(2)), parts.group(3));
  }

  private static Map<Column, String> pairs(String text) {
    Map<Column, String> pairs = new LinkedHashMap<>();
    for (String pair : text.isBlank() ? new String[0] : text.split("\\|")) {
      int equals = pair.indexOf('=');
      pairs.put(column(pair.substring(0, equals)), pair.substring(equals + 1));
    }
    return pairs;
  }

  private static Column column(String key) {
    return IrrigationSheets.schema().tables().stream()
        .flatMap(table -> table.columns().stream())
        .filter(column -> column.reference().key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no column " + key));
  }
}
