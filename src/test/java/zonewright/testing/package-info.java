/** What tests of all packages go by. */
package zonewright.testing;
