package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.units.Unit;

/** Cells filled from outside a design, gathered into one edit. */
final class TakenCells {
  /** Figures are kept to a ten-thousandth of their unit: finer than any instrument. */
  private static final double FINEST = 10_000;

  private final Book book;
  private final Edits edits;
  private final List<Edit> parts = new ArrayList<>();

  TakenCells(Book book) {
    this.book = book;
    this.edits = new Edits(book);
  }

  /** Writes a word into the first row. */
  void word(Column column, String word) {
    set(column, 0, new Entry.Words(word));
  }

  /** Writes a figure into the first row, unless it is not known or something stands there. */
  void place(Column column, double value, Unit unit) {
    if (!Double.isNaN(value) && book.entry(column.reference(), 0) instanceof Entry.Blank) {
      figure(column, 0, value, unit);
    }
  }

  /** Writes a figure; clears the cell where it is not known. */
  void figure(Column column, int row, double value, Unit unit) {
    if (Double.isNaN(value)) {
      set(column, row, Entry.BLANK);
      return;
    }
    double kept = unit.convert(value, column.kind().unit(book.system()));
    set(column, row, new Entry.Figure(Math.round(kept * FINEST) / FINEST));
  }

  /** Writes whatever it is. */
  void set(Column column, int row, Entry entry) {
    parts.add(edits.set(column.reference(), row, entry));
  }

  /** Returns the edit that does all of it. */
  Edit edit(String name) {
    return new Edit.Several(name, parts);
  }
}
