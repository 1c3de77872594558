package zonewright.formula;

import java.util.function.Supplier;

/**
 * A piece of a formula as text, with how tightly it binds: 1 sums, 2 products, 9 a name, a number
 * or a call.
 *
 * <p>The right side keeps its brackets even at equal rank, so that whoever reads the text
 * calculates in the same order.
 *
 * <p>The words are put together only when somebody reads them: of the many cells that are explained
 * to learn why they have no number, nobody reads the working.
 */
public final class Text {
  public static final int CLOSED = 9;

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

  /** Returns the words. */
  public String words() {
    return source.get();
  }

  /** Returns how tightly it binds. */
  public int rank() {
    return rank;
  }

  public String onLeft(int outer) {
    return rank >= outer ? words() : "(" + words() + ")";
  }

  public String onRight(int outer) {
    return rank > outer ? words() : "(" + words() + ")";
  }

  public static Text joined(Text left, String sign, Text right, int rank) {
    return new Text(() -> left.onLeft(rank) + sign + right.onRight(rank), rank);
  }
}
