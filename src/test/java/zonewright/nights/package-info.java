/** The nights of a design, from its sheets to findings, cards and calendar files. */
package zonewright.nights;
