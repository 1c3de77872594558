package zonewright.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import zonewright.design.Design;
import zonewright.estimate.PriceBook;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.exchange.PriceLists;
import zonewright.sheet.Book;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.PriceFile;

/** Takes the price book out of a design, or puts one in. */
@Command(
    name = "prices",
    header = "Write the price book of a design as CSV or workbook, or read one into a design.",
    description = {
      "",
      "The price book is what is typed on the sheet Parts, a line an item. It is written to the"
          + " standard output as comma-separated text, or to the file named with --to.",
      "",
      "With --book a price book is read, one of your own or as a supplier sends it: a .csv file, a"
          + " workbook, or another design. An item is known by its SKU, else by its name; known items are"
          + " changed, others are added, and a blank cell changes nothing. What changes is printed item by"
          + " item; only with --into the design is written anew. Columns go by their name or another usual"
          + " one, and which is said; say for others with --match where they go, or with --leave that they"
          + " are left out. The decimal sign is the one the numbers show; where they show none, as 1,250 does,"
          + " say it with --decimal.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright prices --sample campus-retrofit > book.csv",
      "  zonewright prices --from garden.xlsx --to book.xlsx",
      "  zonewright prices --from garden.xlsx --book book.csv",
      "  zonewright prices --from garden.xlsx --book book.csv --into priced.xlsx --leave Weight"
    })
final class PricesCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Option(
      names = "--book",
      paramLabel = "FILE",
      description = "The price book to read, a .csv file or a workbook.")
  private Optional<Path> priceBook = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "PATH",
      description = "Where to write the price book; ends in .csv or .xlsx.")
  private Optional<Path> to = Optional.empty();

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Where to write the design with the price book in it; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Mixin private MatchOptions matching;

  @Override
  public Integer call() {
    if (into.isPresent() && priceBook.isEmpty()) {
      throw new Complaint(
          ExitCode.USAGE, "To read a price book, name it too: --book FILE beside --into PATH.");
    }
    if (priceBook.isPresent() && to.isPresent()) {
      throw new Complaint(
          ExitCode.USAGE, "Either write a price book with --to or read one with --into, not both.");
    }
    if (to.isPresent()) {
      return write(to.get());
    }
    return priceBook.isPresent() ? read(priceBook.get()) : print();
  }

  private Integer print() {
    out().print(new PriceBook(source.design(files.from(), err()).book()).text());
    return ExitCode.FINE;
  }

  private Integer read(Path file) {
    into.ifPresent(path -> DesignFiles.mayWrite(path, files.replace()));
    ListText text = list(file);
    Design design = source.design(files.from(), err());
    ListMatch.Taken taken = taken(design, file, text);
    taken.changes().forEach(out()::println);
    taken.notes().forEach(err()::println);
    if (into.isPresent()) {
      design.book().perform(taken.edit());
      DesignFiles.mayTake(design);
      DesignFiles.save(design, into.get(), source.kept(), err());
      out().println("Written: " + into.get());
    }
    return taken.notes().isEmpty() ? ExitCode.FINE : ExitCode.FOUND;
  }

  private ListMatch.Taken taken(Design design, Path file, ListText text) {
    try {
      ListMatch match =
          new ListMatch(design.book(), Sheets.PARTS, PriceLists.of(text, file.toString()));
      for (int position : match.guess()) {
        err()
            .println(
                "“%s” is taken for %s."
                    .formatted(
                        match.list().headings().get(position),
                        match.target(position).orElseThrow().name()));
      }
      matching.apply(match, err()::println);
      return match.taken();
    } catch (ListProblem problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
  }

  private Integer write(Path path) {
    String name = path.toString().toLowerCase(Locale.ROOT);
    if (!name.endsWith(".csv") && !PriceFile.isWorkbook(path)) {
      throw new Complaint(
          ExitCode.USAGE,
          "A price book's name ends in .csv or .xlsx; write for example " + path + ".csv.");
    }
    DesignFiles.mayReplace(path, files.replace());
    Book book = source.design(files.from(), err()).book();
    try {
      PriceFile.write(book, path);
    } catch (DesignFileException problem) {
      throw DesignFiles.complaint(problem);
    }
    out().println("Written: " + path);
    return ExitCode.FINE;
  }

  private static ListText list(Path file) {
    try {
      return PriceFile.isWorkbook(file) ? PriceFile.read(file) : ListText.of(file);
    } catch (DesignFileException problem) {
      throw DesignFiles.complaint(problem);
    } catch (ListText.Problem problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
  }
}
