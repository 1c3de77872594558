/**
 * Alternatives of a design: what each does otherwise, cell by cell and row by row, kept on sheets
 * of the design itself, so that saving, taking back and other programs treat it like all else.
 */
package zonewright.alternatives;
