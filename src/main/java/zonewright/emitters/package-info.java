/**
 * What puts the water on: emitters, the flow they draw, the rate at which they wet the ground, and
 * how evenly.
 */
package zonewright.emitters;
