/**
 * The main window: its frame, menus and files, and how sheets, findings, nights and pictures are
 * put together.
 *
 * <p>Shows and asks; calculates nothing. All that changes a design goes through its edits.
 */
package zonewright.desk;
