package zonewright.uncertainty;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import zonewright.sheet.Column;
import zonewright.water.InputRange;

/**
 * A measurement on the site.
 *
 * @param name what it is called
 * @param inputs the inputs it makes known
 * @param minutes how long it takes, for each zone or for the site
 * @param ofSite whether once is enough for all zones
 * @param needs what is needed for it
 * @param how how it is done, in a sentence or two
 */
public record Measurement(
    String name, List<Column> inputs, int minutes, boolean ofSite, String needs, String how) {
  private static final List<Measurement> ALL =
      CsvLines.of(Measurement.class, "measurements.csv").stream().map(Measurement::read).toList();

  public Measurement {
    inputs = List.copyOf(inputs);
  }

  /** Returns all there are. */
  public static List<Measurement> all() {
    return ALL;
  }

  /** Returns the measurement that makes an input known. */
  static Measurement of(InputRange range) {
    return ALL.stream()
        .filter(each -> each.inputs.contains(range.input()))
        .findFirst()
        .orElseThrow();
  }

  private static Measurement read(CSVRecord line) {
    return new Measurement(
        line.get("Measurement"),
        Arrays.stream(line.get("Inputs").split("; ", -1)).map(Measurement::input).toList(),
        Integer.parseInt(line.get("Minutes")),
        line.get("Each").equals("site"),
        line.get("Needs"),
        line.get("How"));
  }

  private static Column input(String name) {
    return InputRange.all().stream()
        .map(InputRange::input)
        .filter(column -> column.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
