package zonewright.desk.handover;

import java.awt.Frame;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.PrinterJob;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import zonewright.design.Facts;
import zonewright.desk.grid.PrintedGrid;
import zonewright.desk.grid.SheetPages;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;

/** Prints the sheet at the front. */
public final class Printing {
  private final Frame owner;
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;

  public Printing(
      Frame owner,
      OpenDesign open,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages) {
    this.questions = questions;
    this.owner = owner;
    this.open = open;
    this.tasks = tasks;
    this.messages = messages;
  }

  /** Shows the pages of a sheet and prints them where the person wants that. */
  public void begin(PrintedGrid table) {
    UnitSystem system = open.book().system();
    PrintPreview.open(
        owner,
        table,
        choice ->
            new SheetPages(
                choice.table(), project(), paper(system, choice.across()), choice.scale()),
        new PrintPreview.Uses(
            pages -> print(table.title(), pages), pages -> save(table.title(), pages)));
  }

  /** Asks where to, and saves the pages as a file. */
  private void save(String title, SheetPages pages) {
    questions
        .pagesToSave(Path.of(title.toLowerCase(Locale.ROOT) + ".pdf"))
        .ifPresent(
            file ->
                tasks.run(
                    "Writing " + file.getFileName() + " …",
                    () -> Files.write(file, pages.file()),
                    written ->
                        messages.wrote(
                            "“" + file.getFileName() + "” was written.", written, List.of()),
                    problem ->
                        messages.problem(
                            "“%s” was not written: nothing can be written there."
                                .formatted(file.getFileName()),
                            List.of())));
  }

  private String project() {
    Entry project = open.book().entry(Facts.PROJECT_NAME.reference(), 0);
    return project instanceof Entry.Words words ? words.text() : open.name();
  }

  /** Returns the paper usual where these units are, with margins of half an inch. */
  private static PageFormat paper(UnitSystem system, boolean across) {
    PageFormat format = new PageFormat();
    Paper paper = format.getPaper();
    boolean letter = system == UnitSystem.US;
    double width = letter ? 612 : 595.3;
    double height = letter ? 792 : 841.9;
    paper.setSize(width, height);
    paper.setImageableArea(36, 36, width - 72, height - 72);
    format.setPaper(paper);
    format.setOrientation(across ? PageFormat.LANDSCAPE : PageFormat.PORTRAIT);
    return format;
  }

  private void print(String title, SheetPages pages) {
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(title);
    job.setPageable(pages);
    try {
      if (!job.printDialog()) {
        return;
      }
    } catch (RuntimeException noPrinter) {
      messages.problem(PrintPreview.problem(noPrinter), List.of());
      return;
    }
    tasks.runCancellable(
        "Printing " + title + " …",
        () -> {
          job.print();
          return title;
        },
        printed -> messages.tell(printed + " went to the printer.", List.of()),
        problem -> messages.problem(PrintPreview.problem(problem), List.of()),
        job::cancel);
  }
}
