package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import zonewright.design.Design;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Book;
import zonewright.sheet.ListText;
import zonewright.units.DecimalSign;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.PriceFile;

/** Takes the price book out of a design, or puts one in. */
@Command(
    name = "prices",
    header = "Write the price book of a design as CSV or workbook, or read one into a design.",
    description = {
      "",
      "The price book is what is typed on the sheet Parts, a line an item. It is written to the"
          + " standard output as comma-separated text, or to the file named with --to. With --into the"
          + " file in --book is read: items of a name that the design knows are changed, others are"
          + " added, and the design is written anew. A price book is a .csv file, a workbook with a"
          + " heading Item, or another design. Its decimal sign is the one its numbers show; where they show"
          + " none, as 1,250 does, say it with --decimal.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright prices --sample campus-retrofit > book.csv",
      "  zonewright prices --from garden.xlsx --to book.xlsx",
      "  zonewright prices --from garden.xlsx --book book.csv --into priced.xlsx"
    })
final class PricesCommand extends Task {
  @Mixin private DesignSource source;

  @Option(names = "--from", paramLabel = "FILE", description = "The design file to read first.")
  private Optional<Path> from = Optional.empty();

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

  @Option(
      names = "--decimal",
      paramLabel = "comma|point",
      converter = DecimalWord.class,
      description =
          "What stands before the decimals of the price book; by what it shows unless given.")
  private Optional<DecimalSign> decimal = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    if (priceBook.isPresent() != into.isPresent()) {
      throw new Complaint(
          ExitCode.USAGE, "To read a price book, name both: --book FILE and --into PATH.");
    }
    if (into.isPresent() && to.isPresent()) {
      throw new Complaint(
          ExitCode.USAGE, "Either write a price book with --to or read one with --into, not both.");
    }
    if (to.isPresent()) {
      return write(to.get());
    }
    PrintWriter err = err();
    if (into.isEmpty()) {
      out().print(new PriceBook(source.design(from, err).book()).text());
      return ExitCode.FINE;
    }
    DesignFiles.mayWrite(into.get(), replace);
    Path file = priceBook.orElseThrow();
    ListText list = list(file).with(decimal);
    list.notes().forEach(err::println);
    Design design = source.design(from, err);
    try {
      design.book().perform(new PriceBook(design.book()).edit(list));
    } catch (PriceBook.Unreadable problem) {
      throw new Complaint(ExitCode.FILE, file + ": " + problem.getMessage());
    }
    DesignFiles.mayTake(design);
    DesignFiles.save(design, into.get(), source.kept(), err());
    out().println("Written: " + into.get());
    return ExitCode.FINE;
  }

  private Integer write(Path path) {
    String name = path.toString().toLowerCase(Locale.ROOT);
    if (!name.endsWith(".csv") && !PriceFile.isWorkbook(path)) {
      throw new Complaint(
          ExitCode.USAGE,
          "A price book's name ends in .csv or .xlsx; write for example " + path + ".csv.");
    }
    DesignFiles.mayReplace(path, replace);
    Book book = source.design(from, err()).book();
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
