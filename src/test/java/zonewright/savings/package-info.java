/** Payback, present value and rate of return against what others publish and calculate. */
package zonewright.savings;
