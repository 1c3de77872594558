/** Tests of the way of the water against published figures and its own laws. */
package zonewright.pipes;
