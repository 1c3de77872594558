package zonewright.workbook.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import zonewright.design.AtAGlance;
import zonewright.design.SheetsInUse;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/**
 * What stands in which column of which sheet, and with which formula.
 *
 * <p>A person types into cells that hold nothing else. What was typed is checked once, in a cell
 * beside it; a word is looked for once in its list; a formula is the equation. A usual value is
 * used where its own cell is blank. Typed columns come first, then what follows from them, then, in
 * a closed group, the cells in between.
 */
public final class WorkbookLayout {
  /** Layouts take a while to work out, and a design that is saved again mostly has the same. */
  private static final Map<Object, WorkbookLayout> KNOWN =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, WorkbookLayout> eldest) {
              return size() > MOST_KNOWN;
            }
          });

  private static final int MOST_KNOWN = 6;

  /** What a layout of everything depends on. */
  private record Whole(Schema schema, UnitSystem system) {}

  /** What a layout of what is used depends on. */
  private record Shape(
      Schema schema,
      UnitSystem system,
      Set<Column> wanted,
      Set<Column> typedInto,
      Set<Column> blank,
      Set<Column> there,
      Set<String> empty) {}

  private final Schema schema;
  private final UnitSystem system;
  private final Equations equations;
  private final WorkbookColumns columns;
  private final CellFormulas formulas;
  private final Map<Column, List<SheetColumn>> stepsOf = new HashMap<>();
  private final Map<Column, Optional<String>> valueOf = new HashMap<>();
  private final WorkbookNames.Wanted wanted = new WorkbookNames.Wanted();
  private final Map<String, List<SheetColumn>> tables = new LinkedHashMap<>();

  /** Returns the layout of all sheets of a schema, with everything there can be. */
  public static WorkbookLayout of(Schema schema, UnitSystem system) {
    return KNOWN.computeIfAbsent(
        new Whole(schema, system),
        any ->
            new WorkbookLayout(
                schema,
                system,
                new Equations(schema, Set.of(), Set.of()),
                column -> true,
                column -> true));
  }

  /**
   * Makes the layout of all sheets of a book, with everything there can be but blank own values.
   */
  public static WorkbookLayout of(Book book) {
    Set<Column> typed = new HashSet<>();
    book.schema().tables().stream()
        .flatMap(table -> table.columns().stream())
        .filter(column -> WorkbookColumns.typedInto(book, column))
        .forEach(typed::add);
    return new WorkbookLayout(
        book.schema(),
        book.system(),
        new Equations(book.schema(), Set.of(), Set.of()),
        column -> true,
        typed::contains);
  }

  /**
   * Makes the layout of the sheets of a book that are used, and of what those rest on.
   *
   * @param used says which sheets are used
   * @param there says which columns stand in a file already
   * @param yours says for which columns cells of one's own values stand there
   */
  public static WorkbookLayout of(
      Book book,
      Predicate<TableDefinition> used,
      Predicate<Column> there,
      Predicate<Column> yours) {
    Set<Column> wanted = new HashSet<>();
    Set<Column> typed = new HashSet<>();
    Set<Column> blank = new HashSet<>();
    Set<Column> standing = new HashSet<>();
    Set<String> empty = new HashSet<>();
    for (TableDefinition table : book.schema().tables()) {
      boolean stands = table.columns().stream().anyMatch(there);
      if (!stands && !used.test(table) && book.rows(table.id()) == 0) {
        empty.add(table.id());
      }
      for (Column column : table.columns()) {
        if (there.test(column)) {
          standing.add(column);
        }
        boolean filled = WorkbookColumns.typedInto(book, column);
        if (used.test(table) || there.test(column) || SheetsInUse.typedInto(book, column)) {
          wanted.add(column);
        }
        if (yours.test(column) || filled) {
          typed.add(column);
        } else if (!there.test(column) && mayLack(table, column, used)) {
          blank.add(column);
        }
      }
    }
    return KNOWN.computeIfAbsent(
        new Shape(book.schema(), book.system(), wanted, typed, blank, standing, empty),
        shape -> {
          Equations equations = new Equations(book.schema(), blank, empty);
          return new WorkbookLayout(
              book.schema(),
              book.system(),
              equations,
              column ->
                  wanted.contains(column)
                      && (standing.contains(column) || !leftOut(book.schema(), equations, column)),
              typed::contains);
        });
  }

  /** Whether a column in which nothing is typed need not stand in the workbook. */
  private static boolean mayLack(
      TableDefinition table, Column column, Predicate<TableDefinition> used) {
    return column.role() == Column.Role.INPUT
        && column.content() != Column.Content.WORDS
        && table.takesEntries(column)
        && !table.single()
        && !(used.test(table) && table.needs(column));
  }

  /** Whether a reader of this garden has no use for a column. */
  private static boolean leftOut(Schema schema, Equations equations, Column column) {
    TableDefinition table = schema.table(column.reference().table());
    return equations.idle(column) && !table.single() && !AtAGlance.lists(table, column);
  }

  private WorkbookLayout(
      Schema schema,
      UnitSystem system,
      Equations equations,
      Predicate<Column> wantedColumns,
      Predicate<Column> typedInto) {
    this.schema = schema;
    this.system = system;
    this.equations = equations;
    this.columns = new WorkbookColumns(schema, equations, wantedColumns, typedInto);
    this.formulas = new CellFormulas(schema, system, equations, columns, wanted);
    for (TableDefinition table : schema.tables()) {
      for (Column column : columns.of(table)) {
        if (!table.single() && table.needs(column)) {
          wanted.checked.add(column.reference());
        }
      }
    }
    int before = -1;
    while (before != wanted.size()) {
      // What one cell asks for may ask for more.
      before = wanted.size();
      for (TableDefinition table : schema.tables()) {
        tables.put(table.id(), has(table) ? laidOut(table) : List.of());
      }
    }
  }

  /** Says whether a column stands in the workbook. */
  public boolean has(Column column) {
    return columns.has(column);
  }

  /** Says whether something of a table stands in the workbook. */
  public boolean has(TableDefinition table) {
    return table.columns().stream().anyMatch(columns::has);
  }

  /** Says whether words are chosen, or numbers looked up, in a table of the trade. */
  public boolean looksIn(ReferenceTable table) {
    return columns.all().stream()
        .anyMatch(
            column ->
                column.words().equals(Optional.of(new WordList.Published(table)))
                    || equations
                        .needs(column)
                        .filter(
                            needs ->
                                needs.published().stream()
                                    .anyMatch(each -> each.table().equals(table)))
                        .isPresent());
  }

  /** Returns the columns of a table's sheet in their order, or the lines of a one-row sheet. */
  public List<SheetColumn> columns(TableDefinition table) {
    return tables.get(table.id());
  }

  /** Returns the column in which a value stands: what is calculated, or used, or only typed. */
  public SheetColumn shown(Column column) {
    List<SheetColumn> all = tables.get(column.reference().table());
    return all.stream()
        .filter(each -> each.is(SheetColumn.Role.VALUE, column))
        .findFirst()
        .orElseGet(
            () ->
                all.stream()
                    .filter(each -> each.is(SheetColumn.Role.TYPED, column))
                    .findFirst()
                    .orElseThrow());
  }

  /**
   * Says whether a column of a table's sheet is on view; the others are behind a sign that opens
   * them. What must be typed is on view, what may be typed where somebody did, and the results that
   * are looked at first.
   */
  public boolean open(TableDefinition table, SheetColumn column) {
    Column of = column.column().orElse(null);
    boolean leads = of != null && of.equals(table.columns().get(0));
    return switch (column.role()) {
      case TYPED ->
          leads
              || columns.filled(of)
              || table.needs(of)
              || (table.single() && AtAGlance.shows(table, of));
      case VALUE -> leads || AtAGlance.shows(table, of);
      case MISSING -> true;
      default -> false;
    };
  }

  /**
   * Says whether a person may type into a column of a sheet with many rows: into cells that hold
   * nothing else, or over a usual value that has none beside it.
   */
  public boolean takesTyping(TableDefinition table, SheetColumn column) {
    Column of = column.column().filter(table::takesEntries).orElse(null);
    return of != null
        && switch (column.role()) {
          case TYPED -> true;
          case VALUE -> of.role() == Column.Role.DEFAULTED && !columns.typed(of);
          default -> false;
        };
  }

  /** Returns what formulas of a table call cells and columns. */
  public WorkbookNames names(TableDefinition home) {
    return new WorkbookNames(schema, system, home, columns::has, new WorkbookNames.Wanted());
  }

  /** Returns the formula in which the value of a column stands. */
  public Optional<String> formula(Column column) {
    return shown(column).formula();
  }

  /** Returns the schema. */
  public Schema schema() {
    return schema;
  }

  /** Returns the unit system. */
  public UnitSystem system() {
    return system;
  }

  private List<SheetColumn> laidOut(TableDefinition table) {
    WorkbookNames names = new WorkbookNames(schema, system, table, columns::has, wanted);
    List<SheetColumn> values = new ArrayList<>();
    Map<Column, List<SheetColumn>> between = new LinkedHashMap<>();
    for (Column column : columns.of(table)) {
      List<SheetColumn> steps = stepsOf.computeIfAbsent(column, any -> new ArrayList<>());
      valueOf
          .computeIfAbsent(column, any -> formulas.value(table, column, names, steps))
          .ifPresent(
              formula ->
                  values.add(
                      SheetColumn.of(
                          SheetColumn.Role.VALUE, column, column.heading(system), formula)));
      between.put(column, steps);
    }
    return table.single()
        ? lines(table, names, values, between)
        : sheet(table, names, values, between);
  }

  private List<SheetColumn> lines(
      TableDefinition table,
      WorkbookNames names,
      List<SheetColumn> values,
      Map<Column, List<SheetColumn>> between) {
    List<SheetColumn> lines = new ArrayList<>();
    for (Column column : columns.of(table)) {
      if (columns.typed(column)) {
        lines.add(SheetColumn.typed(column, column.name()));
      }
      values.stream().filter(each -> each.is(SheetColumn.Role.VALUE, column)).forEach(lines::add);
      lines.addAll(formulas.rows(column, names));
      lines.addAll(between.get(column));
    }
    return lines;
  }

  private List<SheetColumn> sheet(
      TableDefinition table,
      WorkbookNames names,
      List<SheetColumn> values,
      Map<Column, List<SheetColumn>> between) {
    List<SheetColumn> all = new ArrayList<>();
    boolean free = table.rows() instanceof TableDefinition.Rows.Free;
    if (table.other().isPresent()) {
      String heading = table.columns().get(0).heading(system);
      TableDefinition other = schema.table(table.other().get());
      wanted.joins.add(new WorkbookNames.Join(table.id(), other.id()));
      String leading =
          "INDEX(%s,%s)".formatted(names.names(other), names.own(names.joinHeading(other.id())));
      all.add(SheetColumn.of(SheetColumn.Role.VALUE, table.columns().get(0), heading, leading));
    }
    for (Column column : columns.of(table)) {
      boolean name = table.givenNames() && column.equals(table.columns().get(0));
      if (columns.typed(column) || (name && table.other().isEmpty())) {
        all.add(SheetColumn.typed(column, WorkbookNames.typedHeading(column, system)));
      }
    }
    List<Column> needed = columns.of(table).stream().filter(column -> table.needs(column)).toList();
    if (free && !needed.isEmpty()) {
      wanted.counted.add(table.id());
      all.add(
          SheetColumn.ofRow(
              SheetColumn.Role.MISSING,
              WorkbookNames.MISSING,
              formulas.missing(table, needed, names)));
    }
    all.addAll(values);
    if (wanted.counted.contains(table.id())) {
      all.add(
          SheetColumn.ofRow(
              SheetColumn.Role.FILLED_IN,
              WorkbookNames.FILLED_IN,
              formulas.inUse(table, all, names)));
    }
    boolean joined =
        wanted.joins.stream()
            .anyMatch(join -> join.of().equals(table.id()) || join.to().equals(table.id()));
    if (joined) {
      all.add(
          new SheetColumn(
              SheetColumn.Role.IDENTITY,
              Optional.empty(),
              WorkbookNames.IDENTITY,
              Optional.empty()));
    }
    wanted.joins.stream()
        .filter(join -> join.of().equals(table.id()))
        .map(
            join ->
                SheetColumn.ofRow(
                    SheetColumn.Role.JOIN,
                    names.joinHeading(join.to()),
                    "MATCH(%s,%s,0)"
                        .formatted(
                            names.own(WorkbookNames.IDENTITY),
                            WorkbookNames.whole(schema.table(join.to()), WorkbookNames.IDENTITY))))
        .forEach(all::add);
    Set<Column> checked = new LinkedHashSet<>(needed);
    columns.of(table).stream()
        .filter(column -> wanted.checked.contains(column.reference()))
        .forEach(checked::add);
    for (Column column : checked) {
      all.add(
          SheetColumn.of(
              SheetColumn.Role.CHECKED,
              column,
              WorkbookNames.checkedHeading(column),
              formulas.checked(table, column, names)));
    }
    columns.of(table).forEach(column -> all.addAll(formulas.rows(column, names)));
    between.values().forEach(all::addAll);
    return all;
  }

  /** Returns the limits of what is typed. */
  public TypingLimits limits() {
    return new TypingLimits(this, columns);
  }
}
