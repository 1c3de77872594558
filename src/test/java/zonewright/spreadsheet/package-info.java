/** Puts workbooks through an independent spreadsheet program, so that its numbers can be asked. */
package zonewright.spreadsheet;
