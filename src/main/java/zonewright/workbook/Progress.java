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

  /**
   * Is told that all is written and is about to take the place of the file that stands there: the
   * last moment to see whether that is still the one a person means. What it throws ends the work.
   */
  default void replacing() {}

  /** Thrown by a watcher to end the work; nothing is left behind by it. */
  final class BrokenOff extends RuntimeException {
    /** Ends the work. */
    public BrokenOff() {
      super("broken off");
    }
  }
}
