package zonewright.sheet;

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
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import zonewright.units.DecimalSign;
import zonewright.units.UnitSystem;

/**
 * Lines of cells that somebody else wrote: which letters, what parts the cells, and which sign
 * stands before decimals. What can be read two ways is not taken.
 */
public final class ListText {
  /** No larger list is read: 20 MB. */
  public static final long LARGEST = 20L << 20;

  private static final int LINES_LOOKED_AT = 50;
  private static final int LINES_NAMED = 3;
  private static final Pattern ACCENTED = Pattern.compile("[^\\s,;\"]*[^\\p{ASCII}][^\\s,;\"]*");
  private static final String CURRENCY = "(?:\\p{Sc}|[A-Z]{3})";
  private static final Pattern MONEY =
      Pattern.compile(
          "^([-−+]?)\\s*(?:%1$s\\s*)?([-−+]?\\d[\\d.,' ]*)(?:\\s*%1$s)?(?:\\s*(?:/|per )\\s*(?i:ea|each|pc|ft|m))?$"
              .formatted(CURRENCY));

  /** The signs that one currency has alone. */
  private static final Map<String, String> SIGNS =
      Map.of("€", "EUR", "£", "GBP", "₹", "INR", "₩", "KRW", "₪", "ILS", "₺", "TRY");

  private static final Pattern CURRENCY_NAMED = Pattern.compile("[A-Z]{3}|[€£₹₩₪₺]");
  private static final Charset OLDER = Charset.forName("windows-1252");

  private final List<Line> lines;
  private final char delimiter;
  private final List<String> notes;
  private final Optional<DecimalSign> said;
  private final Map<Integer, Set<DecimalSign>> shown = new HashMap<>();

  /**
   * A line that is not blank.
   *
   * @param number its number in the file, counted from 1
   */
  public record Line(int number, List<String> cells) {
    public Line {
      cells = List.copyOf(cells);
    }

    /** Returns a cell; empty where the line is shorter. */
    public String cell(int position) {
      return position < cells.size() ? cells.get(position) : "";
    }
  }

  /** The text is no list; the message is one sentence that names the line. */
  public static final class Problem extends Exception {
    private static final long serialVersionUID = 1;

    Problem(String sentence) {
      super(sentence);
    }
  }

  private ListText(
      List<Line> lines, char delimiter, List<String> notes, Optional<DecimalSign> said) {
    this.lines = List.copyOf(lines);
    this.delimiter = delimiter;
    this.notes = List.copyOf(notes);
    this.said = said;
  }

