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
    Outcome outcome = book.outcome(reference, row);
    if (outcome instanceof Outcome.Amount amount) {
      return new CellLook(number(column, amount.value()), standing, "");
    }
    if (outcome instanceof Outcome.Words words) {
      return new CellLook(words.text(), standing, "");
    }
    String sentence = outcome.sentence();
    if (outcome instanceof Outcome.NotApplicable not) {
      return new CellLook(not.shown(), Standing.NOT_APPLICABLE, sentence);
    }
    if (outcome instanceof Outcome.Missing missing) {
      String first = missing.needs().isEmpty() ? "" : missing.needs().get(0).column().name();
      return new CellLook("needs " + first, Standing.MISSING, sentence);
    }
    if (outcome instanceof Outcome.Refused refused) {
      return given
          ? new CellLook(Entries.typed(column, entry), Standing.REFUSED, sentence)
          : new CellLook(
              refused.where().column().equals(reference)
                  ? "not possible"
                  : "see " + refused.where().column().name(),
              Standing.REFUSED_ELSEWHERE,
              sentence);
    }
    return new CellLook("", standing, "");
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
    return outcome instanceof Outcome.Words words ? words.text() : "";
  }
}
