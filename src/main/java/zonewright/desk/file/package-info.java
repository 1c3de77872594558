/**
 * Design files in the window: opening, saving, what is unsaved or left over after a crash, and who
 * else is at the same file.
 */
package zonewright.desk.file;
