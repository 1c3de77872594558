package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import zonewright.budget.ZoneBudget;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Nearest;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * What the program does without a command: opens the window, or does the main job where there is no
 * display.
 */
@Command(
    name = "zonewright",
    header = "Design landscape irrigation zone by zone: run times, cycle and soak, water budget.",
    description = {
      "",
      "Without a command it opens the window, on FILE or on the demo garden. Where there is no"
          + " display it prints the zones instead, and writes the demo garden as a workbook to"
          + " target/library-garden.xlsx.",
      ""
    },
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Each command has its own --help. Exit codes: 0 done; 1 done, and something in the design is"
          + " wrong or to be looked at; 2 the command or a value cannot be understood; 3 a file cannot"
          + " be read or written; 4 the program itself is at fault."
    })
final class StartCommand extends Task {
  private static final Path DEMO_FILE = Path.of("target", "library-garden.xlsx");

  private static final List<Column> SCHEDULE =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          Plants.PLANT,
          Emitters.AREA,
          Emitters.PRECIPITATION_RATE,
          Demand.WATERING_DAYS,
          Demand.RUN_TIME,
          CycleAndSoak.LONGEST_CYCLE,
          CycleAndSoak.CYCLES,
          CycleAndSoak.CYCLE_MINUTES,
          CycleAndSoak.SOAK,
          ZoneBudget.VOLUME_PER_WEEK);

  private final Window window;
  private final Terminal terminal;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "A design file, an .xlsx workbook.")
  private Optional<Path> file = Optional.empty();

  StartCommand(Window window, Terminal terminal) {
    this.window = window;
    this.terminal = terminal;
  }

  /** Returns the terminal of whichever command is given. */
  static Terminal terminal(CommandSpec command) {
    return ((StartCommand) command.root().userObject()).terminal;
  }

  @Override
  public Integer call() {
    file.ifPresent(this::check);
    if (!window.opened(file)) {
      withoutWindow();
    }
    return ExitCode.FINE;
  }

  private void check(Path path) {
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      List<String> commands = List.copyOf(spec.subcommands().keySet());
      throw new Complaint(
          ExitCode.USAGE,
          "“%s” is neither a command nor an .xlsx workbook; did you mean “%s”?"
              .formatted(path, Nearest.to(path.toString(), commands, 1).get(0)));
    }
  }

  private void withoutWindow() {
    PrintWriter out = out();
    PrintWriter err = err();
    Design design =
        file.map(path -> DesignFiles.existing(path, err, terminal).design())
            .orElseGet(() -> Demo.libraryGarden(UnitSystem.US));
    out.println(
        file.map(path -> "The zones of " + path)
            .orElse("The zones of the demo garden; its figures are invented"));
    out.println();
    new SheetListing(design.book(), Sheets.ZONES).lines(SCHEDULE).forEach(out::println);
    out.println();
    if (file.isEmpty()) {
      DesignFiles.writeInto(design, DEMO_FILE, err());
      out.println("Written: " + DEMO_FILE);
    }
    out.println("There is no display here; run the same on a desktop to open the window.");
  }
}
