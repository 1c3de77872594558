package zonewright.formula;

import java.util.function.Supplier;

/**
 * A piece of a formula as text, with how tightly it binds: 0 words such as “the larger of”, 1 sums,
 * 2 products, 3 powers, 9 a name, a number or a call.
 *
 * <p>The right side keeps its brackets even at equal rank, so that whoever reads the text
 * calculates in the same order.
 *
 * <p>The words are put together only when somebody reads them: of the many cells that are explained
 * to learn why they have no number, nobody reads the working.
 */
public final class Text {
  public static final int CLOSED = 9;

  private static final int AS_WRITTEN = -1;
  private static final int POWER = 3;

  private final Supplier<String> source;
  private final int rank;

  /** Makes a piece; the words are asked for each time they are read. */
  public Text(Supplier<String> source, int rank) {
    this.source = source;
    this.rank = rank;
  }

  /** Makes a piece of words that are there. */
  public Text(String words, int rank) {
    this(() -> words, rank);
  }

  /** Returns words that need no brackets anywhere. */
  public static Text closed(String words) {
    return closed(() -> words);
  }

  /** Returns words that need no brackets anywhere, asked for each time they are read. */
  public static Text closed(Supplier<String> words) {
    return new Text(words, CLOSED);
  }

  /**
   * Returns a number as written: one below zero binds as a sum does, one in powers of ten as a
   * product.
   */
  public static Text number(Supplier<String> words) {
    return new Text(words, AS_WRITTEN);
  }

  /** Returns the words. */
  public String words() {
    return source.get();
  }

  /** Returns how tightly it binds. */
  public int rank() {
    return rank == AS_WRITTEN ? rank(words()) : rank;
  }

  private static int rank(String number) {
    return number.startsWith("-") ? 1 : number.contains(" × 10") ? 2 : CLOSED;
  }

  /** Returns the words, in brackets where they bind less tightly than {@code outer}. */
  public String onLeft(int outer) {
    return rank() >= outer ? words() : "(" + words() + ")";
  }

  /** Returns the words, in brackets unless they bind more tightly than {@code outer}. */
  public String onRight(int outer) {
    return rank() > outer ? words() : "(" + words() + ")";
  }

  /** Returns the larger or the smaller of two. */
  static Text extreme(boolean largest, Text left, Text right) {
    return new Text(
        () ->
            "the %s of %s and %s"
                .formatted(largest ? "larger" : "smaller", left.onLeft(1), right.onLeft(1)),
        0);
  }

  /** Returns a power: what is raised and how often, in brackets unless they are closed. */
  static Text power(Text base, Text exponent) {
    return new Text(() -> base.onLeft(CLOSED) + " ^ " + exponent.onLeft(CLOSED), POWER);
  }

  public static Text joined(Text left, String sign, Text right, int rank) {
    return new Text(() -> left.onLeft(rank) + sign + right.onRight(rank), rank);
  }
}
