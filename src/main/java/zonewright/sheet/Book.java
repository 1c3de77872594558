package zonewright.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import zonewright.formula.Condition;
import zonewright.formula.Dependencies;
import zonewright.formula.Explainer;
import zonewright.formula.Expressed;
import zonewright.formula.FactorWords;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.formula.PrintedText;
import zonewright.formula.Reference;
import zonewright.formula.Rewriter;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/**
 * Tables that calculate: what was entered, what follows, and why not where nothing does.
 *
 * <p>Changes only by {@link #perform}, {@link #undo} and {@link #redo}; listeners hear once, after
 * all is calculated. Serves one thread at a time.
 */
public final class Book {
  private final SchemaSource source;
  private final Contents contents;
  private final EditHistory journal = new EditHistory();
  private final List<Consumer<Changes>> listeners = new CopyOnWriteArrayList<>();

  /** Why cells have no number, as far as somebody asked; each is the reason of many others. */
  private final Map<Reference, Map<Integer, Outcome>> reasons = new HashMap<>();

  private final Map<Formula.Aggregate, Outcome> gathered = new HashMap<>();
  private final RowsByWords rowsByWords = new RowsByWords(this);
  private final Map<Reference, Integer> positions = new HashMap<>();
  private UnaryOperator<Edit> completion = UnaryOperator.identity();
  private Schema schema;
  private Calculation calculation;
  private Wording wording;

  /** Starts a book with blank rows where the tables have fixed ones. */
  public Book(Schema schema, UnitSystem system) {
    this(SchemaSource.always(schema), system);
  }

  /** Starts a book with blank rows, whose columns follow from what is entered. */
  public Book(SchemaSource source, UnitSystem system) {
    this(source, new Contents(source.declared(), system));
  }

  /** Starts a book of its own with what another held; its edits are not carried over. */
  public Book(Schema schema, BookSnapshot snapshot) {
    this(SchemaSource.always(schema), snapshot);
  }

  /** Starts a book of its own with what another held, whose columns follow from that. */
  public Book(SchemaSource source, BookSnapshot snapshot) {
    this(source, new Contents(source.declared(), snapshot));
  }

  private Book(SchemaSource source, Contents contents) {
    this.source = source;
    this.contents = contents;
    takeSchema(source.schema(contents.snapshot(source.definedBy())));
  }

  private void takeSchema(Schema schema) {
    this.schema = schema;
    this.wording = new Wording(schema, contents.system());
    this.calculation = new Calculation(schema, contents);
    positions.clear();
    calculation.rebuild();
  }

  /**
   * Returns a book of its own with the same tables, holding something else: what another moment of
   * this one held, or what would be.
   */
  public Book another(BookSnapshot snapshot) {
    return new Book(source, snapshot);
  }

  /** Returns what tables and columns there are, as things stand; an edit may change them. */
  public Schema schema() {
    return schema;
  }

  /** Returns what tables and columns there always are, whatever is entered. */
  public Schema declared() {
    return source.declared();
  }

  /** Returns what was entered. */
  public Contents contents() {
    return contents;
  }

  /** Returns what was entered as it is now, for another thread to work on. */
  public BookSnapshot snapshot() {
    return contents.snapshot();
  }

  /** Returns the engine, with everything calculated. */
  public Calculation calculation() {
    calculation.settle();
    return calculation;
  }

  /**
   * Calculates whatever nobody asked for yet; done by itself before the first edit that is noted.
   */
  public void settle() {
    calculation.settle();
  }

  /** Returns the edits done and taken back. */
  public EditHistory journal() {
    return journal;
  }

  /** Returns the unit system of all numbers. */
  public UnitSystem system() {
    return contents.system();
  }

