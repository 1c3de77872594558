package zonewright.weather;

/** Told how far the reading of a file has come; throws to break it off. */
@FunctionalInterface
public interface HowFar {
  /** Nobody watches. */
  HowFar UNWATCHED = (done, of) -> {};

  /**
   * Takes note.
   *
   * @param done how much is done, from 0 to {@code of}
   * @param of how much there is to do, greater than 0
   */
  void at(long done, long of);
}
