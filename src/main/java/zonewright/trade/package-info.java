/**
 * What the packages of the trade share: the names of the design's sheets and of its groups of
 * columns.
 */
package zonewright.trade;
