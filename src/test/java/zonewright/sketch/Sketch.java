package zonewright.sketch;

import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;

/** A design with one zone, typed cell by cell. */
public final class Sketch {
  private final Design design;

  private Sketch(Design design) {
    this.design = design;
  }

  /** Returns a design with one zone and nothing else entered. */
  public static Sketch in(UnitSystem system) {
    Design design = Design.blank(system);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    return new Sketch(design);
  }

  /** Types into the first row of a column. */
  public Sketch type(Column column, String text) {
    return type(column, 0, text);
  }

  /** Types into a row of a column, counted from 0. */
  public Sketch type(Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
    return this;
  }

  /** Returns what the first row of a column holds, in a unit. */
  public double read(Column column, Unit unit) {
    return read(column, 0, unit);
  }

  /** Returns what a row of a column holds, in a unit; not-a-number where it holds no number. */
  public double read(Column column, int row, Unit unit) {
    double value = design.book().outcome(column.reference(), row).number();
    return column.kind().unit(design.book().system()).convert(value, unit);
  }

  /** Returns what the first row of a column holds. */
  public Outcome outcome(Column column) {
    return outcome(column, 0);
  }

  /** Returns what a row of a column holds. */
  public Outcome outcome(Column column, int row) {
    return design.book().outcome(column.reference(), row);
  }

  /** Returns the design itself. */
  public Design design() {
    return design;
  }
}
