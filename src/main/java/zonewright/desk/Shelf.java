package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import zonewright.design.Design;
import zonewright.workbook.pack.PackSheet;

/** Where designs are kept; called away from the window's thread. */
interface Shelf {
  /**
   * A design read.
   *
   * @param notes what the reader should know about the reading, each a sentence
   */
  record Taken(Design design, List<String> notes) {
    public Taken {
      notes = List.copyOf(notes);
    }
  }

  /** A file could not be read or written; the message is one whole sentence for a person. */
  final class Refused extends Exception {
    Refused(String sentence, Throwable cause) {
      super(sentence, cause);
    }
  }

  /** Keeps a design. */
  void put(Design design, Path file) throws Refused;

  /** Writes a copy of a design with sheets to hand over beside it. */
  void handOver(Design design, Path file, List<PackSheet> sheets) throws Refused;

  /** Reads a design. */
  Taken take(Path file) throws Refused;
}
