/** The timetable of the nights, made in the background and shown in a window of its own. */
package zonewright.desk.nights;
