/**
 * Files of weather, hours or days, read with suspicion; reference evapotranspiration of each day;
 * and what years of such days come to for a design. Knows no design and no screen.
 */
package zonewright.weather;
