/** Alternatives of the open design, side by side in a window of their own. */
package zonewright.desk.alternatives;
