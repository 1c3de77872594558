/** Processes that are killed while somebody types and saves, and what is left of their work. */
package zonewright.recovery;
