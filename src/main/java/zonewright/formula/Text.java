package zonewright.formula;

/**
 * A piece of a formula as text, with how tightly it binds: 1 sums, 2 products, 9 a name, a number
 * or a call.
 *
 * <p>The right side keeps its brackets even at equal rank, so that whoever reads the text
 * calculates in the same order.
 */
public record Text(String words, int rank) {
  public static final int CLOSED = 9;

  public static Text closed(String words) {
    return new Text(words, CLOSED);
  }

  public String onLeft(int outer) {
    return rank >= outer ? words : "(" + words + ")";
  }

  public String onRight(int outer) {
    return rank > outer ? words : "(" + words + ")";
  }

  public static Text joined(Text left, String sign, Text right, int rank) {
    return new Text(left.onLeft(rank) + sign + right.onRight(rank), rank);
  }
}
