/** Zones as found and as proposed: copies, differences and what they save. */
package zonewright.retrofit;
