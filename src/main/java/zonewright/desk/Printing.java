package zonewright.desk;

import java.awt.Frame;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.PrinterJob;
import java.util.List;
import zonewright.design.Facts;
import zonewright.desk.grid.PrintedGrid;
import zonewright.desk.grid.SheetPages;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;

/** Prints the sheet at the front. */
final class Printing {
  private final Frame owner;
  private final OpenDesign open;
  private final BackgroundTasks tasks;
  private final MessageBar messages;

  Printing(Frame owner, OpenDesign open, BackgroundTasks tasks, MessageBar messages) {
    this.owner = owner;
    this.open = open;
    this.tasks = tasks;
    this.messages = messages;
  }

  /** Shows the pages of a sheet and prints them where the person wants that. */
  void begin(PrintedGrid table) {
    SheetPages pages = new SheetPages(table, project(), across(open.book().system()));
    PrintPreview.open(owner, pages, table.title(), () -> print(table.title(), pages));
  }

  private String project() {
    Entry project = open.book().entry(Facts.PROJECT_NAME.reference(), 0);
    return project instanceof Entry.Words words ? words.text() : open.name();
  }

  /** Returns the paper usual where these units are, across, with margins of half an inch. */
  private static PageFormat across(UnitSystem system) {
    PageFormat format = new PageFormat();
    Paper paper = format.getPaper();
    boolean letter = system == UnitSystem.US;
    double width = letter ? 612 : 595.3;
    double height = letter ? 792 : 841.9;
    paper.setSize(width, height);
    paper.setImageableArea(36, 36, width - 72, height - 72);
    format.setPaper(paper);
    format.setOrientation(PageFormat.LANDSCAPE);
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
