package zonewright.desk.grid;

import zonewright.formula.Reference;

/**
 * A cell of a book.
 *
 * @param column its column
 * @param row its row, counted from 0
 */
public record CellPlace(Reference column, int row) {}
