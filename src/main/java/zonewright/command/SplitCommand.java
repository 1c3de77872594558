package zonewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.design.EvenSplit;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;

/** Splits zones that draw too much, and writes the design. */
@Command(
    name = "split",
    header = "Split zones that draw too much over as many valves as they need.",
    description = {
      "",
      "Every zone that needs more than one valve for the available flow becomes that many zones, with"
          + " heads, area and plants shared out evenly. The design is written to PATH.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright split garden-split.xlsx --from garden.xlsx",
      "  zonewright split garden.xlsx --from garden.xlsx --replace"
    })
final class SplitCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(paramLabel = "PATH", description = "Where to write the workbook; ends in .xlsx.")
  private Path path;

  @Override
  public Integer call() {
    DesignFiles.mayWrite(path, files.replace());
    Design design = source.design(files.from(), err());
    Book book = design.book();
    List<String> before = names(book);
    EvenSplit.ofAll(book)
        .ifPresentOrElse(
            book::perform, () -> out().println("No zone is known to need more than one valve."));
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      String name = book.cellName(Facts.ZONE_NAME.reference(), row).row();
      if (!before.contains(name)) {
        out()
            .println(
                name
                    + ": "
                    + book.shown(
                        Emitters.ZONE_FLOW.reference(),
                        book.outcome(Emitters.ZONE_FLOW.reference(), row)));
      }
    }
    DesignFiles.save(design, path, source.kept(), err());
    out().println("Written: " + path);
    return ExitCode.FINE;
  }

  private static List<String> names(Book book) {
    List<String> names = new ArrayList<>();
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      names.add(book.cellName(Facts.ZONE_NAME.reference(), row).row());
    }
    return names;
  }
}
