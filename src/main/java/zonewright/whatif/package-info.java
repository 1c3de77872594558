/**
 * What would be if a design were otherwise: tries inputs on a copy of it and says what came of
 * them. The design itself stays as it is.
 */
package zonewright.whatif;
