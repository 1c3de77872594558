/**
 * A season of the zones of a design, day by day: reads from the sheets and the timetable what the
 * water balance needs, lets a schedule run, and says in words what came of it and what would help.
 */
package zonewright.season;
