/**
 * The way of the water: supply, meters, pipes, valves, and the pressure that is left at the heads.
 */
package zonewright.pipes;
