/** Checks of tables that calculate. */
package zonewright.sheet;
