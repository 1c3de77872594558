/** Rules about the program's own code: which package may know which, and what none may call. */
package zonewright.architecture;
