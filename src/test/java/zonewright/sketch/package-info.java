/** Small designs typed in tests, as a designer would type them. */
package zonewright.sketch;
