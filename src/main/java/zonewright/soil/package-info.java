/**
 * The ground under a zone: how fast it takes water in, how much stands on it before it runs, how
 * much it holds.
 */
package zonewright.soil;
