/** Grids as somebody at the keyboard meets them. */
package zonewright.desk.grid;
