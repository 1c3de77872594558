/** A disk whose power is cut, at every step in turn. */
package zonewright.disk;
