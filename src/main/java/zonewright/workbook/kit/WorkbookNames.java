package zonewright.workbook.kit;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Expressed;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetNames;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/** What the workbook calls things: tables by title, columns by heading, single cells by a name. */
public final class WorkbookNames implements SpreadsheetNames {
  /** How the heading begins of a column that says beside which row of another table one stands. */
  public static final String PLACE = "Row in ";

  private final Blueprint blueprint;
  private final UnitSystem system;
  private final TableDefinition home;

  /**
   * Makes the names as formulas of one table use them.
   *
   * @param home the table whose cells hold the formulas
   */
  public WorkbookNames(Blueprint blueprint, UnitSystem system, TableDefinition home) {
    this.blueprint = blueprint;
    this.system = system;
    this.home = home;
  }

  /**
   * Returns the heading of the column in which a table alongside another says beside which row of
   * it each row stands.
   */
  public static String placeHeading(Blueprint blueprint, TableDefinition table) {
    return PLACE + blueprint.table(table.other().orElseThrow()).title();
  }

  /**
   * Returns what that column calculates: the row in the same place where it has the name, or the
   * one that has it elsewhere, after somebody sorted; a row in the same place whose name no row
   * here has was renamed. Otherwise there is none.
   */
  String place() {
    TableDefinition other = blueprint.table(home.other().orElseThrow());
    Reference here = home.columns().get(0).reference();
    String names = column(other.columns().get(0).reference());
    String name = ownCell(here);
    String same = "INDEX(%s,%s)".formatted(names, ownPlace());
    return "IF(IFERROR(%s=%s,FALSE),%s,IFERROR(MATCH(%s,%s,0),IF(ISNA(MATCH(%s,%s,0)),%s,NA())))"
        .formatted(
            same,
            name,
            ownPlace(),
            SpreadsheetText.literally(name),
            names,
            SpreadsheetText.literally(same),
            column(here),
            ownPlace());
  }

  private String ownPlace() {
    return "(ROW()-ROW(%s[[#Headers],[%s]]))"
        .formatted(home.title(), heading(home.columns().get(0).reference()));
  }

  private String ownCell(Reference reference) {
    return home.title() + "[[#This Row],[" + heading(reference) + "]]";
  }

  private String placeCell() {
    return home.other().isPresent()
        ? home.title() + "[[#This Row],[" + placeHeading(blueprint, home) + "]]"
        : ownPlace();
  }

  @Override
  public Optional<String> place(Reference reference) {
    TableDefinition table = table(reference);
    if (table.single() || table.equals(home)) {
      return Optional.empty();
    }
    if (table.other().isEmpty()) {
      return Optional.of(placeCell());
    }
    String places = table.title() + "[" + placeHeading(blueprint, table) + "]";
    String mine = placeCell();
    return Optional.of(
        "IF(IFERROR(INDEX(%s,%s)=%s,FALSE),%s,MATCH(%s,%s,0))"
            .formatted(places, ownPlace(), mine, ownPlace(), mine, places));
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
    if (table.single()) {
      return defined(table, blueprint.column(reference));
    }
    return place(reference)
        .map(place -> "INDEX(%s,%s)".formatted(column(reference), place))
        .orElseGet(() -> ownCell(reference));
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
      return new Words.InCells(keys(published.table()), false);
    }
    if (list instanceof WordList.RowsOf rows) {
      List<Column> columns = blueprint.table(rows.table()).columns();
      return new Words.InCells(column(columns.get(0).reference()), true);
    }
    return new Words.These(list.constant().orElseThrow());
  }
}
