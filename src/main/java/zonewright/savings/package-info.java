/**
 * What a retrofit saves and whether it pays: water used now and then, what it costs at the
 * supplier's tiers, rebates, and the cash of the years after.
 */
package zonewright.savings;
