package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.handover.MeasurePages;
import zonewright.sheet.Book;
import zonewright.sheet.CsvText;
import zonewright.sheet.Nearest;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;
import zonewright.uncertainty.CellSpan;
import zonewright.uncertainty.HowSure;
import zonewright.uncertainty.SureWords;
import zonewright.workbook.Progress;

/** Says how sure the answers of a design are, and what is worth measuring. */
@Command(
    name = "sure",
    header = "Say how sure the answers of a design are, and what to measure first.",
    description = {
      "",
      "Inputs are often read in a table or estimated. Over their ranges, published or typed on the sheet"
          + " Ranges, it prints what each answer of the zones and of the site lies between, and which"
          + " measurement would narrow that most. The design itself stays as it is.",
      "Ranges are typed by the command set, as \"Intake rate of 7=0.2 to 0.5 in/h\".",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright sure garden.xlsx",
      "  zonewright sure garden.xlsx --zone 7",
      "  zonewright sure garden.xlsx --of \"Longest cycle of 7\"",
      "  zonewright sure garden.xlsx --pdf measure-first.pdf",
      "  zonewright set garden.xlsx --from garden.xlsx --replace \"Intake rate of 7=0.2 to 0.5 in/h\""
    })
final class SureCommand extends Task {
  @Mixin private DesignSource source;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "The design file, an .xlsx workbook; without one, the demo garden.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--zone", paramLabel = "NAME", description = "Say all there is of one zone.")
  private Optional<String> zone = Optional.empty();

  @Option(
      names = "--of",
      paramLabel = "CELL",
      description =
          "Say how one number comes about and what it lies between, as \"Longest cycle of 7\".")
  private Optional<String> cell = Optional.empty();

  @Option(names = "--ranges", description = "List the ranges that count, each with who says so.")
  private boolean ranges;

  @Mixin private PdfOption pdf;

  @Override
  public Integer call() {
    Design design = source.design(file, err());
    if (design.book().rows(Sheets.ZONES) == 0) {
      throw new Complaint(
          ExitCode.FOUND, "There is nothing to be sure of: the design has no zones.");
    }
    boolean page = pdf.asked();
    Optional<CellSpan> one = cell.map(named -> asked(design.book(), named));
    Progress progress = SlowWork.telling("Trying designs", err());
    HowSure sure =
        HowSure.of(
            design.book().snapshot(),
            one.stream().map(CellSpan::column).collect(Collectors.toSet()),
            () -> false,
            done -> progress.at((long) (1000 * done), 1000));
    SureWords words = new SureWords(sure);
    if (page) {
      out().println(pdf.write(() -> MeasurePages.of(sure)));
    } else if (one.isPresent()) {
      out().print(design.book().working(one.get().column().reference(), one.get().row()).asText());
      out().println("  " + words.cell(one.get()));
    } else if (ranges) {
      words.ranges().stream().map(CsvText::harmless).forEach(out()::println);
    } else if (zone.isPresent()) {
      words.zone(named(sure, zone.get())).forEach(out()::println);
    } else {
      print(sure, words);
    }
    return ExitCode.FINE;
  }

  private static CellSpan asked(Book book, String named) {
    Place place = Asked.cell(book, List.of(named.strip().split("\\s+", -1)));
    return CellSpan.any(book, place)
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "%s is no calculated number of a zone, nor one of the site whose span is found."
                        .formatted(book.cellName(place.column(), place.row()).inWords())));
  }

  private static int named(HowSure sure, String name) {
    List<String> names = sure.zones().stream().map(sure::name).toList();
    return sure.zones().stream()
        .filter(row -> sure.name(row).equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Complaint(
                    ExitCode.USAGE,
                    "There is no zone “%s”; did you mean “%s”?"
                        .formatted(name, Nearest.to(name, names, 1).get(0))));
  }

  private void print(HowSure sure, SureWords words) {
    PrintWriter out = out();
    TextTable zones = new TextTable();
    words.headings().forEach(heading -> zones.column(heading, !heading.equals("Zone")));
    sure.zones().forEach(row -> zones.row(words.row(row).stream().map(CsvText::harmless).toList()));
    zones.lines().forEach(out::println);
    out.println();
    out.println(words.mark());
    out.println();
    words.site().forEach(out::println);
    out.println();
    if (sure.measurements().isEmpty()) {
      out.println("Nothing to measure: no range moves water or cycles.");
    } else {
      TextTable table = new TextTable();
      SureWords.measurementHeadings()
          .forEach(heading -> table.column(heading, !heading.equals("Measurement")));
      sure.measurements().forEach(worth -> table.row(words.row(worth)));
      table.lines().forEach(out::println);
    }
    if (!words.takenAsSure().isEmpty()) {
      out.println();
      out.println(words.takenAsSure());
    }
  }
}
