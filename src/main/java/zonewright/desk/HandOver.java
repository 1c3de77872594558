package zonewright.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

/**
 * Writes copies of the design to hand over; the design on the desk and its file stay as they are.
 */
final class HandOver {
  private final OpenDesign open;
  private final Shelf shelf;
  private final Errands errands;
  private final Questions questions;
  private final MessageBar messages;

  HandOver(
      OpenDesign open, Shelf shelf, Errands errands, Questions questions, MessageBar messages) {
    this.open = open;
    this.shelf = shelf;
    this.errands = errands;
    this.questions = questions;
    this.messages = messages;
  }

  /** Writes the whole pack. */
  void whole() {
    write("pack", PackSheets.all());
  }

  /** Writes the pack without the sheets for the designer's own office. */
  void forClient() {
    write("client", PackSheets.forClient());
  }

  /** Asks which sheets, and writes those. */
  void chosen() {
    questions
        .sheetsToHandOver(PackSheets.all())
        .ifPresent(sheets -> write("sheets", PackSheets.chosen(sheets)));
  }

  private void write(String word, List<PackSheet> sheets) {
    Optional<Path> target = questions.fileToSave(suggestion(word));
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
    var snapshot = open.book().snapshot();
    String name = file.getFileName().toString();
    errands.run(
        "Writing " + name + " …",
        () -> {
          Design design = Design.of(snapshot);
          shelf.handOver(design, file, sheets);
          List<String> left = new ArrayList<>();
          sheets.forEach(
              sheet ->
                  sheet
                      .lacks(design)
                      .ifPresent(why -> left.add("Without " + sheet.title() + ": " + why)));
          return left;
        },
        left -> messages.tell("“" + name + "” was written.", left),
        problem ->
            messages.problem(Sentences.of("“" + name + "” was not written", problem), List.of()));
  }

  private Path suggestion(String word) {
    Path design = open.file().orElse(Path.of("garden.xlsx"));
    String name = design.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return design.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-" + word + ".xlsx");
  }
}
