package zonewright.audit;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import zonewright.design.IrrigationSheets;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * All reference checks, from the table beside this class.
 *
 * <p>Its column {@code Given} lists cells as {@code table.column[row]=text}, rows counted from 1
 * and left out where there is one, parted by {@code |}; {@code [*]} types into all twelve months,
 * {@code [1-16]} into sixteen rows: the same into each, or one of a list parted by {@code ;}.
 */
public final class ReferenceChecks {
  private static final Pattern CELL = Pattern.compile("([a-z0-9.-]+)(?:\\[(\\d+(?:-\\d+)?|\\*)])?");

  private ReferenceChecks() {}

  /** Returns the checks in the order of the table. */
  public static List<ReferenceCheck> all() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<ReferenceCheck> checks = new ArrayList<>();
    try (InputStream stream = ReferenceChecks.class.getResourceAsStream("reference-checks.csv");
        InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      for (CSVRecord line : format.parse(reader)) {
        checks.add(check(line));
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return checks;
  }

  private static ReferenceCheck check(CSVRecord line) {
    List<ReferenceCheck.Typed> given = new ArrayList<>();
    for (String part : line.get("Given").split("\\|", -1)) {
      int equals = part.indexOf('=');
      List<ReferenceCheck.Cell> cells = cells(part.substring(0, equals).strip());
      String[] texts = part.substring(equals + 1).split(";", -1);
      if (texts.length != 1 && texts.length != cells.size()) {
        throw new IllegalArgumentException("a list is not as long as its rows: " + part);
      }
      for (int i = 0; i < cells.size(); i++) {
        String text = texts[texts.length == 1 ? 0 : i].strip();
        given.add(new ReferenceCheck.Typed(cells.get(i), text));
      }
    }
    String symbol = line.get("Unit");
    Unit unit = symbol.isEmpty() ? Units.ONE : Units.named(symbol).orElseThrow();
    return new ReferenceCheck(
        line.get("Topic"),
        line.get("Example"),
        given,
        cells(line.get("Asked")).get(0),
        unit,
        Double.parseDouble(line.get("Expected")),
        Double.parseDouble(line.get("Tolerance")),
        line.get("Source"),
        line.get("Status"),
        line.get("Note"));
  }

  private static List<ReferenceCheck.Cell> cells(String text) {
    Matcher matcher = CELL.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("a reference check names no cell: " + text);
    }
    var column = ReferenceCheck.column(IrrigationSheets.schema(), matcher.group(1));
    List<ReferenceCheck.Cell> cells = new ArrayList<>();
    if ("*".equals(matcher.group(2))) {
      for (int month = 0; month < 12; month++) {
        cells.add(new ReferenceCheck.Cell(column, month));
      }
    } else {
      String[] ends = matcher.group(2) == null ? new String[] {"1"} : matcher.group(2).split("-");
      int last = Integer.parseInt(ends[ends.length - 1]);
      for (int row = Integer.parseInt(ends[0]); row <= last; row++) {
        cells.add(new ReferenceCheck.Cell(column, row - 1));
      }
    }
    return cells;
  }
}
