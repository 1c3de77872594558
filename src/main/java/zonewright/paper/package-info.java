/**
 * Pages to print: lays words, tables and boxes to tick out on paper and writes them as a PDF file.
 *
 * <p>Knows nothing of irrigation; the only package that knows the library for PDF.
 */
package zonewright.paper;
