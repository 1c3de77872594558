/** The sheets at the front: their views, columns shown, and the ways between cells. */
package zonewright.desk.sheets;
