/** The program without a window: commands that print, write, check and answer, fit for scripts. */
package zonewright.command;
