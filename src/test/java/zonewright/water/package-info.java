/** Checks of how much water, how often and in how many cycles. */
package zonewright.water;
