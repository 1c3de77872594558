/** Exercises in a window of their own: one set, answered and marked; a set for a class. */
package zonewright.desk.practice;
