/** Tests of weather files and of what is calculated from them. */
package zonewright.weather;
