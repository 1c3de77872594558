/**
 * What a job costs: the parts counted off the zones, their prices and hours, and from there to the
 * price in the order an estimator adds it up.
 */
package zonewright.estimate;
