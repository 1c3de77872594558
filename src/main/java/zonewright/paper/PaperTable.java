package zonewright.paper;

import java.util.ArrayList;
import java.util.List;

/** A table to print: what its columns are, and its rows of words. */
public final class PaperTable {
  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * A column.
   *
   * @param weight its part of the width, beside the weights of the others
   * @param number whether its words stand to the right, as numbers do
   * @param strong whether its words are the ones to read from afar
   */
  record Column(String heading, float weight, boolean number, boolean strong) {}

  /** Adds a column of words. */
  public PaperTable words(String heading, double weight) {
    columns.add(new Column(heading, (float) weight, false, false));
    return this;
  }

  /** Adds a column of words to read from afar. */
  public PaperTable strong(String heading, double weight) {
    columns.add(new Column(heading, (float) weight, false, true));
    return this;
  }

  /** Adds a column of numbers. */
  public PaperTable number(String heading, double weight) {
    columns.add(new Column(heading, (float) weight, true, false));
    return this;
  }

  /** Adds a column of numbers to read from afar. */
  public PaperTable strongNumber(String heading, double weight) {
    columns.add(new Column(heading, (float) weight, true, true));
    return this;
  }

  /**
   * Adds a row.
   *
   * @param cells one for each column
   */
  public PaperTable row(List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(
          "a row has %s cells, not %s".formatted(columns.size(), cells.size()));
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  List<Column> columns() {
    return columns;
  }

  List<List<String>> rows() {
    return rows;
  }
}
