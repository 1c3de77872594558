package zonewright.desk.list;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Sentences;
import zonewright.retrofit.ZoneCopy;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.trade.Sheets;
import zonewright.workbook.PriceFile;

/** What a person does about prices and retrofits beyond typing: price books and copies of zones. */
public final class PricingDesk {
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;

  public PricingDesk(
      OpenDesign open, BackgroundTasks tasks, Questions questions, MessageBar messages) {
    this.open = open;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
  }

  /** Takes the zones as they stand for the zones as found, in one edit. */
  public void takeAsFound() {
    copy(Sheets.ZONES, new ZoneCopy(open.book()).proposedToFound());
  }

  /** Makes the proposed zones of the zones as found, in one edit. */
  public void proposeAsFound() {
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

  /** Asks where to, and writes the sheet Parts as a price book. */
  public void writePrices() {
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
