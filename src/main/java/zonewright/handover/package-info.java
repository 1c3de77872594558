/**
 * What is handed over when the job is done: the card of each program, what a weather-based
 * controller asks for, the months to compare it with, and the list to go through on the day.
 *
 * <p>Reads a design and says it on paper; the workbook reads the same lists.
 */
package zonewright.handover;
