package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.Synonyms;
import zonewright.exchange.ForeignList;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.trade.Sheets;
import zonewright.units.DecimalSign;

/** Takes somebody's list of zones into a design. */
@Command(
    name = "import",
    header = "Take a list of zones from a CSV file into a design.",
    description = {
      "",
      "The first line of the list names its columns, units in parentheses: Area (m²). Columns of the"
          + " same name are matched; say for each other one with --match where it goes, or with"
          + " --leave that it is left out. Commas, semicolons or tabs set the cells apart, and a"
          + " decimal comma is recognised by what the numbers show; where they show none, as 1,250 does,"
          + " say it with --decimal. The zones are added below those of the design.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright import list.csv garden.xlsx",
      "  zonewright import list.csv more.xlsx --from garden.xlsx --match \"Bed size (m²)=Area\" --leave Phone"
    })
final class ImportCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(index = "0", paramLabel = "LIST", description = "The list, a CSV file.")
  private Path list;

  @Parameters(
      index = "1",
      paramLabel = "PATH",
      description = "Where to write the design; ends in .xlsx.")
  private Path path;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "The design to add the zones to; an empty one unless given.")
  private Optional<Path> from = Optional.empty();

  @Option(
      names = "--match",
      paramLabel = "THEIRS=OURS",
      description = "Which column of the design a column of the list goes into; may be repeated.")
  private List<String> matches = new ArrayList<>();

  @Option(
      names = "--leave",
      paramLabel = "THEIRS",
      description = "A column of the list to leave out; may be repeated.")
  private List<String> left = new ArrayList<>();

  @Option(
      names = "--decimal",
      paramLabel = "comma|point",
      converter = DecimalWord.class,
      description = "What stands before the decimals of the list; by what it shows unless given.")
  private Optional<DecimalSign> decimal = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    DesignFiles.mayWrite(path, replace);
    ForeignList foreign;
    try {
      foreign = ForeignList.read(list);
    } catch (ListProblem problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
    Design design = source.designOrBlank(from, err());
    ListMatch match = new ListMatch(design.book(), Sheets.ZONES, foreign);
    match.decimals(decimal);
    matches.forEach(each -> match(design, match, foreign, each));
    List<Integer> leaving = left.stream().map(name -> position(match, foreign, name)).toList();
    leaving.forEach(match::leave);
    List<Integer> nowhere = new ArrayList<>(match.unmatched());
    nowhere.removeAll(leaving);
    if (!nowhere.isEmpty()) {
      throw new Complaint(ExitCode.USAGE, nowhere(match, foreign, nowhere));
    }
    ListMatch.Taken taken = match.taken();
    design.book().start(taken.edit());
    DesignFiles.mayTake(design);
    taken.notes().forEach(err()::println);
    DesignFiles.save(design, path, source.kept(), err());
    out()
        .println(
            "Written: %s, with %s %s of the list"
                .formatted(path, taken.rows(), taken.rows() == 1 ? "zone" : "zones"));
    return taken.notes().isEmpty() ? ExitCode.FINE : ExitCode.FOUND;
  }

  private static void match(Design design, ListMatch match, ForeignList foreign, String pair) {
    int equals = pair.lastIndexOf('=');
    if (equals < 0) {
      throw new Complaint(
          ExitCode.USAGE, "Write --match \"their column=our column\", not “%s”.".formatted(pair));
    }
    int position = position(match, foreign, pair.substring(0, equals));
    ColumnFinder.Found found =
        Synonyms.finder(design.book().schema(), Sheets.ZONES)
            .in(design.book().schema().table(Sheets.ZONES), pair.substring(equals + 1));
    if (found instanceof ColumnFinder.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    Column column = ((ColumnFinder.One) found).column();
    if (!column.takesEntries()) {
      throw new Complaint(
          ExitCode.USAGE,
          "%s is calculated; choose a column that is typed.".formatted(column.name()));
    }
    match.set(position, column);
  }

  private static int position(ListMatch match, ForeignList foreign, String heading) {
    return match
        .position(heading)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "The list has no column “%s”; it has %s."
                        .formatted(heading.strip(), String.join(", ", foreign.headings()))));
  }

  private static String nowhere(ListMatch match, ForeignList foreign, List<Integer> positions) {
    StringBuilder text = new StringBuilder();
    text.append("These columns of the list match none of the design; say where each goes:");
    for (int position : positions) {
      String heading = foreign.headings().get(position);
      text.append(System.lineSeparator())
          .append(
              "  --match \"%s=%s\"   or   --leave \"%s\""
                  .formatted(heading, match.suggestions(position).get(0).name(), heading));
    }
    return text.toString();
  }
}
