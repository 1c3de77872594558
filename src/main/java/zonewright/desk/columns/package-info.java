/** The window in which a person adds, changes and takes away columns of their own. */
package zonewright.desk.columns;
