package zonewright.workbook.kit;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Expressed;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetNames;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/** What the workbook calls things: tables by title, columns by heading, single cells by a name. */
public final class WorkbookNames implements SpreadsheetNames {
  private final Blueprint blueprint;
  private final UnitSystem system;

  /** Prepares for the sheets of a blueprint in one unit system. */
  public WorkbookNames(Blueprint blueprint, UnitSystem system) {
    this.blueprint = blueprint;
    this.system = system;
  }

  /** Returns the defined name of a cell of a one-row table, such as {@code Site_Peak_month}. */
  public static String defined(TableDefinition table, Column column) {
    String words = column.name().replaceAll("[^\\p{L}\\p{N}]+", "_").replaceAll("^_|_$", "");
    return table.title() + "_" + words;
  }

  private static String escaped(String heading) {
    return heading.replaceAll("(['#\\[\\]])", "'$1");
  }

  private TableDefinition table(Reference reference) {
    return blueprint.table(reference.table());
  }

  private String heading(Reference reference) {
    return escaped(blueprint.column(reference).heading(system));
  }

  @Override
  public String cell(Reference reference) {
    TableDefinition table = table(reference);
    return table.single()
        ? defined(table, blueprint.column(reference))
        : table.title() + "[[#This Row],[" + heading(reference) + "]]";
  }

  @Override
  public String column(Reference reference) {
    TableDefinition table = table(reference);
    return table.single()
        ? defined(table, blueprint.column(reference))
        : table.title() + "[" + heading(reference) + "]";
  }

  @Override
  public String rowNames(Reference reference) {
    return column(table(reference).columns().get(0).reference());
  }

  @Override
  public String published(ReferenceTable.Numbers column) {
    return column.table().name() + "[" + escaped(column.heading(system)) + "]";
  }

  @Override
  public String published(ReferenceTable.Numbers first, ReferenceTable.Numbers last) {
    return "%s[[%s]:[%s]]"
        .formatted(
            first.table().name(), escaped(first.heading(system)), escaped(last.heading(system)));
  }

  @Override
  public String keys(ReferenceTable table) {
    return table.name() + "[" + escaped(table.keyHeading()) + "]";
  }

  @Override
  public Optional<Range> range(Reference reference) {
    Column column = blueprint.column(reference);
    if (!column.takesEntries()) {
      return Optional.empty();
    }
    return column
        .bounds()
        .map(
            bounds ->
                new Range(
                    bounds.low(column.kind(), system),
                    bounds.lowIncluded(),
                    bounds.high(column.kind(), system),
                    bounds.whole(),
                    defaulted(reference) && !defaultKeepsTo(bounds, column)));
  }

  /** Whether a default can only come out in range, so that one test serves it and what is typed. */
  private boolean defaultKeepsTo(Bounds bounds, Column column) {
    return DefaultRange.within(
        Expressed.in(column.formula().orElseThrow(), system, column.kind().unit(system)),
        system,
        value -> bounds.problem(value, column.kind(), system).isEmpty());
  }

  @Override
  public boolean defaulted(Reference reference) {
    return blueprint.column(reference).role() == Column.Role.DEFAULTED;
  }

  @Override
  public Optional<Words> words(Reference reference) {
    return blueprint.column(reference).words().map(this::named);
  }

  private Words named(WordList list) {
    if (list instanceof WordList.Published published) {
      return new Words.InCells(keys(published.table()));
    }
    if (list instanceof WordList.RowsOf rows) {
      List<Column> columns = blueprint.table(rows.table()).columns();
      return new Words.InCells(column(columns.get(0).reference()));
    }
    return new Words.These(list.constant().orElseThrow());
  }
}
