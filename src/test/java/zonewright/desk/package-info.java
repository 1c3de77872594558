/** Checks of the main window, on windows drawn without a display. */
package zonewright.desk;
