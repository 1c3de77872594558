package zonewright.desk.handover;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import zonewright.design.Design;
import zonewright.design.NightsCalendar;
import zonewright.desk.file.Shelf;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Refused;
import zonewright.desk.task.Sentences;
import zonewright.handover.HandoverPages;
import zonewright.handover.MeasurePages;
import zonewright.handover.Proposal;
import zonewright.handover.ProposalPages;
import zonewright.nights.NightsPlan;
import zonewright.sheet.BookSnapshot;
import zonewright.trade.Sheets;
import zonewright.uncertainty.HowSure;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/**
 * Writes copies of the design to hand over; the design on the desk and its file stay as they are.
 */
public final class HandOver {
  private final OpenDesign open;
  private final Shelf shelf;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;
  private final Supplier<Optional<String>> zone;

  /**
   * Prepares.
   *
   * @param zone the name of the zone whose derivation is shown
   */
  public HandOver(
      OpenDesign open,
      Shelf shelf,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages,
      Supplier<Optional<String>> zone) {
    this.open = open;
    this.shelf = shelf;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
    this.zone = zone;
  }

  /** Writes the whole pack. */
  public void whole() {
    write("pack", PackOrder.of(PackSheets.all()), open.kept());
  }

  /** Writes what is meant for a client; where there is no proposal yet, only if told to. */
  public void forClient() {
    PackOrder order = PackOrder.forClient();
    Runnable without = () -> write("client", order.withoutProposal(), Optional.empty());
    order
        .refused(open.design())
        .ifPresentOrElse(
            why ->
                messages.offer(
                    why, true, new MessageBar.Offer("Copy without the proposal …", without)),
            () -> write("client", order, Optional.empty()));
  }

  /** Asks which sheets, and writes those. */
  public void chosen() {
    questions
        .sheetsToHandOver(PackSheets.all())
        .ifPresent(sheets -> write("sheets", PackOrder.of(PackSheets.chosen(sheets)), open.kept()));
  }

  /** Writes the pages to print: program cards, facts for the controller, the list of the day. */
  public void pages() {
    write("handover", HandoverPages::of);
  }

  /** Writes the proposal as pages to send; says why where there is none yet. */
  public void proposal() {
    Optional<String> lacks = Proposal.lacking(open.book());
    if (lacks.isPresent()) {
      messages.problem(lacks.get(), List.of());
      return;
    }
    write("proposal", ProposalPages::of);
  }

  /** Writes the pages to print with what is keyed in, a program each. */
  public void cards() {
    write("cards", HandoverPages::cardsOf);
  }

  /** Writes the page on what to do after the first weeks. */
  public void firstWeeks() {
    write("first-weeks", HandoverPages::firstWeeksOf);
  }

  /** Asks where to, and writes what to measure first. */
  public void measurements(HowSure sure) {
    pages("measure-first", () -> MeasurePages.of(sure));
  }

  /** Asks where to, and writes pages that rest on no design. */
  public void pages(String word, Supplier<byte[]> pages) {
    questions
        .pagesToSave(suggestion(word, ".pdf"))
        .ifPresent(file -> written(file, () -> Files.write(file, pages.get())));
  }

  private void write(String word, Function<Design, byte[]> pages) {
    if (open.book().rows(Sheets.ZONES) == 0) {
      messages.problem("There is nothing to hand over: the design has no zones.", List.of());
      return;
    }
    Optional<Path> target = questions.pagesToSave(suggestion(word, ".pdf"));
    var snapshot = open.book().snapshot();
    target.ifPresent(
        file -> written(file, () -> Files.write(file, pages.apply(Design.of(snapshot)))));
  }

  /** Writes the nights as a calendar file, for whoever keeps the garden. */
  public void calendar() {
    Design now = open.design();
    if (now.nights().asked().isEmpty()) {
      messages.problem(NightsCalendar.whyNone(now), List.of());
      return;
    }
    Optional<Path> target = questions.calendarToSave(suggestion("nights", ".ics"));
    BookSnapshot snapshot = open.book().snapshot();
    Optional<NightsPlan> known = now.nights().known();
    target.ifPresent(file -> written(file, () -> writeCalendar(snapshot, known, file)));
  }

  private static Path writeCalendar(BookSnapshot snapshot, Optional<NightsPlan> known, Path file)
      throws IOException, Refused {
    Design design = Design.of(snapshot);
    known.ifPresent(design.nights()::learn);
    NightsPlan plan =
        design.nights().plan().orElseThrow(() -> new Refused(NightsCalendar.whyNone(design), null));
    String text =
        NightsCalendar.text(design, plan, Clock.system(ZoneId.systemDefault()))
            .orElseThrow(() -> new Refused(NightsCalendar.WITHOUT_FIRST_NIGHT, null));
    return Files.writeString(file, text);
  }

  private void written(Path file, Callable<Path> writing) {
    String name = file.getFileName().toString();
    tasks.run(
        "Writing " + name + " …",
        writing,
        done -> messages.wrote("“" + name + "” was written.", file, List.of()),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not written", problem), List.of()));
  }

  private void write(String word, PackOrder order, Optional<KeptFile> kept) {
    Optional<Path> target = questions.fileToSave(suggestion(word, ".xlsx"));
    if (target.isEmpty()) {
      return;
    }
    Path file = target.get();
    if (open.file().map(file::equals).orElse(false)) {
      messages.problem(
          "That is the file of the design itself; write what you hand over under another name.",
          List.of());
      return;
    }
    BookSnapshot snapshot = open.book().snapshot();
    var known = open.design().nights().known();
    Optional<String> derived = zone.get();
    String name = file.getFileName().toString();
    tasks.runStoppable(
        "Writing " + name + " …",
        progress -> {
          Design design = Design.of(snapshot);
          known.ifPresent(design.nights()::learn);
          design.nights().plan();
          List<String> left =
              new ArrayList<>(
                  shelf.handOver(design, file, order.deriving(derived), kept, progress).notes());
          order
              .sheets()
              .forEach(
                  sheet ->
                      sheet
                          .lacks(design)
                          .ifPresent(why -> left.add("Without " + sheet.title() + ": " + why)));
          return left;
        },
        left -> messages.wrote("“" + name + "” was written.", file, left),
        problem -> {
          if (problem instanceof Progress.BrokenOff) {
            messages.tell("“" + name + "” was not written.", List.of());
          } else {
            messages.problem(Sentences.of("“" + name + "” was not written", problem), List.of());
          }
        });
  }

  private Path suggestion(String word, String ending) {
    Path design = open.file().orElse(Path.of("garden.xlsx"));
    String name = design.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return design.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-" + word + ending);
  }
}
