package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.estimate.PriceBook;
import zonewright.retrofit.ZoneCopy;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.FileSize;
import zonewright.workbook.PriceFile;

/** What a person does about prices and retrofits beyond typing: price books and copies of zones. */
final class PricingDesk {
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;

  PricingDesk(OpenDesign open, BackgroundTasks tasks, Questions questions, MessageBar messages) {
    this.open = open;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
  }

  /** Takes the zones as they stand for the zones as found, in one edit. */
  void takeAsFound() {
    copy(Sheets.ZONES, new ZoneCopy(open.book()).proposedToFound());
  }

  /** Makes the proposed zones of the zones as found, in one edit. */
  void proposeAsFound() {
    copy(Sheets.FOUND, new ZoneCopy(open.book()).foundToProposed());
  }

  private void copy(String from, Edit edit) {
    Book book = open.book();
    if (book.rows(from) == 0) {
      String sheet = book.schema().table(from).title();
      messages.problem("The sheet " + sheet + " holds no zones to copy.", List.of());
      return;
    }
    book.perform(edit);
    messages.tell("The zones were copied; Undo takes it back.", List.of());
  }

  /** Asks for a price book and reads it into the sheet Parts. */
  void readPrices() {
    Optional<Path> file = questions.pricesToRead();
    if (file.isEmpty()) {
      return;
    }
    String name = file.get().getFileName().toString();
    tasks.run(
        "Reading " + name + " …",
        () -> reading(file.get()),
        reading -> takeOver(name, reading),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of()));
  }

  private static ListText reading(Path file) throws DesignFileException, ListText.Problem {
    return PriceFile.isWorkbook(file) ? PriceFile.read(file) : ListText.of(file);
  }

  private void takeOver(String name, ListText list) {
    try {
      Edit edit = new PriceBook(open.book()).edit(list);
      Optional<String> refused = FileSize.refused(open.book(), edit);
      if (refused.isPresent()) {
        messages.problem("“" + name + "” was not read. " + refused.get(), List.of());
        return;
      }
      open.book().perform(edit);
      messages.tell("The price book “" + name + "” was read; Undo takes it back.", list.notes());
    } catch (PriceBook.Unreadable problem) {
      messages.problem("“" + name + "” was not read. " + problem.getMessage(), List.of());
    }
  }

  /** Asks where to, and writes the sheet Parts as a price book. */
  void writePrices() {
    Optional<Path> file = questions.pricesToWrite("prices.csv");
    if (file.isEmpty()) {
      return;
    }
    String name = file.get().getFileName().toString();
    Book book = Design.of(open.book().snapshot()).book();
    tasks.run(
        "Writing " + name + " …",
        () -> {
          PriceFile.write(book, file.get());
          return name;
        },
        done -> messages.wrote("“" + name + "” was written.", file.get(), List.of()),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not written", problem), List.of()));
  }
}
