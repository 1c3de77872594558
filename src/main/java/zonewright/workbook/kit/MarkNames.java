package zonewright.workbook.kit;

import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetNames;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/**
 * What a conditional format calls things: it may name cells of its own row and single cells that
 * have a name, and knows no tables. Whether that was enough is told afterwards.
 */
public final class MarkNames implements SpreadsheetNames {
  private final Blueprint blueprint;
  private final TableDefinition home;
  private final Cells cells;
  private boolean plain = true;

  /** Says where cells stand. */
  public interface Cells {
    /** Returns the cell of a column in the first row that is marked; null where there is none. */
    String of(Column column);
  }

  /**
   * Makes the names for the rows of one table.
   *
   * @param home the table whose cells are marked
   */
  public MarkNames(Blueprint blueprint, TableDefinition home, Cells cells) {
    this.blueprint = blueprint;
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
    TableDefinition table = blueprint.table(reference.table());
    Column column = blueprint.column(reference);
    if (table.single()) {
      return WorkbookNames.defined(table, column);
    }
    String cell = table.equals(home) ? cells.of(column) : null;
    return cell == null ? beyond() : cell;
  }

  @Override
  public Optional<String> place(Reference reference) {
    return Optional.empty();
  }

  @Override
  public String column(Reference reference) {
    return beyond();
  }

  @Override
  public String rowNames(Reference reference) {
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

  @Override
  public String keys(ReferenceTable table) {
    return beyond();
  }

  @Override
  public Optional<Range> range(Reference reference) {
    return Optional.empty();
  }

  @Override
  public boolean defaulted(Reference reference) {
    return blueprint.column(reference).role() == Column.Role.DEFAULTED;
  }

  @Override
  public Optional<Words> words(Reference reference) {
    return Optional.empty();
  }
}
