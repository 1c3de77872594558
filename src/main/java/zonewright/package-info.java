/** Where the program starts: the window, or the command line. */
package zonewright;
