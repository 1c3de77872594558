/**
 * The water balance of a root zone, day by day, under a schedule that a controller scales: numbers
 * in, numbers out. Knows nobody; zones have no names here, and depths are in millimetres.
 */
package zonewright.balance;
