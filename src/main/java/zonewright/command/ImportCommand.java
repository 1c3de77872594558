package zonewright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.ClimateFinding;
import zonewright.design.Design;
import zonewright.exchange.ForeignList;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.trade.Sheets;

/** Takes somebody's list of zones into a design. */
@Command(
    name = "import",
    header = "Take a list of zones, as proposed or as found, from a CSV file into a design.",
    description = {
      "",
      "The first line of the list names its columns, units in parentheses: Area (m²). Columns of the"
          + " same name are matched; say for each other one with --match where it goes, or with"
          + " --leave that it is left out. Commas, semicolons or tabs set the cells apart, and a"
          + " decimal comma is recognised by what the numbers show; where they show none, as 1,250 does,"
          + " say it with --decimal. The zones are added below those of the design; with --sheet Found"
          + " they are zones as they were found, whose list may have the minutes a week at present.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright import list.csv garden.xlsx",
      "  zonewright import list.csv more.xlsx --from garden.xlsx --match \"Bed size (m²)=Area\" --leave Phone",
      "  zonewright import walk.csv retrofit.xlsx --sheet Found"
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
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet to add them to: Zones unless given, or Found for zones as found.")
  private String sheet = "Zones";

  @Mixin private MatchOptions matching;

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
    String table = SheetNames.find(design.book().schema(), sheet).id();
    if (!List.of(Sheets.ZONES, Sheets.FOUND).contains(table)) {
      throw new Complaint(ExitCode.USAGE, "A list goes into the sheet Zones or Found, none else.");
    }
    ListMatch match = new ListMatch(design.book(), table, foreign);
    matching.apply(match, err()::println);
    ListMatch.Taken taken = match.taken();
    design.book().perform(taken.edit());
    DesignFiles.mayTake(design);
    taken.notes().forEach(err()::println);
    DesignFiles.save(design, path, source.kept(), err());
    out()
        .println(
            "Written: %s, with %s %s of the list"
                .formatted(path, taken.rows(), taken.rows() == 1 ? "zone" : "zones"));
    ClimateFinding.sentence(design.book()).ifPresent(out()::println);
    return taken.notes().isEmpty() ? ExitCode.FINE : ExitCode.FOUND;
  }
}
