package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Mixin private PdfOption pdf;

  @Override
  public Integer call() {
    Design design = source.design(file, err());
    if (design.book().rows(Sheets.ZONES) == 0) {
      throw new Complaint(ExitCode.FOUND, "There is nothing to look at: the design has no zones.");
    }
    if (pdf.asked()) {
      out().println(pdf.write(() -> HandoverPages.firstWeeksOf(design)));
    } else {
      print(FirstWeeks.of(design.book()));
    }
    return ExitCode.FINE;
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
