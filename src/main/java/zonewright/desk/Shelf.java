package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import zonewright.design.Design;

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

  /** Keeps a design; the exception's message is a sentence for a person. */
  void put(Design design, Path file) throws Exception;

  /** Reads a design; the exception's message is a sentence for a person. */
  Taken take(Path file) throws Exception;
}
