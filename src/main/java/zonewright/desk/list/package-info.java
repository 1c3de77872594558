/** What comes from lists of others: zones, zones as found, price books. */
package zonewright.desk.list;
