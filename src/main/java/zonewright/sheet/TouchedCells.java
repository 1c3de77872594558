package zonewright.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.formula.Reference;

/** What one edit touched, in the order it happened, for the calculation to follow. */
final class TouchedCells implements Contents.Touched {
  private record Cell(String table, int row, int column) {}

  private final List<Cell> cells = new ArrayList<>();
  private final Set<String> tables = new LinkedHashSet<>();
  private boolean units;

  @Override
  public void cell(String table, int row, int column) {
    cells.add(new Cell(table, row, column));
  }

  @Override
  public void rows(String table) {
    tables.add(table);
  }

  @Override
  public void units() {
    units = true;
  }

  boolean unitsChanged() {
    return units;
  }

  /** Returns the tables whose rows came, went or moved. */
  Set<String> tables() {
    return tables;
  }

  /** Has a calculation take all of it over; a cell may have moved since, if its table did. */
  void tellTo(Calculation calculation, Map<Reference, BitSet> changed) {
    if (!tables.isEmpty()) {
      calculation.rowsChanged(tables, changed);
    }
    for (Cell cell : cells) {
      if (!tables.contains(cell.table())) {
        calculation.entered(cell.table(), cell.row(), cell.column(), changed);
      }
    }
  }
}
