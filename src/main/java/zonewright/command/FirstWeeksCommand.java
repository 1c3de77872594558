package zonewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.fieldwork.FirstWeeks;
import zonewright.handover.HandoverPages;
import zonewright.sheet.CsvText;
import zonewright.trade.Sheets;

/** Prints what to do after the first weeks, or writes it as a page. */
@Command(
    name = "first-weeks",
    header =
        "Say what to do after the first weeks: the site's setting, single zones or the climate.",
    description = {
      "",
      "Prints what was seen of each zone since the last change, from the sheet Verdicts, and the"
          + " three choices there are; the one that what was seen comes to is marked, with its"
          + " reasons. Nothing is changed.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright first-weeks garden.xlsx",
      "  zonewright first-weeks garden.xlsx --pdf weeks.pdf"
    })
final class FirstWeeksCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--pdf",
      paramLabel = "PATH",
      description = "Write the page to print, with room for what is seen next.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    Design design = source.design(file, err());
    if (design.book().rows(Sheets.ZONES) == 0) {
      throw new Complaint(ExitCode.FOUND, "There is nothing to look at: the design has no zones.");
    }
    if (pdf.isPresent()) {
      write(design, pdf.get());
      out().println("Written: " + pdf.get());
    } else {
      print(FirstWeeks.of(design.book()));
    }
    return ExitCode.FINE;
  }

  private void write(Design design, Path path) {
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new Complaint(
          ExitCode.USAGE, "The page is written as PDF; end the path in .pdf: " + path);
    }
    if (!replace && Files.exists(path)) {
      throw new Complaint(
          ExitCode.FILE, path + " is there already; say --replace to write over it.");
    }
    try {
      Files.write(path, HandoverPages.firstWeeksOf(design));
    } catch (IOException problem) {
      throw new Complaint(
          ExitCode.FILE, "%s could not be written: %s".formatted(path, problem.getMessage()));
    }
  }

  private void print(FirstWeeks weeks) {
    PrintWriter out = out();
    TextTable table = new TextTable();
    table.column("Zone", false);
    table.column("Where", false);
    table.column("Tuning", true);
    table.column("Looked at", false);
    table.column("Seen", false);
    for (FirstWeeks.Zone zone : weeks.zones()) {
      table.row(
          List.of(
              CsvText.harmless(zone.name()),
              CsvText.harmless(zone.place()),
              zone.tuning(),
              zone.day(),
              zone.seen()));
    }
    table.lines().forEach(out::println);
    int number = 1;
    for (FirstWeeks.Choice choice : weeks.choices()) {
      out.println();
      out.println((choice.chosen() ? "> " : "  ") + number++ + ". " + choice.when() + ".");
      out.println("     " + choice.then());
    }
    out.println();
    weeks.now().forEach(out::println);
  }
}
