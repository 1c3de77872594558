package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.ListedValues;
import zonewright.design.NamedCell;
import zonewright.design.Synonyms;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.uncertainty.TypedRange;

/** Types values into a design. */
@Command(
    name = "set",
    header = "Type values into a design: what stands once for the job, or a list of months.",
    description = {
      "",
      "Each value is a column and what to type there, as \"Labour rate=62\", or a cell, as \"Area of"
          + " 7=900 ft2\"; a blank one empties the cell. A sheet with several rows takes as many values as it has rows, as the twelve of"
          + " \"Reference ET=1.2,1.7,…\", or one for all of them. A value that cannot be used is"
          + " refused, and then nothing is written.",
      "An input known only as a range is typed as \"Intake rate of 7=0.2 to 0.5 in/h\", or for all zones"
          + " as \"Area=± 5 %%\"; the number it holds stays. The command sure says what follows.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright set job.xlsx --from job.xlsx --replace \"Climate place=CIMIS zone 14\"",
      "  zonewright set job.xlsx --from job.xlsx --replace Client=\"M. Brook\" \"Labour rate=62\" Overhead=12",
      "  zonewright set job.xlsx --from job.xlsx --replace \"Intake rate of 7=0.2 to 0.5 in/h\""
    })
final class SetCommand extends Task {
  /** An input, an equals sign and two ends, or a part around what it holds. */
  private static final Pattern RANGE =
      Pattern.compile("[^=]+=(.*\\d.* to .*\\d.*|\\s*(±|\\+\\s*/?\\s*-).*)");

  @Mixin private DesignSource source;

  @Parameters(
      index = "0",
      paramLabel = "PATH",
      description = "Where to write the design; ends in .xlsx.")
  private Path path;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "NAME=VALUE",
      description = "What to type, each as \"Labour rate=62\"; the unit may be left out.")
  private List<String> values = List.of();

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "The design to type into; an empty one unless given.")
  private Optional<Path> from = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    DesignFiles.mayWrite(path, replace);
    Design design = source.designOrBlank(from, err());
    ColumnFinder finder = Synonyms.finder(design.book().schema(), Sheets.SITE);
    ColumnFinder inputs = Synonyms.finder(design.book().schema(), Sheets.ZONES);
    List<String> ranges = values.stream().filter(value -> isRange(inputs, value)).toList();
    ranges.forEach(range -> typeRange(design, range));
    List<String> others = new ArrayList<>();
    for (String value : values) {
      Optional<Place> cell = ranges.contains(value) ? Optional.empty() : cell(design.book(), value);
      cell.ifPresent(
          place -> typeInto(design, place, value.substring(value.indexOf('=') + 1).strip()));
      if (cell.isEmpty() && !ranges.contains(value)) {
        others.add(value);
      }
    }
    Map<Column, String> given = Asked.values(finder, others, true);
    given.forEach((column, text) -> type(design, column, text));
    DesignFiles.save(design, path, source.kept(), err());
    out().println("Written: " + path);
    return ExitCode.FINE;
  }

  /**
   * Returns the one cell of a sheet with many rows that a value is for, as {@code Area of 7=900}.
   */
  private static Optional<Place> cell(Book book, String value) {
    String name = value.split("=", 2)[0];
    int of = name.lastIndexOf(" of ");
    if (of < 0 || !(NamedCell.in(book, name.substring(0, of), "") instanceof NamedCell.OfAll)) {
      return Optional.empty();
    }
    NamedCell found = NamedCell.in(book, name);
    if (found instanceof NamedCell.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    return found instanceof NamedCell.OfRow cell
        ? Optional.of(new Place(cell.column().reference(), cell.row()))
        : Optional.empty();
  }

  /** Says whether a value is a range; words and dates may look like one. */
  private static boolean isRange(ColumnFinder finder, String value) {
    String column = value.split("=", 2)[0].split(" of ", 2)[0];
    return RANGE.matcher(value).matches()
        && finder.find(column) instanceof ColumnFinder.One one
        && one.column().content() == Column.Content.NUMBER;
  }

  /** Types what an input lies between, into one row or into all. */
  private static void typeRange(Design design, String value) {
    int equals = value.indexOf('=');
    List<String> named = List.of(value.substring(0, equals).strip().split("\\s+", -1));
    Book book = design.book();
    List<Place> places =
        named.contains("of")
            ? List.of(Asked.cell(book, named))
            : Asked.all(book, String.join(" ", named));
    for (Place place : places) {
      TypedRange range =
          TypedRange.at(book, place)
              .orElseThrow(() -> new Complaint(ExitCode.USAGE, TypedRange.refused(book, place)));
      TypedRange.Reading read = range.read(value.substring(equals + 1));
      if (read instanceof TypedRange.Refused refused) {
        throw new Complaint(ExitCode.USAGE, range.name() + ": " + refused.sentence());
      }
      book.perform(((TypedRange.Made) read).edit());
    }
  }

  private static void type(Design design, Column column, String text) {
    Book book = design.book();
    TableDefinition table = book.schema().table(column.reference().table());
    List<String> each = ListedValues.of(text, column, book.system());
    int rows = book.rows(table.id());
    if (rows == 0 || (each.size() > 1 && each.size() != rows)) {
      throw new Complaint(
          ExitCode.USAGE,
          "%s: the sheet %s has %s rows, and %s values are given."
              .formatted(column.name(), table.title(), rows, each.size()));
    }
    for (int row = 0; row < rows; row++) {
      String value = each.get(Math.min(row, each.size() - 1));
      typeInto(design, new Place(column.reference(), row), value);
    }
  }

  private static void typeInto(Design design, Place place, String value) {
    Book book = design.book();
    Column column = book.schema().column(place.column());
    if (!book.schema().table(place.column().table()).takesEntries(column)) {
      throw new Complaint(
          ExitCode.USAGE,
          "%s is calculated, and nothing can be typed there.".formatted(column.name()));
    }
    book.perform(design.edits().typed(place.column(), place.row(), value));
    if (book.outcome(place.column(), place.row()) instanceof Outcome.Refused refused) {
      throw new Complaint(ExitCode.USAGE, AnswerText.sentence(refused));
    }
  }
}
