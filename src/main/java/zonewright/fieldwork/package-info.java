/**
 * What is done once the garden is there: tests with catch cans, inspection, watching the
 * controller, tuning by what is seen.
 *
 * <p>Columns, rules and the advice on tuning; knows nothing of designs, files and screens.
 */
package zonewright.fieldwork;
