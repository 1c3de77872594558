/** How sure the answers of the design are, in windows of its own. */
package zonewright.desk.sure;
