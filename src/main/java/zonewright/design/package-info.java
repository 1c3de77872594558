/**
 * The document: the sheets of an irrigation design put together, what to tell the designer about
 * it, and a demo.
 *
 * <p>Knows the trade; knows nothing of screens and files.
 */
package zonewright.design;
