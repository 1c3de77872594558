package zonewright.workbook.kit;

import java.util.Optional;
import zonewright.sheet.Column;

/**
 * A column of a table's sheet, or a line of a one-row sheet, as it stands in the workbook.
 *
 * @param role what it is there for
 * @param column the column of the design it belongs to; none for what belongs to the whole row
 * @param heading the words over it, or before it
 * @param formula what is calculated in it, without the equals sign; none where something is typed
 */
public record SheetColumn(
    Role role, Optional<Column> column, String heading, Optional<String> formula) {
  /** What a column of a sheet is there for. */
  public enum Role {
    /** What a person types. */
    TYPED(false),
    /** What is calculated, or used unless something is typed. */
    VALUE(false),
    /** The name of something that lacks in the row, or nothing. */
    MISSING(false),
    /** 1 where something was typed into the row. */
    FILLED_IN(true),
    /** A number that stays with the row for good. */
    IDENTITY(true),
    /** In which row of another table the same identity stands. */
    JOIN(true),
    /** What was typed where it is good to calculate with, else {@code #N/A}. */
    CHECKED(true),
    /** In which row of its list a word stands. */
    ROW(true),
    /** What is used unless something is typed. */
    USUAL(true),
    /** A step on the way to the result of a longer formula. */
    STEP(true);

    private final boolean closed;

    Role(boolean closed) {
      this.closed = closed;
    }

    /** Says whether it stands in a group that is closed until somebody opens it. */
    public boolean closed() {
      return closed;
    }
  }

  static SheetColumn typed(Column column, String heading) {
    return new SheetColumn(Role.TYPED, Optional.of(column), heading, Optional.empty());
  }

  static SheetColumn of(Role role, Column column, String heading, String formula) {
    return new SheetColumn(role, Optional.of(column), heading, Optional.of(formula));
  }

  static SheetColumn ofRow(Role role, String heading, String formula) {
    return new SheetColumn(role, Optional.empty(), heading, Optional.of(formula));
  }

  /** Says whether the cells belong to a column of the design and play this part in it. */
  public boolean is(Role wanted, Column of) {
    return role == wanted && column.filter(of::equals).isPresent();
  }
}
