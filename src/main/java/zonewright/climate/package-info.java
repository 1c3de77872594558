/**
 * The weather a design is made for: reference evapotranspiration month by month, and the month that
 * asks most.
 */
package zonewright.climate;
