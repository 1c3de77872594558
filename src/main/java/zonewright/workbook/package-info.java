/**
 * The design file: an ordinary .xlsx workbook with live formulas that any spreadsheet program can
 * open, and back again.
 *
 * <p>Writing shows every column as its declaration says; reading takes inputs only and never trusts
 * a result that a file carries.
 */
package zonewright.workbook;
