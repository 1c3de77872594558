/** The estimate against a ledger kept in decimal money, and its laws. */
package zonewright.estimate;
