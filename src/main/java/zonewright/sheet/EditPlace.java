package zonewright.sheet;

import java.util.Optional;
import zonewright.formula.Reference;

/** Where an edit was done: the first cell it changed, or the first row it put in. */
public final class EditPlace {
  private EditPlace() {}

  /**
   * Returns the first cell that shows what an edit did which was just done or taken back; empty
   * where no row is left, or where it reached the whole book.
   */
  public static Optional<Place> of(Book book, Edit edit) {
    Finding finding = new Finding(book);
    edit.perform(finding);
    return Optional.ofNullable(finding.place);
  }

  private static final class Finding implements Edit.Performer {
    private final Book book;
    private Place place;

    Finding(Book book) {
      this.book = book;
    }

    private void row(String table, int row) {
      int last = book.rows(table) - 1;
      if (place == null && last >= 0) {
        Reference first = book.schema().table(table).columns().get(0).reference();
        place = new Place(first, Math.max(0, Math.min(row, last)));
      }
    }

    private void cell(String table, long id, Reference column) {
      int row = book.contents().place(table, id);
      if (place == null && row >= 0) {
        place = new Place(column, row);
      }
    }

    @Override
    public void set(Edit.SetCells set) {
      for (Edit.Change change : set.changes()) {
        Column column = book.schema().table(change.table()).columns().get(change.column());
        cell(change.table(), change.row(), column.reference());
      }
    }

    @Override
    public void remark(Edit.SetRemarks set) {
      for (Edit.RemarkChange change : set.changes()) {
        book.schema()
            .table(change.table())
            .column(change.column())
            .ifPresent(column -> cell(change.table(), change.row(), column.reference()));
      }
    }

    @Override
    public void insert(Edit.InsertRows insert) {
      row(insert.table(), insert.at());
    }

    @Override
    public void remove(Edit.RemoveRows remove) {
      row(remove.table(), remove.at());
    }

    @Override
    public void reorder(Edit.Reorder reorder) {
      int moved = 0;
      while (moved < reorder.order().size() - 1 && reorder.order().get(moved) == moved) {
        moved++;
      }
      row(reorder.table(), moved);
    }

    @Override
    public void switchUnits(Edit.SwitchUnits units) {
      // every number is another: there is no one place
    }
  }
}
