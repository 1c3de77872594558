/**
 * Equations as people type them in spreadsheets, with names of columns: read into the expression
 * tree, or refused with the place, a sentence and what would do.
 *
 * <p>Operators, their order and the functions are those of OASIS OpenDocument 1.3 part 4 (the open
 * formula standard) as far as the tree can say them; numbers may carry units. Knows nothing of
 * irrigation.
 */
package zonewright.equation;
