/**
 * The season in a window of its own: what drives it, each zone's soil through the year, and what
 * would help.
 */
package zonewright.desk.season;
