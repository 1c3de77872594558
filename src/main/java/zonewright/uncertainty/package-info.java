/**
 * How sure an answer is: what inputs known only as ranges do to it, and which measurement would
 * narrow it most. Works on a copy of a design, which itself stays as it is.
 */
package zonewright.uncertainty;