  /**
   * Hears of every change, once per edit, after all is calculated.
   *
   * @return what ends the hearing
   */
  public Runnable listen(Consumer<Changes> listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  /**
   * Has each edit that is performed from now on completed by what must come with it in the same
   * step.
   *
   * @param by gives the whole of an edit, before it is done
   */
  public void completeEdits(UnaryOperator<Edit> by) {
    completion = by;
  }

  /** Returns what would be entered after an edit. */
  public BookSnapshot after(Edit edit) {
    return contents.after(edit);
  }

  /** Does an edit and notes it; one that changes nothing is dropped. */
  public void perform(Edit edit) {
    if (edit.changesNothing()) {
      return;
    }
    calculation.settle();
    Edit whole = completion.apply(edit);
    journal.note(whole);
    apply(whole);
  }

  /**
   * Does an edit that belongs to the start of the book: it is not noted and cannot be taken back.
   */
  public void start(Edit edit) {
    apply(edit);
  }

  /** Takes the last edit back, if there is one. */
  public void undo() {
    journal
        .toUndo()
        .ifPresent(
            edit -> {
              journal.undo();
              apply(edit.inverse());
            });
  }

  /** Does again what was taken back last, if anything. */
  public void redo() {
    journal
        .toRedo()
        .ifPresent(
            edit -> {
              journal.redo();
              apply(edit);
            });
  }

  private void apply(Edit edit) {
    BookSnapshot defining = contents.snapshot(source.definedBy());
    TouchedCells touched = new TouchedCells();
    contents.apply(edit, touched);
    boolean columns = takeColumns(defining);
    boolean everything = columns || touched.unitsChanged() || !calculation.settled();
    Map<Reference, BitSet> changed = new HashMap<>();
    if (!everything) {
      touched.tellTo(calculation, changed);
      calculation.run(changed);
    } else if (!columns) {
      calculation.rebuild();
    }
    reasons.clear();
    gathered.clear();
    rowsByWords.clear();
    calculation.forgetParts();
    Changes changes = new Changes(edit, columns, everything, touched.tables(), changed);
    listeners.forEach(listener -> listener.accept(changes));
  }

  /** Takes the columns that follow from what is entered now; says whether they are others. */
  private boolean takeColumns(BookSnapshot before) {
    BookSnapshot now = contents.snapshot(source.definedBy());
    Schema follows = now.equals(before) ? schema : source.schema(now);
    if (follows.equals(schema)) {
      return false;
    }
    boolean settled = calculation.settled();
    takeSchema(follows);
    if (settled) {
      calculation.settle();
    }
    return true;
  }

  /** Returns how many rows a table has. */
  public int rows(String table) {
    return contents.count(table);
  }

  /**
   * Says whether a row counts in sums: something is entered in it, or in the row it stands beside.
   */
  public boolean counts(String table, int row) {
    return calculation.counts(table, row);
  }

  /** Returns what was entered in a cell; a blank for calculated cells. */
  public Entry entry(Reference column, int row) {
    return contents.row(column.table(), row).entry(position(column));
  }

  /** Returns what a person put on a cell. */
  public Remark remark(Reference column, int row) {
    return contents.row(column.table(), row).remark(column.column());
  }

  /** Returns where a column stands in its table, counted from 0. */
  public int position(Reference column) {
    return positions.computeIfAbsent(
        column, any -> schema.table(column.table()).columns().indexOf(schema.column(column)));
  }

  /** Returns the rows of tables by what they hold. */
  RowsByWords rowsBy() {
    return rowsByWords;
  }

  /** Returns what a part of a formula comes to in a row; see {@link Calculation#part}. */
  double part(Formula plain, String table, int row) {
    return calculation.part(plain, table, row);
  }

  /** Returns what a whole column comes to, found once until the next edit. */
  Outcome gathered(Formula.Aggregate gather, Supplier<Outcome> found) {
    Outcome known = gathered.get(gather);
    if (known == null) {
      known = found.get();
      gathered.put(gather, known);
    }
    return known;
  }

  /**
   * Returns the number in a cell, in the unit of its column, or not-a-number; of a choice, its
   * position in the list.
   */
  public double number(Reference column, int row) {
    return calculation.number(column, row);
  }

  /** Returns what a cell holds: a number, words, a blank, or why there is none. */
  public Outcome outcome(Reference reference, int row) {
    Column column = schema.column(reference);
    boolean typed = column.takesEntries() && !(entry(reference, row) instanceof Entry.Blank);
    if (typed || column.role() == Column.Role.INPUT) {
      return Entries.outcome(
          column,
          entry(reference, row),
          calculation.list(column),
          system(),
          cellName(reference, row));
    }
    double number = number(reference, row);
    if (Double.isNaN(number)) {
      return reason(column, row);
    }
    return column.content() == Column.Content.CHOICE
        ? new Outcome.Words(calculation.list(column).get((int) number))
        : new Outcome.Amount(number);
  }

  private static String sum(Entry entry) {
    return entry instanceof Entry.Figure figure && !figure.sum().isEmpty()
        ? " as " + figure.sum()
        : "";
  }

  private Outcome reason(Column column, int row) {
    Map<Integer, Outcome> known =
        reasons.computeIfAbsent(column.reference(), any -> new HashMap<>());
    Outcome reason = known.get(row);
    if (reason == null) {
      reason =
          Explainer.outcome(
              calculation.plain(column.reference()),
              new BookRow(this, column.reference().table(), row),
              cellName(column.reference(), row));
      known.put(row, reason);
    }
    return reason;
  }

  private Explainer.Explanation explain(Column column, int row, BookRow known) {
    Reference reference = column.reference();
    return Explainer.explain(calculation.plain(reference), known, cellName(reference, row));
  }

  /** Says whether a condition of plain numbers holds in a row; not where that cannot be said. */
  public boolean holds(Condition plain, String table, int row) {
    Reference first = schema.table(table).columns().get(0).reference();
    return Explainer.holds(plain, new BookRow(this, table, row), cellName(first, row));
  }

  /** Returns a calculated cell's formula in names, by the way its choices take in this row. */
  public String equationTaken(Reference reference, int row) {
    Formula formula = schema.column(reference).formula().orElseThrow();
    return PrintedText.of(
        Rewriter.taken(
            formula, condition -> holds(Expressed.in(condition, system()), reference.table(), row)),
        reference.kind());
  }

  /** Returns how a cell comes about. */
  public Working working(Reference reference, int row) {
    Column column = schema.column(reference);
    Outcome outcome = outcome(reference, row);
    boolean typed = column.takesEntries() && !(entry(reference, row) instanceof Entry.Blank);
    if (typed || column.role() == Column.Role.INPUT) {
      String origin =
          column.role() == Column.Role.DEFAULTED
              ? "typed over the default"
              : typed ? "typed" + sum(entry(reference, row)) : "blank";
      return Working.plain(
          cellName(reference, row), column, outcome, shown(reference, outcome), origin, List.of());
    }
    if (column.usualWord().isPresent()) {
      return Working.plain(
          cellName(reference, row),
          column,
          outcome,
          shown(reference, outcome),
          "default",
          List.of("“" + column.usualWord().get() + "” unless another is chosen"));
    }
    BookRow known = new BookRow(this, reference.table(), row);
    Explainer.Explanation explanation = explain(column, row, known);
    Formula formula = column.formula().orElseThrow();
    List<Working.Input> inputs = inputs(Dependencies.of(formula), reference.table(), row, known);
    boolean decided =
        !(explanation.outcome() instanceof Outcome.Missing
            || explanation.outcome() instanceof Outcome.Refused);
    List<String> notes = new ArrayList<>(explanation.notes());
    FactorWords.of(explanation.constants(), formula).forEach(notes::add);
    List<String> sources = new ArrayList<>(explanation.sources());
    if (!column.source().isEmpty()) {
      sources.add(0, column.source());
    }
    return new Working(
        cellName(reference, row),
        column,
        explanation.outcome(),
        shown(reference, explanation.outcome()),
        column.equation().orElseThrow(),
        decided ? equationTaken(reference, row) : column.equation().orElseThrow(),
        explanation.numbers(),
        inputs,
        notes,
        sources,
        rests(column, row),
        column.role() == Column.Role.DEFAULTED ? "default" : "calculated",
        cases(formula, calculation.plain(reference), reference, row, explanation.outcome()));
  }

  /** Returns the cases of a formula that chooses among more than two. */
  private List<Working.Case> cases(
      Formula declared, Formula plain, Reference reference, int row, Outcome outcome) {
    List<Working.Case> cases = new ArrayList<>();
    boolean open = !(outcome instanceof Outcome.Missing || outcome instanceof Outcome.Refused);
    Formula said = declared;
    Formula meant = plain;
    while (said instanceof Formula.Choose choose && meant instanceof Formula.Choose own) {
      boolean taken = open && holds(own.condition(), reference.table(), row);
      open &= !taken;
      String then = PrintedText.of(choose.then(), reference.kind());
      cases.add(new Working.Case(PrintedText.of(choose.condition()), then, taken));
      said = choose.otherwise();
      meant = own.otherwise();
    }
    cases.add(new Working.Case("otherwise", PrintedText.of(said, reference.kind()), open));
    return cases.size() > 2 ? cases : List.of();
  }

  /** Returns the cells that say where values come from, of those that counted on the way here. */
  private List<Working.Input> rests(Column column, int row) {
    Set<Reference> origins = new LinkedHashSet<>();
    origins(column, row, origins, new HashSet<>());
    return origins.stream()
        .map(cell -> new Working.Input(schema.column(cell), 0, shown(cell, outcome(cell, 0)), true))
        .toList();
  }

  private void origins(
      Column column, int row, Set<Reference> origins, Set<Outcome.CellName> visited) {
    Set<Reference> possible = schema.origins(column);
    Outcome.CellName cell = cellName(column.reference(), row);
    if (origins.containsAll(possible) || !visited.add(cell)) {
      return;
    }
    column.originIn().ifPresent(origins::add);
    boolean typed =
        column.takesEntries() && !(entry(column.reference(), row) instanceof Entry.Blank);
    if (typed || column.formula().isEmpty()) {
      return;
    }
    BookRow known = new BookRow(this, column.reference().table(), row);
    explain(column, row, known);
    Dependencies needs = schema.dependencies(column).orElseThrow();
    needs.cells().stream()
        .filter(known::wasRead)
        .forEach(
            need ->
                origins(
                    schema.column(need),
                    schema.sameRows(need.table(), column.reference().table()) ? row : 0,
                    origins,
                    visited));
    needs.columns().stream()
        .filter(known::wasRead)
        .forEach(need -> origins.addAll(schema.origins(schema.column(need))));
  }

  private List<Working.Input> inputs(Dependencies needs, String table, int row, BookRow known) {
    List<Working.Input> inputs = new ArrayList<>();
    for (Reference cell : needs.cells()) {
      int at = schema.sameRows(cell.table(), table) ? row : 0;
      String held = shown(cell, outcome(cell, at));
      inputs.add(new Working.Input(schema.column(cell), at, held, known.wasRead(cell)));
    }
    Set<Reference> wholes = new LinkedHashSet<>(needs.columns());
    for (Reference whole : wholes) {
      String words =
          "all " + rows(whole.table()) + " rows of " + schema.table(whole.table()).title();
      inputs.add(new Working.Input(schema.column(whole), -1, words, known.wasRead(whole)));
    }
    return inputs;
  }

  /** Returns the words a column of choices can hold, as things stand. */
  public List<String> choices(Column column) {
    return calculation.list(column);
  }

  /** Returns a cell as a person would name it. */
  public Outcome.CellName cellName(Reference column, int row) {
    TableDefinition table = schema.table(column.table());
    return new Outcome.CellName(rowName(table, row), column);
  }

  private String rowName(TableDefinition table, int row) {
    if (table.single()) {
      return table.title();
    }
    Entry name = contents.row(table.id(), row).entry(0);
    return name instanceof Entry.Words words
        ? table.rowWord() + " " + words.text()
        : "the " + table.rowWord() + " in row " + (row + 1);
  }

  /** Returns what a person calls a row of a table. */
  String rowWord(String table) {
    return schema.table(table).rowWord();
  }

  /** Returns what puts what cells hold into words, in the units of the book as they are now. */
  public Wording wording() {
    if (wording.system() != system()) {
      wording = new Wording(schema, system());
    }
    return wording;
  }

  /** Returns what a cell holds as text, with unit; of one without a number, the reason. */
  public String shown(Reference column, Outcome outcome) {
    return outcome instanceof Outcome.Amount amount
        ? readable(column, amount.value())
        : wording().shown(column, outcome);
  }

  /** Returns a number of a column with its unit and enough digits to follow a sum. */
  String readable(Reference reference, double value) {
    Column column = schema.column(reference);
    if (column.content() == Column.Content.CHOICE) {
      return Optional.of(calculation.list(column))
          .filter(list -> value >= 0 && value < list.size())
          .map(list -> list.get((int) value))
          .orElse("");
    }
    return wording().amount(column, value);
  }

  /** Returns a number that was typed with all its decimals and its unit. */
  String typedWithUnit(Column column, double value) {
    return wording().typed(column, value);
  }

  /** Returns a number of a kind with its unit. */
  String withUnit(QuantityKind kind, double value) {
    return wording().amount(kind, value);
  }
}
