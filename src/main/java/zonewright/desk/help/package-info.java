/**
 * What explains: how a number came about, what each column means, the help pages and the cautions.
 */
package zonewright.desk.help;
