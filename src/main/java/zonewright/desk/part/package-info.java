/**
 * What the parts of the window share: the design that is open, its looks, actions, messages and
 * words.
 */
package zonewright.desk.part;
