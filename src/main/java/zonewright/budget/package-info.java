/** The water a schedule takes: by zone, program and site, and month by month. */
package zonewright.budget;
