package zonewright.pipes;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;

/** What a formula of constants comes to, by way of a column that holds it. */
final class Worth {
  private Worth() {}

  static double of(Formula formula, QuantityKind kind, UnitSystem system, Unit unit) {
    Column column = Column.calculated("sheet", "cell", "Cell", kind, formula).build();
    TableDefinition table =
        new TableDefinition(
            "sheet", "Sheet", "row", new TableDefinition.Rows.One(), List.of(column));
    Book book = new Book(new Schema(List.of(table)), system);
    return kind.unit(system).convert(book.number(column.reference(), 0), unit);
  }
}
