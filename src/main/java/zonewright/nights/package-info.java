/**
 * The nights of a design: what is asked of them, the timetable that answers, and what follows for
 * whoever keys it in.
 *
 * <p>Reads the sheets of a design, hands the problem to {@code timetable}, and turns the answer
 * into words, findings, schedule cards and calendar files. Knows nothing of screens and workbooks.
 */
package zonewright.nights;
