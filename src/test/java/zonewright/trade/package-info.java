/** Holds the bundled tables of the trade against their own laws and the sources they name. */
package zonewright.trade;
