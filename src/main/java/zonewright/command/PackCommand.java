package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.sheet.Nearest;
import zonewright.workbook.pack.Audience;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

/** Writes a design with the sheets that are handed over. */
@Command(
    name = "pack",
    header = "Write a design with all sheets to hand over, some of them, or a client's copy.",
    description = {
      "",
      "The workbook holds the design's own sheets with live formulas and, beside them, the sheets to"
          + " hand over: all of them, those named with --sheets, or with --client those for a client. A"
          + " client's copy is made afresh from what is meant for a client: the sheets that say how the"
          + " garden is watered, without notes, and the proposal as values. Prices, rebates, inspections"
          + " and sheets of your own are not in it. Where the proposal cannot be made, nothing is written;"
          + " name the sheets with --sheets to hand over the others.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright pack --list",
      "  zonewright pack garden-pack.xlsx --from garden.xlsx",
      "  zonewright pack garden-client.xlsx --from garden.xlsx --client",
      "  zonewright pack garden-cover.xlsx --from garden.xlsx --sheets cover"
    })
final class PackCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(
      arity = "0..1",
      paramLabel = "PATH",
      description = "Where to write the workbook; ends in .xlsx.")
  private Optional<Path> path = Optional.empty();

  @Option(
      names = "--sheets",
      paramLabel = "NAMES",
      description = "The sheets to hand over, names set apart by commas; all of them unless given.")
  private Optional<String> sheets = Optional.empty();

  @Option(names = "--client", description = "Write only what is meant for a client.")
  private boolean client;

  @Option(
      names = "--zone",
      paramLabel = "NAME",
      description = "The zone whose derivation is shown; the first unless given.")
  private Optional<String> zone = Optional.empty();

  @Option(names = "--list", description = "List the sheets there are, and write nothing.")
  private boolean list;

  @Override
  public Integer call() {
    if (list) {
      list();
      return ExitCode.FINE;
    }
    Path target =
        path.orElseThrow(
            () -> new Complaint(ExitCode.USAGE, "Say where to write the workbook: PATH."));
    DesignFiles.mayWrite(target, files.replace());
    List<PackSheet> wanted = wanted();
    PrintWriter err = err();
    Design design = source.design(files.from(), err);
    PackOrder order = new PackOrder(wanted, client, zone);
    order
        .refused(design)
        .ifPresent(
            why -> {
              throw new Complaint(ExitCode.FOUND, why);
            });
    for (PackSheet sheet : wanted) {
      sheet
          .lacks(design)
          .ifPresent(
              why -> {
                String sentence = "The sheet %s cannot be made. %s".formatted(sheet.title(), why);
                if (sheets.isPresent() && !sheet.standing()) {
                  throw new Complaint(ExitCode.FOUND, sentence);
                }
                err.println(sentence);
              });
    }
    if (order.zoneIn(design).isEmpty()) {
      throw new Complaint(
          ExitCode.USAGE, "There is no zone “%s” in the design.".formatted(zone.orElse("")));
    }
    design.nights().plan(); // so that the cover tells what is found of the nights too
    DesignFiles.write(design, target, order, client ? Optional.empty() : source.kept(), err());
    out().println("Written: " + target);
    return ExitCode.FINE;
  }

  private List<PackSheet> wanted() {
    List<PackSheet> wanted = sheets.map(PackCommand::named).orElse(PackSheets.all());
    if (!client) {
      return wanted;
    }
    for (PackSheet sheet : wanted) {
      if (sheets.isPresent() && sheet.audience() == Audience.OFFICE && !sheet.standing()) {
        throw new Complaint(
            ExitCode.USAGE,
            "The sheet %s is for your own office; leave it out of --sheets, or leave out --client."
                .formatted(sheet.title()));
      }
    }
    return wanted.stream().filter(PackSheets.forClient()::contains).toList();
  }

  private static List<PackSheet> named(String names) {
    List<PackSheet> named = new ArrayList<>();
    List<String> words = PackSheets.all().stream().map(PackSheet::word).toList();
    for (String name : names.split(",", -1)) {
      named.add(
          PackSheets.named(name)
              .orElseThrow(
                  () ->
                      new Complaint(
                          ExitCode.USAGE,
                          "There is no sheet “%s” to hand over; did you mean %s? --list lists them."
                              .formatted(name.strip(), Nearest.to(name, words, 1).get(0)))));
    }
    return PackSheets.chosen(named);
  }

  private void list() {
    TextTable table = new TextTable();
    table.column("Name", false);
    table.column("Sheet", false);
    table.column("For", false);
    table.column("What it is for", false);
    for (PackSheet sheet : PackSheets.all()) {
      table.row(
          List.of(
              sheet.word(),
              sheet.title(),
              sheet.audience() == Audience.CLIENT ? "client" : "office",
              sheet.about()));
    }
    table.lines().forEach(out()::println);
  }
}
