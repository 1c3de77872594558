/**
 * What takes its time is done off the thread of the window and tells how far it is; what it needs
 * to know it asks, and what went wrong it says in a sentence.
 */
package zonewright.desk.task;