  /** Returns lines that are in cells already, such as those of a workbook. */
  public static ListText ofCells(List<List<String>> cells) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      add(lines, i + 1, cells.get(i));
    }
    return new ListText(lines, '\0', List.of(), Optional.empty());
  }

  /**
   * Reads a file.
   *
   * @throws Problem when it cannot be read, is too large, or is no list
   */
  public static ListText of(Path file) throws Problem {
    try {
      if (!Files.isRegularFile(file)) {
        throw new Problem(
            (Files.exists(file) ? "%s is no ordinary file." : "There is no file %s.")
                .formatted(file));
      }
      if (Files.size(file) > LARGEST) {
        throw new Problem(
            "%s has %s MB; lists up to %s MB are read."
                .formatted(file, Files.size(file) >> 20, LARGEST >> 20));
      }
      return of(Files.readAllBytes(file), file.toString());
    } catch (IOException problem) {
      throw new Problem("%s cannot be read.".formatted(file));
    }
  }

  /**
   * Reads the content of a file.
   *
   * @param name what to call it in a complaint
   * @throws Problem when it is no list: its letters are in no known encoding, or a quotation mark
   *     is not closed
   */
  public static ListText of(byte[] content, String name) throws Problem {
    List<String> notes = new ArrayList<>();
    return of(decoded(content, name, notes), name, notes);
  }

  /** Reads text, as {@link #of(byte[], String)} reads a file. */
  public static ListText of(String text, String name) throws Problem {
    return of(text.startsWith("\uFEFF") ? text.substring(1) : text, name, List.of());
  }

  private static ListText of(String text, String name, List<String> notes) throws Problem {
    if (text.indexOf('\0') >= 0) {
      throw new Problem("%s is not a list of text; save it as CSV.".formatted(name));
    }
    Optional<Character> named = namedDelimiter(text);
    String list = named.isPresent() ? text.substring(text.indexOf('\n') + 1) : text;
    char delimiter = named.orElse(delimiter(list));
    int above = named.isPresent() ? 1 : 0;
    quotes(list, delimiter, above, name);
    return new ListText(lines(list, delimiter, above), delimiter, notes, Optional.empty());
  }

  private static String decoded(byte[] content, String name, List<String> notes) throws Problem {
    if (starts(content, 0xEF, 0xBB, 0xBF)) {
      return strictly(content, 3, StandardCharsets.UTF_8, name);
    }
    if (starts(content, 0xFF, 0xFE)) {
      return strictly(content, 2, StandardCharsets.UTF_16LE, name);
    }
    if (starts(content, 0xFE, 0xFF)) {
      return strictly(content, 2, StandardCharsets.UTF_16BE, name);
    }
    try {
      return decoder(content, 0, StandardCharsets.UTF_8);
    } catch (CharacterCodingException older) {
      String text = strictly(content, 0, OLDER, name);
      notes.add(
          "The list is in an older encoding of letters; look at what was read of %s."
              .formatted(accents(text)));
      return text;
    }
  }

  /** The first words that would be others if the encoding were another, with their lines. */
  private static String accents(String text) {
    List<String> found = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      Matcher word = ACCENTED.matcher(line);
      if (word.find()) {
        found.add("“%s” in line %s".formatted(word.group(), number));
      }
    }
    List<String> first = found.subList(0, Math.min(LINES_NAMED, found.size()));
    int more = found.size() - first.size();
    return String.join(", ", first) + (more == 0 ? "" : " and in %s more lines".formatted(more));
  }

  /** Decodes all or nothing: a letter that is none in an encoding must not become another. */
  private static String strictly(byte[] content, int from, Charset charset, String name)
      throws Problem {
    try {
      return decoder(content, from, charset);
    } catch (CharacterCodingException problem) {
      throw new Problem(
          "%s has letters in an encoding that is not known here, first in line %s; save it as CSV in UTF-8."
              .formatted(name, badLine(content, from, charset)));
    }
  }

  private static String decoder(byte[] content, int from, Charset charset)
      throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(content, from, content.length - from))
        .toString();
  }

  private static int badLine(byte[] content, int from, Charset charset) {
    String text =
        charset.equals(OLDER)
            ? new String(content, from, content.length - from, StandardCharsets.ISO_8859_1)
            : new String(content, from, content.length - from, charset);
    int at = 0;
    while (at < text.length() && !bad(text.charAt(at), charset)) {
      at++;
    }
    return 1 + (int) text.substring(0, at).chars().filter(sign -> sign == '\n').count();
  }

  private static boolean bad(char sign, Charset charset) {
    return charset.equals(OLDER)
        ? "\u0081\u008d\u008f\u0090\u009d".indexOf(sign) >= 0
        : sign == '\uFFFD';
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
  private static Optional<Character> namedDelimiter(String text) {
    return text.startsWith("sep=") && text.length() > 5 && "\r\n".indexOf(text.charAt(5)) >= 0
        ? Optional.of(text.charAt(4))
        : Optional.empty();
  }

  /** The one that parts the first lines into most cells, else the one that most of them have. */
  private static char delimiter(String text) {
    List<String> first =
        text.lines().filter(line -> !line.isBlank()).limit(LINES_LOOKED_AT).toList();
    char best = ',';
    long most = 0;
    for (long least : new long[] {1, 0}) {
      for (char each : new char[] {';', '\t', ','}) {
        long fewest = first.stream().mapToLong(line -> count(line, each)).min().orElse(0);
        long having = first.stream().filter(line -> count(line, each) > 0).count();
        long speaks = least == 1 ? fewest : having;
        if (speaks > most) {
          most = speaks;
          best = each;
        }
      }
      if (most > 0) {
        break;
      }
    }
    return best;
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

  /** Refuses a cell that a quotation mark opens and none closes: it would swallow what follows. */
  private static void quotes(String text, char delimiter, int above, String name) throws Problem {
    int line = above + 1;
    int opened = 0;
    boolean start = true;
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      line += sign == '\n' ? 1 : 0;
      if (opened == 0) {
        opened = start && sign == '"' ? line : 0;
        start = sign == delimiter || sign == '\n' || sign == '\r';
      } else if (sign == '"') {
        char next = i + 1 < text.length() ? text.charAt(i + 1) : '\n';
        if (next == '"') {
          i++;
        } else if (next == delimiter || next == '\n' || next == '\r') {
          opened = 0;
        } else {
          throw open(name, opened);
        }
      }
    }
    if (opened > 0) {
      throw open(name, opened);
    }
  }

  private static Problem open(String name, int line) {
    return new Problem(
        "%s has a quotation mark in line %s that is not closed; close it, or write two where one is meant."
            .formatted(name, line));
  }

  private static List<Line> lines(String text, char delimiter, int above) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    List<Line> lines = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord record : parser) {
        long breaks = String.join("", record.toList()).lines().count();
        long ends = parser.getCurrentLineNumber();
        add(lines, (int) (ends - Math.max(0, breaks - 1)) + above, record.toList());
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return lines;
  }

  private static void add(List<Line> lines, int number, List<String> cells) {
    if (!cells.stream().allMatch(String::isBlank)) {
      lines.add(new Line(number, cells));
    }
  }

  /** Returns the lines that are not blank. */
  public List<Line> lines() {
    return lines;
  }

  /** Returns what the reader should know, each a sentence. */
  public List<String> notes() {
    return notes;
  }

  /** Returns the same list, with the decimal sign a person says it has. */
  public ListText with(Optional<DecimalSign> sign) {
    return new ListText(lines, delimiter, notes, sign);
  }

  /**
   * Returns the same list, with amounts of money as plain numbers: without a currency before or
   * behind them, and without “each” or a length they are for.
   */
  public ListText withoutCurrency() {
    List<Line> plain = new ArrayList<>();
    for (Line line : lines) {
      plain.add(
          new Line(line.number(), line.cells().stream().map(ListText::withoutCurrency).toList()));
    }
    return new ListText(plain, delimiter, notes, said);
  }

  /** Returns an amount of money as a plain number; all else as it stands. */
  public static String withoutCurrency(String cell) {
    return MONEY.matcher(cell.strip()).replaceFirst("$1$2");
  }

  /**
   * Returns the code of the currency an amount of money names; none where it names none, or by a
   * sign that several currencies have.
   */
  public static Optional<String> currency(String cell) {
    Matcher named = CURRENCY_NAMED.matcher(cell);
    return MONEY.matcher(cell.strip()).matches() && named.find()
        ? Optional.of(SIGNS.getOrDefault(named.group(), named.group()))
        : Optional.empty();
  }

  /** Returns the decimal sign a person said the list has. */
  public Optional<DecimalSign> said() {
    return said;
  }

  /**
   * Reads a number of a list for a column. The sign is the one a person said, else the one the
   * column of the list shows, else the one its other numbers show; a number that could be read with
   * either is not taken.
   *
   * @param position where it stands in the list
   * @param numbers the positions of all numbers of the list
   * @param unit what a plain number counts, as a person writes it; may be empty
   */
  public Entry read(
      Column column,
      String cell,
      int position,
      Collection<Integer> numbers,
      String unit,
      UnitSystem system) {
    Optional<DecimalSign> sign = column.kind().onCalendar() ? said : sign(position, numbers);
    if (sign.isEmpty() && DecimalSign.twoWays(cell) && !parted(cell, position)) {
      return new Entry.Unreadable(
          cell.strip(), DecimalSign.twoWaysIn(cell) + ": no number of the list tells which");
    }
    String plain = sign.or(() -> parting(cell)).map(each -> each.plain(cell)).orElse(cell).strip();
    boolean bare = !unit.isEmpty() && plain.matches("[-−]?[\\d.,]+");
    return Entries.read(column, bare ? plain + " " + unit : plain, system);
  }

  /** Where commas part the cells, a number that is not mixed with others has a point. */
  private boolean parted(String cell, int position) {
    return delimiter == ',' && cell.indexOf('.') >= 0 && shownIn(position).size() < 2;
  }

  private Optional<DecimalSign> parting(String cell) {
    return delimiter == ',' && cell.indexOf('.') >= 0
        ? Optional.of(DecimalSign.POINT)
        : Optional.empty();
  }

  private Optional<DecimalSign> sign(int position, Collection<Integer> numbers) {
    if (said.isPresent()) {
      return said;
    }
    Set<DecimalSign> signs = shownIn(position);
    if (signs.isEmpty()) {
      signs = EnumSet.noneOf(DecimalSign.class);
      for (int other : numbers) {
        signs.addAll(shownIn(other));
      }
    }
    return signs.size() == 1 ? signs.stream().findFirst() : Optional.empty();
  }

  /** Returns the decimal signs that a column of the list shows beyond doubt. */
  public Set<DecimalSign> shownIn(int position) {
    return shown.computeIfAbsent(
        position,
        any -> DecimalSign.shownIn(lines.stream().map(line -> line.cell(position)).toList()));
  }
}
