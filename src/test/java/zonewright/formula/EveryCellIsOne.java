package zonewright.formula;

import zonewright.units.QuantityKind;

/** A row in which every cell holds 1. */
final class EveryCellIsOne implements KnownRow {
  static final Outcome.CellName NAME =
      new Outcome.CellName("row", new Reference("test", "result", "Result", QuantityKind.FACTOR));

  private static final Outcome ONE = new Outcome.Amount(1);

  @Override
  public Outcome outcome(Reference cell) {
    return ONE;
  }

  @Override
  public boolean given(Reference cell) {
    return true;
  }

  @Override
  public String shown(Reference column, double value) {
    return column.name();
  }

  @Override
  public Outcome gathered(Formula.Aggregate gather) {
    return ONE;
  }

  @Override
  public Outcome matched(Formula.Where where, double than) {
    return ONE;
  }

  @Override
  public Outcome found(Formula.RowLookup find) {
    return ONE;
  }

  @Override
  public int rows(Reference column) {
    return 1;
  }

  @Override
  public Outcome picked(Reference column, int position) {
    return ONE;
  }

  @Override
  public LookedUp lookedUp(String word, ReferenceTable.Numbers column) {
    return new LookedUp(ONE, () -> word, () -> "", () -> "");
  }
}
