package zonewright.workbook.kit;

import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetNames;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;

/**
 * What a conditional format calls things: it may name cells of its own row and single cells that
 * have a name, and knows no tables. Whether that was enough is told afterwards.
 */
public final class MarkNames implements SpreadsheetNames {
  private final Schema schema;
  private final TableDefinition home;
  private final Cells cells;
  private boolean plain = true;

  /** Says where cells stand. */
  public interface Cells {
    /**
     * Returns the cell of a column in the first row that is marked; null where there is none.
     *
     * @param typed whether the cell is meant that a person types into
     */
    String of(Column column, boolean typed);
  }

  /**
   * Makes the names for the rows of one table.
   *
   * @param home the table whose cells are marked
   */
  public MarkNames(Schema schema, TableDefinition home, Cells cells) {
    this.schema = schema;
    this.home = home;
    this.cells = cells;
  }

  /** Says whether everything asked for so far could be named. */
  public boolean plain() {
    return plain;
  }

  private String beyond() {
    plain = false;
    return "A1";
  }

  @Override
  public String cell(Reference reference) {
    return cell(reference, false);
  }

  @Override
  public String typed(Reference reference) {
    return cell(reference, true);
  }

  private String cell(Reference reference, boolean typed) {
    TableDefinition table = schema.table(reference.table());
    Column column = schema.column(reference);
    if (table.single()) {
      return typed
          ? WorkbookNames.limit(table, column, "typed")
          : WorkbookNames.defined(table, column);
    }
    String cell = table.equals(home) ? cells.of(column, typed) : null;
    return cell == null ? beyond() : cell;
  }

  @Override
  public String row(Reference word) {
    return beyond();
  }

  @Override
  public String row(Reference word, ReferenceTable table) {
    return beyond();
  }

  @Override
  public String row(Reference word, Reference column) {
    return beyond();
  }

  @Override
  public String rows(Reference word) {
    return beyond();
  }

  @Override
  public boolean listed(Reference word) {
    return true;
  }

  @Override
  public Optional<String> counted(Reference column) {
    return Optional.empty();
  }

  @Override
  public String column(Reference reference) {
    return beyond();
  }

  @Override
  public String published(ReferenceTable.Numbers column) {
    return beyond();
  }

  @Override
  public String published(ReferenceTable.Numbers first, ReferenceTable.Numbers last) {
    return beyond();
  }
}
