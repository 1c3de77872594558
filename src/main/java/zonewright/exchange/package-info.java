/**
 * Lists that come from other people as comma-separated values: read with care, matched column by
 * column, and taken into a table of a design without losing anything silently.
 */
package zonewright.exchange;
