/** Checks that a design survives its file and that the file calculates as the program does. */
package zonewright.workbook;
