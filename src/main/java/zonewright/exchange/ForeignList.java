package zonewright.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A list as it stands in a file: headings and rows of text.
 *
 * @param headings the first line
 * @param rows the lines below it, each with as many cells as there are headings
 * @param decimalComma whether its numbers have a comma before the decimals
 * @param notes what the reader should know, each a sentence
 */
public record ForeignList(
    List<String> headings, List<List<String>> rows, boolean decimalComma, List<String> notes) {
  /** No larger list is read: 20 MB. */
  static final long LARGEST = 20L << 20;

  /** No list of more rows is read. */
  static final int MOST_ROWS = 50_000;

  private static final int LINES_LOOKED_AT = 50;
  private static final Charset OLDER = Charset.forName("windows-1252");

  public ForeignList {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
  }

  /**
   * Reads a file.
   *
   * @throws ListProblem when it cannot be read, is too large, or is no list
   */
  public static ForeignList read(Path file) throws ListProblem {
    try {
      if (!Files.isRegularFile(file)) {
        throw new ListProblem("There is no file %s.".formatted(file));
      }
      if (Files.size(file) > LARGEST) {
        throw new ListProblem(
            "%s has %s MB; lists up to %s MB are read."
                .formatted(file, Files.size(file) >> 20, LARGEST >> 20));
      }
      return of(Files.readAllBytes(file), file.toString());
    } catch (IOException problem) {
      throw new ListProblem("%s cannot be read.".formatted(file), problem);
    }
  }

  /**
   * Reads what was copied in another program; spreadsheets set cells apart by tabs.
   *
   * @throws ListProblem when it is too large, or no list
   */
  public static ForeignList pasted(String text) throws ListProblem {
    if (text.length() > LARGEST) {
      throw new ListProblem(
          "What was copied has %s million letters; lists of up to %s are read."
              .formatted(text.length() >> 20, LARGEST >> 20));
    }
    return of(text.getBytes(StandardCharsets.UTF_8), "What was copied");
  }

  /**
   * Reads the content of a file.
   *
   * @param name what to call it in a complaint
   */
  static ForeignList of(byte[] content, String name) throws ListProblem {
    List<String> notes = new ArrayList<>();
    String text = decoded(content, notes);
    if (text.indexOf('\0') >= 0) {
      throw new ListProblem("%s is not a list of text; save it as CSV.".formatted(name));
    }
    Optional<Character> said = saidDelimiter(text);
    if (said.isPresent()) {
      text = text.substring(text.indexOf('\n') + 1);
    }
    char delimiter = said.orElse(delimiter(text));
    List<List<String>> lines = lines(text, delimiter, name);
    lines.removeIf(line -> line.stream().allMatch(String::isBlank));
    if (lines.isEmpty()) {
      throw new ListProblem("%s holds nothing.".formatted(name));
    }
    if (lines.size() > MOST_ROWS + 1) {
      throw new ListProblem(
          "%s has %s rows; lists of up to %s are read."
              .formatted(name, lines.size() - 1, MOST_ROWS));
    }
    List<String> headings = lines.get(0).stream().map(String::strip).toList();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      rows.add(fitted(lines.get(i), headings.size(), i + 1, notes));
    }
    return new ForeignList(headings, rows, decimalComma(rows, delimiter, notes), notes);
  }

  private static String decoded(byte[] content, List<String> notes) {
    if (starts(content, 0xEF, 0xBB, 0xBF)) {
      return new String(content, 3, content.length - 3, StandardCharsets.UTF_8);
    }
    if (starts(content, 0xFF, 0xFE)) {
      return new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE);
    }
    if (starts(content, 0xFE, 0xFF)) {
      return new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE);
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(content))
          .toString();
    } catch (CharacterCodingException older) {
      notes.add("The list is in an older encoding of letters; look at words with accents.");
      return new String(content, OLDER);
    }
  }

  private static boolean starts(byte[] content, int... bytes) {
    for (int i = 0; i < bytes.length; i++) {
      if (content.length <= i || (content[i] & 0xFF) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  /** Some programs write which delimiter they use in a line of its own. */
  private static Optional<Character> saidDelimiter(String text) {
    return text.startsWith("sep=") && text.length() > 5 && "\r\n".indexOf(text.charAt(5)) >= 0
        ? Optional.of(text.charAt(4))
        : Optional.empty();
  }

  /** The one that parts the first lines into most cells, all into as many as the headings. */
  private static char delimiter(String text) {
    char best = ',';
    long most = 0;
    for (char each : new char[] {';', '\t', ','}) {
      List<String> first = text.lines().limit(LINES_LOOKED_AT).toList();
      long fewest = Long.MAX_VALUE;
      for (String line : first) {
        fewest = line.isBlank() ? fewest : Math.min(fewest, count(line, each));
      }
      if (!first.isEmpty() && fewest != Long.MAX_VALUE && fewest > most) {
        most = fewest;
        best = each;
      }
    }
    return most > 0 ? best : text.lines().findFirst().orElse("").indexOf(';') >= 0 ? ';' : ',';
  }

  private static long count(String line, char delimiter) {
    long count = 0;
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      quoted ^= line.charAt(i) == '"';
      count += !quoted && line.charAt(i) == delimiter ? 1 : 0;
    }
    return count;
  }

  private static List<List<String>> lines(String text, char delimiter, String name)
      throws ListProblem {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter)
            .setIgnoreEmptyLines(true)
            .setLenientEof(true)
            .setTrailingData(true)
            .get();
    List<List<String>> lines = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord line : parser) {
        lines.add(line.toList());
      }
    } catch (IOException | UncheckedIOException | IllegalStateException problem) {
      throw new ListProblem(
          "%s has a quotation mark that is not closed near line %s."
              .formatted(name, lines.size() + 1),
          problem);
    }
    return lines;
  }

  private static List<String> fitted(List<String> line, int width, int number, List<String> notes) {
    List<String> cells = new ArrayList<>(line);
    while (cells.size() < width) {
      cells.add("");
    }
    List<String> beyond = cells.subList(width, cells.size());
    if (beyond.stream().anyMatch(cell -> !cell.isBlank())) {
      notes.add(
          "Line %s has more cells than there are headings; left out: %s."
              .formatted(number, String.join(", ", beyond)));
    }
    return List.copyOf(cells.subList(0, width));
  }

  private static boolean decimalComma(List<List<String>> rows, char delimiter, List<String> notes) {
    boolean comma = false;
    boolean point = false;
    boolean either = false;
    for (List<String> row : rows) {
      for (String cell : row) {
        String number = cell.strip().replaceAll("\\s*[^\\d.,]*$", "");
        comma |= number.matches("-?(\\d+|\\d{1,3}(\\.\\d{3})+),(\\d{1,2}|\\d{4,})");
        point |= number.matches("-?(\\d+|\\d{1,3}(,\\d{3})+)\\.(\\d{1,2}|\\d{4,})");
        either |= number.matches("-?\\d{1,3}[.,]\\d{3}");
      }
    }
    if (comma && point) {
      notes.add(
          "Some numbers have a decimal comma and some a decimal point; each was read for itself.");
      return false;
    }
    if (either && !comma && !point && delimiter == ';') {
      notes.add(
          "Numbers such as 1.500 and 1,500 can be read in two ways; in a list set apart by semicolons the comma was taken as the"
              + " decimal sign.");
    }
    return comma || (either && !point && delimiter == ';');
  }
}
