/**
 * The main window: its frame and menus, and how files, sheets, findings, nights and pictures are
 * put together.
 *
 * <p>Shows and asks; calculates nothing. All that changes a design goes through its edits.
 */
package zonewright.desk;
