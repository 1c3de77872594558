/**
 * The program held against published values: each check with its source, what it should give, and
 * what it gives.
 */
package zonewright.audit;
