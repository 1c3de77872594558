/** Checks that other people's lists are read as they were meant. */
package zonewright.exchange;
