/** What grows in a zone and how much of the reference evapotranspiration it takes. */
package zonewright.plants;
