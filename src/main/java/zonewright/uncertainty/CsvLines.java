package zonewright.uncertainty;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Bundled tables in which several rows may be about the same thing. */
final class CsvLines {
  private CsvLines() {}

  /** Returns the lines of a resource that stands beside a class, by their headings. */
  static List<CSVRecord> of(Class<?> owner, String resource) {
    try (InputStream stream = owner.getResourceAsStream(resource)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .getRecords();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
