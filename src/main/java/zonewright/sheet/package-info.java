/**
 * Tables of typed columns: what was entered, what follows from it, and why a cell has no number.
 *
 * <p>Knows nothing of irrigation. A {@link zonewright.sheet.Schema} says which tables and columns
 * there are, {@link zonewright.sheet.Contents} what was entered, {@link
 * zonewright.sheet.Calculation} what follows; a {@link zonewright.sheet.Book} holds them together
 * and changes only by edits that a {@link zonewright.sheet.Journal} can take back.
 */
package zonewright.sheet;
