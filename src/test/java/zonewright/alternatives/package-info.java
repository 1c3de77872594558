/** Alternatives of a design: that each stays what it is, and the design too. */
package zonewright.alternatives;
