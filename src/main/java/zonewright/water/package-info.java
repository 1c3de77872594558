/**
 * How much water, how often, and in how many cycles: from demand to the minutes a controller is
 * given.
 */
package zonewright.water;
