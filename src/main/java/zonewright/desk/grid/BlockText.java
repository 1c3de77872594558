package zonewright.desk.grid;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;

/** Blocks of cells as the plain text that spreadsheet programs exchange: tabs and line ends. */
final class BlockText {
  private static final CSVFormat TABS =
      CSVFormat.DEFAULT
          .builder()
          .setDelimiter('\t')
          .setRecordSeparator('\n')
          .setQuoteMode(QuoteMode.MINIMAL)
          .setIgnoreEmptyLines(false)
          .setIgnoreSurroundingSpaces(false)
          .setLenientEof(true)
          .setTrailingData(true)
          .get();

  private BlockText() {}

  /**
   * Returns the cells of a text. Quotation marks around a cell keep tabs and line ends in it;
   * within a cell, or unpaired, they stand for themselves.
   */
  static List<List<String>> read(String text) {
    if (text.isEmpty()) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, TABS)) {
      for (CSVRecord line : parser) {
        rows.add(line.toList());
      }
    } catch (IOException | UncheckedIOException malformed) {
      return plain(text);
    }
    return rows;
  }

  private static List<List<String>> plain(String text) {
    return text.lines().map(line -> List.of(line.split("\t", -1))).toList();
  }

  /** Returns cells as text, in quotation marks where they need them. */
  static String write(List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, TABS)) {
      for (List<String> row : rows) {
        if (row.size() == 1 && row.get(0).isEmpty()) {
          text.append('\n');
        } else {
          printer.printRecord(row);
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }
}
