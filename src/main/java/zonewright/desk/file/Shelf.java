package zonewright.desk.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.desk.task.Refused;
import zonewright.workbook.DesignFile;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;
import zonewright.workbook.pack.PackOrder;

/** Where designs are kept; called away from the window's thread. */
public interface Shelf {
  /**
   * A design read.
   *
   * @param kept the file itself, for the next time it is kept
   * @param notes what the reader should know about the reading, each a sentence
   */
  record Taken(Design design, KeptFile kept, List<String> notes) {
    public Taken {
      notes = List.copyOf(notes);
    }
  }

  /** A file that a password, or another one, would open. */
  final class Protected extends Refused {
    Protected(String sentence, Throwable cause) {
      super(sentence, cause);
    }
  }

  /**
   * Keeps a design.
   *
   * @param kept the file it came from; what is a person's own in it stays
   */
  DesignFile.Written put(Design design, Path file, Optional<KeptFile> kept, Progress progress)
      throws Refused;

  /**
   * Writes a copy of a design with sheets to hand over beside it.
   *
   * @param kept the file it came from; none where nothing of a person's own is to go along
   */
  DesignFile.Written handOver(
      Design design, Path file, PackOrder order, Optional<KeptFile> kept, Progress progress)
      throws Refused;

  /**
   * Reads a design.
   *
   * @param password opens the file where it is protected
   */
  Taken take(Path file, Optional<String> password, Progress progress) throws Refused;
}
