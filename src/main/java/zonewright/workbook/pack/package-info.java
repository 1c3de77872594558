/**
 * The sheets that are handed over with a design beside its own tables: each writes itself from the
 * design, and one list says which there are.
 *
 * <p>Nothing is ever read back from them.
 */
package zonewright.workbook.pack;
