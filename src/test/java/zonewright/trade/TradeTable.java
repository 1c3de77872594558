package zonewright.trade;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One bundled table as a reader of the file sees it: text by heading, nothing interpreted. */
record TradeTable(String path, List<String> headings, List<CSVRecord> rows) {
  /** Every bundled table, by its path below the package {@code zonewright}. */
  static final List<String> PATHS =
      List.of(
          "climate/reference-et.csv",
          "plants/plants.csv",
          "plants/plant-factors.csv",
          "soil/soils.csv",
          "soil/available-water.csv",
          "soil/sprinkler-rate-limits.csv",
          "emitters/emitters.csv",
          "pipes/pipes.csv",
          "pipes/pipes-metric.csv",
          "pipes/pipe-ratings.csv",
          "pipes/meters.csv",
          "pipes/meter-losses.csv",
          "pipes/fittings.csv",
          "pipes/backflow.csv",
          "pipes/valve-losses.csv",
          "pipes/wires.csv",
          "uncertainty/published-ranges.csv",
          "uncertainty/measurements.csv");

  /** Reads a table; refuses bytes that are not UTF-8 and lines that RFC 4180 would not allow. */
  static TradeTable read(String path) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(false).get();
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(new ByteArrayInputStream(bytes(path)), UTF_8), format)) {
      return new TradeTable(path, parser.getHeaderNames(), parser.getRecords());
    } catch (IOException exception) {
      throw new UncheckedIOException(path, exception);
    }
  }

  static Stream<TradeTable> all() {
    return PATHS.stream().map(TradeTable::read);
  }

  static byte[] bytes(String path) {
    try (InputStream stream =
        TradeTable.class.getClassLoader().getResourceAsStream("zonewright/" + path)) {
      if (stream == null) {
        throw new IllegalStateException("There is no table zonewright/" + path + " to read.");
      }
      return stream.readAllBytes();
    } catch (IOException exception) {
      throw new UncheckedIOException(path, exception);
    }
  }

  /** The file as text; a byte that is not UTF-8 is an error, never a replacement character. */
  static String text(String path) {
    try {
      return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(path))).toString();
    } catch (CharacterCodingException exception) {
      throw new UncheckedIOException(path + " is not UTF-8", exception);
    }
  }

  CSVRecord row(String key) {
    return rows.stream()
        .filter(row -> row.get(0).equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(path + " has no row \"" + key + "\""));
  }

  BigDecimal number(String key, String heading) {
    return new BigDecimal(row(key).get(heading));
  }

  @Override
  public String toString() {
    return path;
  }
}
