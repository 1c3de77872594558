/**
 * Quantities as people write them: kinds, units of both systems, exact factors between them,
 * reading what was typed.
 *
 * <p>Knows nothing of irrigation. Every factor falls out of a definition (an inch is 25.4 mm, a
 * gallon 231 cubic inches).
 */
package zonewright.units;
