/**
 * The main window: the sheets, how each number comes about, and what there is to say about the
 * design.
 *
 * <p>Shows and asks; calculates nothing. All that changes a design goes through its edits.
 */
package zonewright.desk;
