/**
 * The zones of a retrofit as they were found, beside the zones as proposed: same columns, same
 * equations, and what is kept, what is new and what goes.
 */
package zonewright.retrofit;
