/**
 * What every sheet of a workbook is made with: looks and number formats, paper, words as the file
 * format holds them, tables, the names cells go by, and the formulas of columns.
 *
 * <p>Knows nothing of which sheets there are.
 */
package zonewright.workbook.kit;
