package zonewright.sheet;

import zonewright.formula.Reference;

/**
 * Where a cell stands.
 *
 * @param column its column
 * @param row its row, counted from 0
 */
public record Place(Reference column, int row) {}
