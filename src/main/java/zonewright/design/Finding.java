package zonewright.design;

import zonewright.formula.Reference;
import zonewright.sheet.Severity;

/**
 * Something to tell the designer.
 *
 * @param severity how much it matters
 * @param column the column to go to
 * @param row the row to go to, counted from 0
 * @param where the row in words
 * @param sentence what is wrong
 * @param cure what to do about it; empty where the sentence says it
 */
public record Finding(
    Severity severity, Reference column, int row, String where, String sentence, String cure) {
  /** Returns the finding as one line. */
  public String line() {
    String head = where.isEmpty() ? sentence : where + " " + sentence;
    return cure.isEmpty() ? head : head + " — " + cure;
  }
}
