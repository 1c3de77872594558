package zonewright.sheet;

import java.util.Optional;
import zonewright.formula.Reference;

/**
 * A cure that can be carried out without a person's thinking: a name, and what makes its edit.
 *
 * <p>Two are equal when name and maker are, so a maker should be a constant or a record, never a
 * lambda made anew each time.
 *
 * @param name what a person would call it, beginning with a capital, such as {@code Allow 5 days a
 *     week}
 * @param maker makes the edit when it is wanted
 */
public record Remedy(String name, Maker maker) {
  /** Makes the edit of a remedy from the book as it is when somebody asks for it. */
  public interface Maker {
    /**
     * Returns the edit; none where things have changed or nothing would help.
     *
     * @param cell the column of the finding
     * @param row its row, counted from 0; always one that is there
     */
    Optional<Edit> edit(Book book, Reference cell, int row);
  }

  /** Returns the same remedy under another name. */
  public Remedy named(String other) {
    return new Remedy(other, maker);
  }

  /**
   * Returns the edit that puts the cell right, under the remedy's name; none where there is none.
   */
  public Optional<Edit> edit(Book book, Reference cell, int row) {
    if (row >= book.rows(cell.table())) {
      return Optional.empty();
    }
    return maker
        .edit(book, cell, row)
        .filter(edit -> !edit.changesNothing())
        .map(edit -> new Edit.Several("“" + name + "”", java.util.List.of(edit)));
  }
}
