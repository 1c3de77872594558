package zonewright.workbook;

/**
 * How far reading or writing has come; asked often, and from whatever thread does the work. It is
 * broken off by throwing {@link BrokenOff}.
 */
@FunctionalInterface
public interface Progress {
  /** Nobody watches. */
  Progress UNWATCHED = (done, of) -> {};

  /**
   * Takes note.
   *
   * @param done how much is done, from 0 to {@code of}
   * @param of how much there is to do, greater than 0, in no particular unit
   * @throws BrokenOff where a person wants no more of it
   */
  void at(long done, long of);

  /** Thrown by a watcher to end the work; nothing is left behind by it. */
  final class BrokenOff extends RuntimeException {
    /** Ends the work. */
    public BrokenOff() {
      super("broken off");
    }
  }
}
