/** How long calculation takes, beside a loop written by hand for the same formulas. */
package zonewright.benchmark;
