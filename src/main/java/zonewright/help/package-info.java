/**
 * The help pages: what every column means, from its declaration, and around that what a designer
 * does with it.
 */
package zonewright.help;
