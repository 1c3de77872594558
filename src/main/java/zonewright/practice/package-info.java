/** Exercises with invented figures: set, marked, and why an answer is wrong. */
package zonewright.practice;
