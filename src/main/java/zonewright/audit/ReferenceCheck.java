package zonewright.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.design.Design;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;

/**
 * A published value and how to ask the program for it.
 *
 * @param topic what it belongs to
 * @param example which example, table or figure
 * @param given the cells typed, in order
 * @param asked the cell that should hold the value
 * @param unit the unit the value is printed in
 * @param expected the value printed
 * @param tolerance how far off it may be: half a unit of the last printed digit unless the note
 *     says why not
 * @param source where it is printed
 * @param status what that is worth: verified, verified (secondary), derived, from memory
 * @param note anything a reader must know to redo it; may be empty
 */
public record ReferenceCheck(
    String topic,
    String example,
    List<Typed> given,
    Cell asked,
    Unit unit,
    double expected,
    double tolerance,
    String source,
    String status,
    String note) {
  public ReferenceCheck {
    given = List.copyOf(given);
  }

  /**
   * A cell.
   *
   * @param row counted from 0
   */
  public record Cell(Column column, int row) {}

  /** Something typed into a cell. */
  public record Typed(Cell cell, String text) {}

  /**
   * What the program gave.
   *
   * @param got the value in the check's unit; not-a-number where there was none
   */
  public record Result(ReferenceCheck check, double got) {
    /** Says whether it is near enough. */
    public boolean holds() {
      return Math.abs(got - check.expected) <= check.tolerance * (1 + 1e-9);
    }
  }

  /** Types the cells into a fresh design of {@code system} and looks at the answer. */
  public Result in(UnitSystem system) {
    Design design = Design.blank(system);
    Map<String, Integer> rows = new LinkedHashMap<>(Map.of(Sheets.ZONES, 1));
    for (Typed typed : given) {
      rows.merge(typed.cell().column().reference().table(), typed.cell().row() + 1, Math::max);
    }
    rows.forEach((table, count) -> grow(design, table, count));
    for (Typed typed : given) {
      design
          .book()
          .start(
              design
                  .edits()
                  .typed(typed.cell().column().reference(), typed.cell().row(), typed.text()));
    }
    double number = design.book().outcome(asked.column().reference(), asked.row()).number();
    return new Result(this, asked.column().kind().unit(system).convert(number, unit));
  }

  private static void grow(Design design, String table, int count) {
    int there = design.book().rows(table);
    if (there < count
        && design.book().schema().table(table).rows() instanceof TableDefinition.Rows.Free) {
      design.book().start(design.edits().inserted(table, there, count - there));
    }
  }

  /** Returns the column that {@code table.id} names, or refuses. */
  static Column column(Schema schema, String key) {
    for (TableDefinition table : schema.tables()) {
      for (Column column : table.columns()) {
        if (column.reference().key().equals(key)) {
          return column;
        }
      }
    }
    throw new IllegalArgumentException(
        "a reference check names a column that is not there: " + key);
  }
}
