package zonewright.desk.grid;

import java.util.HashMap;
import java.util.Map;
import zonewright.desk.grid.CellLook.Standing;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.units.QuantityText;

/** How the cells of a book appear; each is asked for once between two changes. */
final class CellLooks {
  private final Book book;
  private final Map<Reference, Map<Integer, CellLook>> known = new HashMap<>();

  CellLooks(Book book) {
    this.book = book;
  }

  /** Forgets all; after any change, since a reason can change where no number does. */
  void forget() {
    known.clear();
  }

  CellLook look(Column column, int row) {
    Reference reference = column.reference();
    int rows = book.rows(reference.table());
    if (row < 0 || row >= rows) {
      return CellLook.NOTHING;
    }
    Map<Integer, CellLook> looks = known.computeIfAbsent(reference, any -> new HashMap<>());
    CellLook look = looks.get(row);
    if (look == null) {
      look = make(column, row);
      looks.put(row, look);
    }
    return look;
  }

  private CellLook make(Column column, int row) {
    Reference reference = column.reference();
    Entry entry = column.takesEntries() ? book.entry(reference, row) : Entry.BLANK;
    boolean given = !(entry instanceof Entry.Blank);
    Standing standing =
        switch (column.role()) {
          case INPUT -> Standing.ENTERED;
          case DEFAULTED -> given ? Standing.OVERRIDDEN : Standing.DEFAULTED;
          case CALCULATED -> Standing.CALCULATED;
        };
    double number = book.number(reference, row);
    if (column.content() == Column.Content.NUMBER && !Double.isNaN(number)) {
      return new CellLook(number(column, number), standing, "");
    }
    return book.outcome(reference, row).read(new Look(column, entry, standing));
  }

  /** What stands in a cell, for each kind of outcome. */
  private final class Look implements Outcome.Cases<CellLook> {
    private final Column column;
    private final Entry entry;
    private final Standing standing;

    Look(Column column, Entry entry, Standing standing) {
      this.column = column;
      this.entry = entry;
      this.standing = standing;
    }

    @Override
    public CellLook amount(double value) {
      return new CellLook(number(column, value), standing, "");
    }

    @Override
    public CellLook words(String text) {
      return new CellLook(text, standing, "");
    }

    @Override
    public CellLook blank() {
      return new CellLook("", standing, "");
    }

    @Override
    public CellLook missing(Outcome.Missing missing) {
      String first = missing.needs().isEmpty() ? "" : missing.needs().get(0).column().name();
      return new CellLook("needs " + first, Standing.MISSING, missing.sentence());
    }

    @Override
    public CellLook refused(Outcome.Refused refused) {
      Reference where = refused.where().column();
      if (!(entry instanceof Entry.Blank)) {
        return new CellLook(Entries.typed(column, entry), Standing.REFUSED, refused.sentence());
      }
      String seen = where.equals(column.reference()) ? "not possible" : "see " + where.name();
      return new CellLook(seen, Standing.REFUSED_ELSEWHERE, refused.sentence());
    }

    @Override
    public CellLook notApplicable(Outcome.NotApplicable not) {
      return new CellLook(not.shown(), Standing.NOT_APPLICABLE, not.sentence());
    }
  }

  private String number(Column column, double value) {
    return column.shown(value, book.system());
  }

  /** Returns what stands in a cell, for who seeks it; nothing where only a reason stands there. */
  String sought(Column column, int row) {
    Reference reference = column.reference();
    if (row < 0 || row >= book.rows(reference.table())) {
      return "";
    }
    boolean number = column.content() == Column.Content.NUMBER;
    boolean blank = !column.takesEntries() || book.entry(reference, row) instanceof Entry.Blank;
    boolean none = number && blank && Double.isNaN(book.number(reference, row));
    return none ? "" : look(column, row).text();
  }

  /** Returns what was typed into a cell; nothing where nothing was. */
  String entered(Column column, int row) {
    boolean there = column.takesEntries() && row < book.rows(column.reference().table());
    return there ? Entries.typed(column, book.entry(column.reference(), row)) : "";
  }

  /**
   * Returns what a person would type to get the content of a cell: the entry, or else the value
   * that stands there by default; nothing where there is neither.
   */
  String typed(Column column, int row) {
    if (row < 0 || row >= book.rows(column.reference().table())) {
      return "";
    }
    Entry entry = column.takesEntries() ? book.entry(column.reference(), row) : Entry.BLANK;
    if (!(entry instanceof Entry.Blank)) {
      return Entries.typed(column, entry);
    }
    Outcome outcome = book.outcome(column.reference(), row);
    if (outcome instanceof Outcome.Amount amount) {
      return QuantityText.typed(amount.value(), column.kind());
    }
    return outcome.text();
  }
}
