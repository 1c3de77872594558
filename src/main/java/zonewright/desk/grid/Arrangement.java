package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which columns of a sheet are shown, in which order, how wide, and how many stay in view.
 *
 * @param columns those shown, from the left
 * @param frozen how many of them stay while the others scroll
 */
public record Arrangement(List<Shown> columns, int frozen) {
  /** Stands for a blank in the name of a column of one's own, which holds no such sign. */
  private static final char BLANK = '_';

  /**
   * A column that is shown.
   *
   * @param id identifier of the column within its sheet
   * @param width its width in pixels of an unscaled screen; 0 for as wide as its content asks
   */
  public record Shown(String id, int width) {
    /** Written out: what a record makes by itself is slow at its first use, which is each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Shown that && id.equals(that.id) && width == that.width;
    }

    @Override
    public int hashCode() {
      return 31 * id.hashCode() + width;
    }
  }

  public Arrangement {
    columns = List.copyOf(columns);
  }

  /** Written out, as that of {@link Shown}. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Arrangement that
        && columns.equals(that.columns)
        && frozen == that.frozen;
  }

  @Override
  public int hashCode() {
    return 31 * columns.hashCode() + frozen;
  }

  /** Returns the columns named, each as wide as its content asks. */
  public static Arrangement of(List<String> ids, int frozen) {
    return new Arrangement(ids.stream().map(id -> new Shown(id, 0)).toList(), frozen);
  }

  /** Returns the arrangement as a line of text, to keep. */
  public String text() {
    StringBuilder text = new StringBuilder().append(frozen);
    for (Shown column : columns) {
      text.append(' ').append(column.id().replace(' ', BLANK));
      if (column.width() > 0) {
        text.append('=').append(column.width());
      }
    }
    return text.toString();
  }

  /** Returns the arrangement that was kept as a text; none where that is none. */
  public static Optional<Arrangement> read(String text) {
    String[] parts = text.strip().split(" ", -1);
    List<Shown> columns = new ArrayList<>();
    try {
      for (int i = 1; i < parts.length; i++) {
        int sign = parts[i].indexOf('=');
        columns.add(
            sign < 0
                ? new Shown(parts[i].replace(BLANK, ' '), 0)
                : new Shown(
                    parts[i].substring(0, sign).replace(BLANK, ' '),
                    Integer.parseInt(parts[i].substring(sign + 1))));
      }
      return columns.isEmpty()
          ? Optional.empty()
          : Optional.of(new Arrangement(columns, Integer.parseInt(parts[0])));
    } catch (NumberFormatException noneOfOurs) {
      return Optional.empty();
    }
  }
}
