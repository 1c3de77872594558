package zonewright.testing;

/**
 * How often a test tries what takes long: a few times whenever the tests run, and in full with the
 * Maven profile {@code long}, which runs the tests tagged {@link #LONG} and nothing else.
 */
public final class Counts {
  /** The tag of a test that reads its count here. */
  public static final String LONG = "long";

  private static final boolean FULL = Boolean.getBoolean("zonewright.long");

  private Counts() {}

  /**
   * Returns the first count in an ordinary run and the second in a long one, or the one that the
   * property {@code zonewright.count} says.
   */
  public static int of(int ordinary, int full) {
    return Integer.getInteger("zonewright.count", FULL ? full : ordinary);
  }
}
