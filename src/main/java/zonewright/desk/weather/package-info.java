/** Weather files and climate places: choosing, matching columns, and what was read. */
package zonewright.desk.weather;
