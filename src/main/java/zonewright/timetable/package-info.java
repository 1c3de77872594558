/**
 * Places the cycles of many valves into the nights allowed, so that the night ends as early as
 * possible. A pure algorithm: it knows minutes, flows and days, and nothing of screens, sheets or
 * how a run time was worked out. Zones and programs are numbers here, and what is found is data; a
 * cycle that cannot run in its night is left undone with its reason, never lost.
 *
 * <p>All searching is counted in steps, never in seconds: the same input gives the same answer on
 * every machine.
 */
package zonewright.timetable;
