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
import zonewright.formula.Expressed;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetSteps;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Book;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
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
  private static final Map<Shape, WorkbookLayout> KNOWN =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Shape, WorkbookLayout> eldest) {
              return size() > MOST_KNOWN;
            }
          });

  private static final int MOST_KNOWN = 4;

  /** What a layout depends on. */
  private record Shape(
      Schema schema, UnitSystem system, Set<Column> wanted, Set<Column> typedInto) {}

  private final Schema schema;
  private final UnitSystem system;
  private final Set<Column> written = new HashSet<>();
  private final Set<Column> typed = new HashSet<>();
  private final Set<Column> filled = new HashSet<>();
  private final Map<Column, List<SheetColumn>> stepsOf = new HashMap<>();
  private final Map<Column, Optional<String>> valueOf = new HashMap<>();
  private final WorkbookNames.Wanted wanted = new WorkbookNames.Wanted();
  private final Map<String, List<SheetColumn>> tables = new LinkedHashMap<>();

  /** Makes the layout of all sheets of a schema, with everything there can be. */
  public WorkbookLayout(Schema schema, UnitSystem system) {
    this(schema, system, column -> true, column -> true);
  }

  /**
   * Makes the layout of all sheets of a book, with everything there can be but blank own values.
   */
  public static WorkbookLayout of(Book book) {
    return of(book, table -> true, column -> true, column -> false);
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
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.columns()) {
        if (used.test(table) || there.test(column) || SheetsInUse.typedInto(book, column)) {
          wanted.add(column);
        }
        if (yours.test(column) || typedInto(book, column)) {
          typed.add(column);
        }
      }
    }
    return KNOWN.computeIfAbsent(
        new Shape(book.schema(), book.system(), wanted, typed),
        shape ->
            new WorkbookLayout(book.schema(), book.system(), wanted::contains, typed::contains));
  }

  private static boolean typedInto(Book book, Column column) {
    Reference reference = column.reference();
    for (int row = 0; row < book.rows(reference.table()); row++) {
      boolean given = book.schema().table(reference.table()).givenNames();
      if (!(given && book.schema().table(reference.table()).columns().get(0).equals(column))
          && !(book.entry(reference, row) instanceof Entry.Blank)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Makes the layout of all sheets of a schema.
   *
   * @param wantedColumns says which columns are to be there; what they rest on comes with them
   * @param typedInto says whether somebody typed into a column: in sheets whose rows are given,
   *     usual values have a cell to put one's own beside them only where somebody did
   */
  private WorkbookLayout(
      Schema schema,
      UnitSystem system,
      Predicate<Column> wantedColumns,
      Predicate<Column> typedInto) {
    this.schema = schema;
    this.system = system;
    for (TableDefinition table : schema.tables()) {
      table.columns().stream().filter(wantedColumns).forEach(this::write);
    }
    Set<Reference> givens = new HashSet<>();
    schema
        .order()
        .forEach(
            column ->
                schema.dependencies(column).ifPresent(needs -> givens.addAll(needs.givens())));
    for (TableDefinition table : schema.tables()) {
      for (Column column : table.columns()) {
        boolean usual =
            table.givenNames()
                && column.role() == Column.Role.DEFAULTED
                && !givens.contains(column.reference())
                && !typedInto.test(column);
        if (table.takesEntries(column) && !usual && written.contains(column)) {
          typed.add(column);
        }
        if (typedInto.test(column)) {
          filled.add(column);
        }
      }
    }
    for (TableDefinition table : schema.tables()) {
      for (Column column : of(table)) {
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

  /** Takes a column in, with all it rests on and the names its words are chosen from. */
  private void write(Column column) {
    if (!written.add(column)) {
      return;
    }
    TableDefinition table = schema.table(column.reference().table());
    table.key().ifPresent(this::write);
    table.other().ifPresent(other -> write(schema.table(other).columns().get(0)));
    schema
        .dependencies(column)
        .ifPresent(
            needs -> {
              needs.cells().forEach(cell -> write(schema.column(cell)));
              needs.columns().forEach(each -> write(schema.column(each)));
            });
    column
        .words()
        .filter(WordList.RowsOf.class::isInstance)
        .map(WordList.RowsOf.class::cast)
        .ifPresent(list -> write(schema.table(list.table()).columns().get(0)));
  }

  /** Says whether a column stands in the workbook. */
  public boolean has(Column column) {
    return written.contains(column);
  }

  /** Says whether something of a table stands in the workbook. */
  public boolean has(TableDefinition table) {
    return table.columns().stream().anyMatch(written::contains);
  }

  /** Says whether words are chosen, or numbers looked up, in a table of the trade. */
  public boolean looksIn(ReferenceTable table) {
    return written.stream()
        .anyMatch(
            column ->
                column.words().equals(Optional.of(new WordList.Published(table)))
                    || schema
                        .dependencies(column)
                        .filter(
                            needs ->
                                needs.published().stream()
                                    .anyMatch(each -> each.table().equals(table)))
                        .isPresent());
  }

  /** Returns the columns of a table that stand in the workbook. */
  private List<Column> of(TableDefinition table) {
    return table.columns().stream().filter(written::contains).toList();
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
      case TYPED -> leads || filled.contains(of) || table.needs(of);
      case VALUE -> leads || AtAGlance.shows(table, of);
      case MISSING -> true;
      default -> false;
    };
  }

  /** Returns what formulas of a table call cells and columns. */
  public WorkbookNames names(TableDefinition home) {
    return new WorkbookNames(schema, system, home, new WorkbookNames.Wanted());
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
    WorkbookNames names = new WorkbookNames(schema, system, table, wanted);
    List<SheetColumn> values = new ArrayList<>();
    Map<Column, List<SheetColumn>> between = new LinkedHashMap<>();
    for (Column column : of(table)) {
      List<SheetColumn> steps = stepsOf.computeIfAbsent(column, any -> new ArrayList<>());
      valueOf
          .computeIfAbsent(column, any -> value(table, column, names, steps))
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
    for (Column column : of(table)) {
      if (typed.contains(column)) {
        lines.add(SheetColumn.typed(column, column.name()));
      }
      values.stream().filter(each -> each.is(SheetColumn.Role.VALUE, column)).forEach(lines::add);
      lines.addAll(rows(column, names));
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
    for (Column column : of(table)) {
      boolean name = table.givenNames() && column.equals(table.columns().get(0));
      if (typed.contains(column) || (name && table.other().isEmpty())) {
        all.add(SheetColumn.typed(column, WorkbookNames.typedHeading(column, system)));
      }
    }
    List<Column> needed = of(table).stream().filter(column -> table.needs(column)).toList();
    if (free && !needed.isEmpty()) {
      wanted.counted.add(table.id());
      all.add(
          SheetColumn.ofRow(
              SheetColumn.Role.MISSING, WorkbookNames.MISSING, missing(table, needed, names)));
    }
    all.addAll(values);
    if (wanted.counted.contains(table.id())) {
      all.add(
          SheetColumn.ofRow(
              SheetColumn.Role.FILLED_IN, WorkbookNames.FILLED_IN, inUse(table, all, names)));
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
    of(table).stream()
        .filter(column -> wanted.checked.contains(column.reference()))
        .forEach(checked::add);
    for (Column column : checked) {
      all.add(
          SheetColumn.of(
              SheetColumn.Role.CHECKED,
              column,
              WorkbookNames.checkedHeading(column),
              checked(table, column, names)));
    }
    of(table).forEach(column -> all.addAll(rows(column, names)));
    between.values().forEach(all::addAll);
    return all;
  }

  private List<SheetColumn> rows(Column column, WorkbookNames names) {
    TableDefinition table = schema.table(column.reference().table());
    // Where a usual word may stand for a blank, it is that word's row; names stand as they are.
    String cell =
        column.role() == Column.Role.INPUT
            ? named(table, column, names)
            : names.cell(column.reference());
    return wanted.rows.stream()
        .filter(row -> row.word().equals(column.reference()))
        .map(
            row ->
                SheetColumn.of(
                    SheetColumn.Role.ROW,
                    column,
                    row.heading(),
                    SpreadsheetText.match(cell, row.list())))
        .toList();
  }

  private String named(TableDefinition table, Column column, WorkbookNames names) {
    return table.takesEntries(column)
        ? names.typed(column.reference())
        : names.own(column.heading(system));
  }

  /** The first column of those needed in which nothing good was typed. */
  private String missing(TableDefinition table, List<Column> needed, WorkbookNames names) {
    String first = WorkbookNames.escaped(WorkbookNames.checkedHeading(needed.get(0)));
    String last =
        WorkbookNames.escaped(WorkbookNames.checkedHeading(needed.get(needed.size() - 1)));
    String title = table.title();
    String lacks = "ISERROR(%s[[#This Row],[%s]:[%s]])".formatted(title, first, last);
    return "IF(%s*SUMPRODUCT(--%s),LOOKUP(2,1/%s,%s[[#Headers],[%s]:[%s]]),\"\")"
        .formatted(names.own(WorkbookNames.FILLED_IN), lacks, lacks, title, first, last);
  }

  private String inUse(TableDefinition table, List<SheetColumn> all, WorkbookNames names) {
    if (table.other().isPresent()) {
      TableDefinition other = schema.table(table.other().get());
      wanted.counted.add(other.id());
      return "INDEX(%s,%s)"
          .formatted(
              WorkbookNames.whole(other, WorkbookNames.FILLED_IN),
              names.own(names.joinHeading(other.id())));
    }
    List<SheetColumn> entered =
        all.stream().filter(each -> each.role() == SheetColumn.Role.TYPED).toList();
    return "IF(COUNTA(%s[[#This Row],[%s]:[%s]])>0,1,0)"
        .formatted(
            table.title(),
            WorkbookNames.escaped(entered.get(0).heading()),
            WorkbookNames.escaped(entered.get(entered.size() - 1).heading()));
  }

  /** Returns what was typed where it is good, else an error. */
  private String checked(TableDefinition table, Column column, WorkbookNames names) {
    String cell = names.typed(column.reference());
    if (column.content() == Column.Content.CHOICE) {
      WordList list = names.list(column).orElseThrow();
      return list instanceof WordList.Fixed
          ? "IF(SUMPRODUCT(--(%s=%s)),%s,NA())"
              .formatted(WorkbookNames.limit(table, column, "words"), cell, cell)
          : "IF(%s,%s)".formatted(names.row(column.reference()), cell);
    }
    Optional<Bounds> bounds = column.bounds();
    if (bounds.isEmpty()) {
      return "IF(ISNUMBER(%s),%s,NA())".formatted(cell, cell);
    }
    String within = "%s,%s".formatted(cell, WorkbookNames.limit(table, column, "from"));
    if (!Double.isInfinite(bounds.get().high())) {
      within += ",%s,%s".formatted(cell, WorkbookNames.limit(table, column, "to"));
    }
    String whole = bounds.get().whole() ? "*(%s=INT(%s))".formatted(cell, cell) : "";
    return "IF(COUNTIFS(%s)%s,%s,NA())".formatted(within, whole, cell);
  }

  /** The formula of the value; none where what is typed is all there is. */
  private Optional<String> value(
      TableDefinition table, Column column, WorkbookNames names, List<SheetColumn> between) {
    boolean single = table.single();
    if (column.role() == Column.Role.INPUT) {
      return single && column.content() != Column.Content.WORDS
          ? Optional.of(checked(table, column, names))
          : Optional.empty();
    }
    if (table.givenNames() && column.equals(table.columns().get(0))) {
      return Optional.empty();
    }
    Formula plain =
        Expressed.in(column.formula().orElseThrow(), system, column.kind().unit(system));
    boolean own = typed.contains(column);
    if (!own && !(plain instanceof Formula.Constant)) {
      return Optional.of(stepped(column, plain, names, between));
    }
    String usual;
    if (plain instanceof Formula.Constant) {
      usual = WorkbookNames.limit(table, column, "usual");
    } else {
      String text = stepped(column, plain, names, between);
      String found = WorkbookNames.usualHeading(column);
      between.add(SheetColumn.of(SheetColumn.Role.USUAL, column, found, text));
      usual = single ? WorkbookNames.defined(table, found) : names.own(found);
    }
    if (!own) {
      return Optional.of(usual);
    }
    String heading = WorkbookNames.checkedHeading(column);
    between.add(
        SheetColumn.of(SheetColumn.Role.CHECKED, column, heading, checked(table, column, names)));
    return Optional.of(
        "IF(%s=\"\",%s,%s)"
            .formatted(
                names.typed(column.reference()),
                usual,
                single ? WorkbookNames.defined(table, heading) : names.own(heading)));
  }

  /** The formula of a column's equation; the steps on the way there go with the others. */
  private String stepped(
      Column column, Formula plain, WorkbookNames names, List<SheetColumn> between) {
    if (column.content() != Column.Content.CHOICE) {
      return inSteps(column, plain, names, between);
    }
    List<String> fixed = column.words().orElseThrow().constant().orElse(List.of());
    if (inWords(plain, fixed)) {
      return inSteps(column, worded(column, plain, fixed), names, between);
    }
    Reference position = WorkbookNames.step(column, between.size());
    String text = inSteps(column, plain, names, between);
    if (between.isEmpty() || text.length() > names.cell(position).length()) {
      position = WorkbookNames.step(column, between.size());
      between.add(SheetColumn.of(SheetColumn.Role.STEP, column, position.name(), text));
      text = names.cell(position);
    }
    WordList list = names.list(column).orElseThrow();
    TableDefinition table = schema.table(column.reference().table());
    String words = names.words(list).orElseGet(() -> WorkbookNames.limit(table, column, "words"));
    return "INDEX(%s,%s+1)".formatted(words, text);
  }

  private static String inSteps(
      Column column, Formula plain, WorkbookNames names, List<SheetColumn> between) {
    SpreadsheetSteps steps =
        SpreadsheetSteps.of(plain, names, step -> WorkbookNames.step(column, step));
    for (int i = 0; i < steps.steps().size(); i++) {
      between.add(
          SheetColumn.of(
              SheetColumn.Role.STEP,
              column,
              WorkbookNames.stepHeading(column, i),
              SpreadsheetText.of(steps.steps().get(i), names)));
    }
    return SpreadsheetText.of(steps.last(), names);
  }

  /** Whether each outcome of a choice is a word that can be written down, or found in a list. */
  private static boolean inWords(Formula plain, List<String> fixed) {
    if (plain instanceof Formula.Choose choose) {
      return inWords(choose.then(), fixed) && inWords(choose.otherwise(), fixed);
    }
    if (plain instanceof Formula.Cell cell) {
      return cell.reference().kind() == QuantityKind.CHOICE;
    }
    return plain instanceof Formula.Nothing
        || plain instanceof Formula.Pick
        || plain instanceof Formula.RowLookup
        || (plain instanceof Formula.Constant && !fixed.isEmpty());
  }

  private static Formula worded(Column column, Formula plain, List<String> fixed) {
    if (plain instanceof Formula.Choose choose) {
      return new Formula.Choose(
          choose.condition(),
          worded(column, choose.then(), fixed),
          worded(column, choose.otherwise(), fixed));
    }
    return plain instanceof Formula.Constant constant
        ? new Formula.Cell(WorkbookNames.word(column, fixed.get((int) constant.value())))
        : plain;
  }

  /**
   * The limits of what is typed into a column, in the units of the system, and what stands for a
   * blank.
   *
   * @param least the least number; not a number where there is none
   * @param most the greatest number; not a number where there is none
   * @param usual what stands for a blank: a number or a word; none where it is calculated
   */
  public record Limits(
      TableDefinition table, Column column, double least, double most, Optional<Object> usual) {}

  /** Returns the limits of all columns that have some, in the order of the sheets. */
  public List<Limits> limits() {
    List<Limits> all = new ArrayList<>();
    for (TableDefinition table : schema.tables()) {
      for (Column column : of(table)) {
        if (!column.takesEntries()) {
          continue;
        }
        Optional<Bounds> bounds = column.bounds();
        Optional<Object> usual = usual(column);
        if (usual.isPresent() || (typed.contains(column) && bounds.isPresent())) {
          double low = bounds.map(each -> each.low(column.kind(), system)).orElse(Double.NaN);
          double high = bounds.map(each -> each.high(column.kind(), system)).orElse(Double.NaN);
          all.add(
              new Limits(table, column, low, Double.isInfinite(high) ? Double.NaN : high, usual));
        }
      }
    }
    return all;
  }

  private Optional<Object> usual(Column column) {
    if (column.role() != Column.Role.DEFAULTED) {
      return Optional.empty();
    }
    if (column.usualWord().isPresent()) {
      return Optional.of(column.usualWord().get());
    }
    Formula plain =
        Expressed.in(column.formula().orElseThrow(), system, column.kind().unit(system));
    return plain instanceof Formula.Constant constant
        ? Optional.of(constant.value())
        : Optional.empty();
  }

  /** Returns the columns whose words are a few of the program's own, each with its words. */
  public Map<Column, List<String>> fixedWords() {
    Map<Column, List<String>> all = new LinkedHashMap<>();
    for (TableDefinition table : schema.tables()) {
      for (Column column : of(table)) {
        if (column.content() == Column.Content.CHOICE
            && names(table).list(column).orElseThrow() instanceof WordList.Fixed fixed) {
          all.put(column, fixed.words());
        }
      }
    }
    return all;
  }
}
