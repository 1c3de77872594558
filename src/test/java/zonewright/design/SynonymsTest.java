package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import zonewright.sheet.ColumnFinder;
import zonewright.trade.Sheets;

/** Phrasings of questions were collected before the names were; they hold what names are worth. */
class SynonymsTest {
  private static final double FIRST_SHARE = 0.95;

  private static List<CSVRecord> phrasings() throws IOException {
    try (Reader reader =
        new InputStreamReader(
            SynonymsTest.class.getResourceAsStream("questions.csv"), StandardCharsets.UTF_8)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(reader)
          .getRecords();
    }
  }

  @Test
  void mostPhrasingsFindTheirColumnFirstAndAllAmongTheFirstThree() throws IOException {
    List<String> notFirst = new ArrayList<>();
    List<String> notInThree = new ArrayList<>();
    List<CSVRecord> phrasings = phrasings();
    ColumnFinder finder = Synonyms.finder(IrrigationSheets.schema(), Sheets.ZONES);
    for (CSVRecord each : phrasings) {
      List<String> found =
          finder.nearest(each.get("Phrase"), 3).stream()
              .map(column -> column.reference().key())
              .toList();
      int place = found.indexOf(each.get("Column"));
      if (place != 0) {
        notFirst.add(each.get("Phrase") + " " + found);
      }
      if (place < 0) {
        notInThree.add(each.get("Phrase") + " " + found);
      }
    }
    assertThat(phrasings).hasSizeGreaterThanOrEqualTo(200);
    assertThat(notInThree).isEmpty();
    assertThat(notFirst).hasSizeLessThanOrEqualTo((int) ((1 - FIRST_SHARE) * phrasings.size()));
  }
}
