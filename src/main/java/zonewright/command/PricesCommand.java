package zonewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import zonewright.design.Design;
import zonewright.estimate.PriceBook;

/** Takes the price book out of a design, or puts one in. */
@Command(
    name = "prices",
    header = "Write the price book of a design as CSV, or read one into a design.",
    description = {
      "",
      "The price book is the sheet Parts as comma-separated text, a line an item. Without --into it is"
          + " written to the standard output. With --into the text in --book is read: items of a name"
          + " that the design knows are changed, others are added, and the design is written anew.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright prices --sample campus-retrofit > book.csv",
      "  zonewright prices --from garden.xlsx > book.csv",
      "  zonewright prices --from garden.xlsx --book book.csv --into priced.xlsx"
    })
final class PricesCommand extends Task {
  @Mixin private DesignSource source;

  @Option(names = "--from", paramLabel = "FILE", description = "The design file to read first.")
  private Optional<Path> from = Optional.empty();

  @Option(names = "--book", paramLabel = "CSV", description = "The price book to read.")
  private Optional<Path> priceBook = Optional.empty();

  @Option(
      names = "--into",
      paramLabel = "PATH",
      description = "Where to write the design with the price book in it; ends in .xlsx.")
  private Optional<Path> into = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  @Override
  public Integer call() {
    if (priceBook.isPresent() != into.isPresent()) {
      throw new Complaint(
          ExitCode.USAGE, "To read a price book, name both: --book CSV and --into PATH.");
    }
    PrintWriter err = err();
    if (into.isEmpty()) {
      out().print(new PriceBook(source.design(from, err).book()).text());
      return ExitCode.FINE;
    }
    DesignFiles.mayWrite(into.get(), replace);
    String text = text(priceBook.orElseThrow());
    Design design = source.design(from, err);
    try {
      design.book().perform(new PriceBook(design.book()).edit(text));
    } catch (PriceBook.Unreadable problem) {
      throw new Complaint(ExitCode.FILE, priceBook.get() + ": " + problem.getMessage());
    }
    DesignFiles.write(design, into.get(), err());
    out().println("Written: " + into.get());
    return ExitCode.FINE;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (MalformedInputException problem) {
      throw new Complaint(ExitCode.FILE, file + " is not text in UTF-8; save it as CSV UTF-8.");
    } catch (IOException problem) {
      throw new Complaint(ExitCode.FILE, "The file " + file + " cannot be read.");
    }
  }
}
