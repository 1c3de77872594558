/** What would be if a design were otherwise, in windows of its own. */
package zonewright.desk.whatif;
