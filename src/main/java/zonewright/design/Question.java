package zonewright.design;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.formula.Dependencies;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Nearest;
import zonewright.sheet.Schema;
import zonewright.sheet.SchemaSource;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.sheet.Working;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * One cell asked for, with just the values it follows from: a design with a single row in each
 * sheet, in which every value given counts, also one of a column that is otherwise calculated.
 */
public final class Question {
  private static final int MONTHS = 12;

  private final Column asked;
  private final Schema schema;
  private final Map<Column, String> given;
  private Book book;
  private final Map<String, Integer> rows = new LinkedHashMap<>();

  /** Tables with a row for each of several values. */
  private final Set<String> several = new HashSet<>();

  private final List<Outcome.Refused> problems = new ArrayList<>();

  /**
   * Asks for a column.
   *
   * @param asked a column of {@link IrrigationSheets}
   * @param given values as a person writes them, with or without a unit
   * @param system the units of the answer, and of values without a unit
   */
  public Question(Column asked, Map<Column, String> given, UnitSystem system) {
    this(asked, given, system, IrrigationSheets.schema());
  }

  /**
   * Asks by other columns and equations than the program's.
   *
   * @param asked a column of the schema
   */
  public Question(Column asked, Map<Column, String> given, UnitSystem system, Schema schema) {
    this.asked = asked;
    this.schema = schema;
    this.given = new LinkedHashMap<>(given);
    this.book = made(given.keySet(), system);
    if (noRainCounts()) {
      Set<Column> known = new HashSet<>(given.keySet());
      known.add(Peak.EFFECTIVE_RAIN);
      this.book = made(known, system);
      enter(Peak.EFFECTIVE_RAIN, "0");
    }
  }

  private Book made(Set<Column> known, UnitSystem system) {
    Set<Reference> references = new HashSet<>();
    known.forEach(column -> references.add(column.reference()));
    book = Design.blankBook(SchemaSource.always(schema.withInputs(references)), system);
    rows.clear();
    problems.clear();
    several.clear();
    book.schema().tables().forEach(this::prepare);
    given.forEach(this::makeRoom);
    book.schema().tables().forEach(this::join);
    given.forEach(this::enter);
    return book;
  }

  /** Where no month counts any rain, which of them asks most need not be known. */
  private boolean noRainCounts() {
    return book.outcome(Peak.EFFECTIVE_RAIN.reference(), 0) instanceof Outcome.Missing
        && IntStream.range(0, book.rows(Sheets.MONTHS))
            .allMatch(month -> book.number(Rain.DAILY_EFFECTIVE.reference(), month) == 0);
  }

  private void prepare(TableDefinition table) {
    Edits edits = new Edits(book);
    if (book.rows(table.id()) == 0) {
      book.start(edits.inserted(table.id(), 0, 1));
    }
    rows.put(table.id(), 0);
    if (table.rows() instanceof TableDefinition.Rows.Named named) {
      key(table)
          .ifPresent(key -> rows.put(table.id(), named(table, named.names(), given.get(key))));
    }
  }

  private void join(TableDefinition table) {
    for (Column column : table.inputs()) {
      if (column.words().orElse(null) instanceof WordList.RowsOf other && spokenOf(other.table())) {
        firstRowOf(column, other.table());
      }
    }
  }

  /** Says whether the question or something given is of a sheet; if not, its row is not meant. */
  private boolean spokenOf(String table) {
    return Stream.concat(given.keySet().stream(), Stream.of(asked))
        .anyMatch(column -> column.reference().table().equals(table));
  }

  private Optional<Column> sameAs(Column column) {
    return given.keySet().stream()
        .filter(each -> each.reference().equals(column.reference()))
        .findFirst();
  }

  /** Returns the column given that names the row of a table, be it that of another sheet. */
  private Optional<Column> key(TableDefinition table) {
    return given.keySet().stream()
        .filter(each -> book.position(each.reference()) == 0)
        .filter(each -> book.schema().table(each.reference().table()).rows().equals(table.rows()))
        .findFirst();
  }

  private int named(TableDefinition table, List<String> names, String word) {
    for (int row = 0; row < names.size(); row++) {
      if (names.get(row).equalsIgnoreCase(word.strip())) {
        return row;
      }
    }
    Reference key = table.columns().get(0).reference();
    problems.add(
        new Outcome.Refused(
            new Outcome.CellName("", key),
            "“%s” is no %s; did you mean “%s”?"
                .formatted(word.strip(), table.rowWord(), Nearest.to(word, names, 1).get(0))));
    return 0;
  }

  /** What is of one sheet belongs to the only row of another. */
  private void firstRowOf(Column column, String other) {
    if (book.rows(other) > 0
        && book.contents().row(other, 0).entry(0) instanceof Entry.Words name) {
      for (int row : rowsFor(book.schema().table(column.reference().table()))) {
        book.start(new Edits(book).set(column.reference(), row, name));
      }
    }
  }

  /** Where several values are given at once, there is a row for each. */
  private void makeRoom(Column column, String text) {
    int wanted = ListedValues.of(text, column, book.system()).size();
    TableDefinition table = book.schema().table(column.reference().table());
    String leading = leading(table);
    int more = wanted - book.rows(leading);
    if (more > 0 && book.schema().table(leading).rows() instanceof TableDefinition.Rows.Free) {
      book.start(new Edits(book).inserted(leading, book.rows(leading), more));
      several.add(leading);
    }
  }

  /** Returns the table that has the rows of another. */
  private static String leading(TableDefinition table) {
    return table.other().orElse(table.id());
  }

  private void enter(Column column, String text) {
    Reference reference = column.reference();
    TableDefinition table = book.schema().table(reference.table());
    boolean fixedName = table.givenNames() && book.position(reference) == 0;
    if (fixedName) {
      return;
    }
    List<String> values = ListedValues.of(text, column, book.system());
    List<Integer> to = rowsFor(table);
    if (values.size() > 1 && values.size() != to.size()) {
      String many = to.size() > 1 ? ", or %s, one for each %s" : "";
      String wrong = "%s values are given; it takes one" + many;
      problems.add(
          new Outcome.Refused(
              new Outcome.CellName("", reference),
              wrong.formatted(values.size(), to.size(), table.rowWord())));
      return;
    }
    for (int i = 0; i < to.size(); i++) {
      String value = values.get(Math.min(i, values.size() - 1));
      book.start(new Edits(book).typed(reference, to.get(i), value));
    }
    to.stream()
        .map(row -> book.outcome(reference, row))
        .filter(Outcome.Refused.class::isInstance)
        .map(Outcome.Refused.class::cast)
        .findFirst()
        .ifPresent(problems::add);
  }

  /**
   * Values of a month count for the month that is named, or for every month alike; those of a sheet
   * with several rows for each of them.
   */
  private List<Integer> rowsFor(TableDefinition table) {
    boolean alike =
        several.contains(leading(table))
            || (table.rows() instanceof TableDefinition.Rows.Named && key(table).isEmpty());
    return alike
        ? IntStream.range(0, book.rows(table.id())).boxed().toList()
        : List.of(row(table.columns().get(0).reference()));
  }

  private int row(Reference reference) {
    return rows.getOrDefault(reference.table(), 0);
  }

  /** Returns what is wrong with the values given; nothing where all can be used. */
  public List<Outcome.Refused> problems() {
    return List.copyOf(problems);
  }

  /** Returns the answer, or why there is none. */
  public Outcome outcome() {
    return book.outcome(asked.reference(), row(asked.reference()));
  }

  /** Returns the answer as text, with unit, or the reason why there is none. */
  public String shown() {
    return book.shown(asked.reference(), outcome());
  }

  /** Says whether a value was given for a column. */
  public boolean isGiven(Column column) {
    return sameAs(column).isPresent();
  }

  /** Returns the words a column of choices, or of fixed names of rows, can hold. */
  public List<String> choices(Column column) {
    TableDefinition table = book.schema().table(column.reference().table());
    return table.rows() instanceof TableDefinition.Rows.Named named
            && book.position(column.reference()) == 0
        ? named.names()
        : book.choices(column);
  }

  /**
   * Returns how the answer comes about: each cell after those it was made from, the one asked for
   * last. Where a whole column counts, its rows are followed only if there is a single one.
   */
  public List<Working> steps() {
    Map<Outcome.CellName, Working> steps = new LinkedHashMap<>();
    follow(asked.reference(), row(asked.reference()), new HashSet<>(), steps);
    return List.copyOf(steps.values());
  }

  private void follow(
      Reference reference,
      int row,
      Set<Outcome.CellName> visited,
      Map<Outcome.CellName, Working> steps) {
    Outcome.CellName cell = book.cellName(reference, row);
    if (!visited.add(cell)) {
      return;
    }
    Working working = book.working(reference, row);
    for (Working.Input input : working.inputs()) {
      Reference upstream = input.column().reference();
      boolean followed = book.rows(upstream.table()) == 1 || listed(upstream);
      if (input.used() && (input.row() >= 0 || followed)) {
        follow(upstream, Math.max(input.row(), 0), visited, steps);
      }
    }
    steps.put(cell, working);
  }

  /** Says whether several values were given in the sheet of a column. */
  private boolean listed(Reference column) {
    return several.contains(leading(book.schema().table(column.table())));
  }

  /** Returns how many days the month has that the answer is about; none where it is about none. */
  public OptionalDouble daysOfMonth() {
    TableDefinition table = book.schema().table(asked.reference().table());
    boolean month =
        table.rows() instanceof TableDefinition.Rows.Named && book.rows(table.id()) == MONTHS;
    return month && key(table).isPresent()
        ? OptionalDouble.of(book.number(Climate.DAYS.reference(), row(asked.reference())))
        : OptionalDouble.empty();
  }

  /**
   * Returns what each row of a column holds, with its name, where several were given or the column
   * differs from month to month; nothing where there is one row or all are alike.
   */
  public Map<String, String> each(Column column) {
    Reference reference = column.reference();
    TableDefinition table = book.schema().table(reference.table());
    Map<String, String> all = new LinkedHashMap<>();
    if (table.rows() instanceof TableDefinition.Rows.Named || listed(reference)) {
      for (int row = 0; row < book.rows(table.id()); row++) {
        String name =
            book.contents().row(table.id(), row).entry(0) instanceof Entry.Words words
                ? words.text()
                : Integer.toString(row + 1);
        all.put(name, book.shown(reference, book.outcome(reference, row)));
      }
    }
    return all.values().stream().distinct().count() > 1 ? all : Map.of();
  }

  /**
   * Returns what a cell of the steps holds, a value that was given as it was typed: with the unit
   * it has without one, and beside another unit with what that comes to.
   */
  public String shownAsGiven(Working step) {
    String typed = sameAs(step.column()).map(given::get).orElse("");
    if (typed.isEmpty() || step.column().content() != Column.Content.NUMBER) {
      return step.shown();
    }
    QuantityKind kind = step.column().kind();
    String symbol = kind.percent() ? "%" : kind.unit(book.system()).symbol();
    Optional<Unit> unit = Units.named(typed.replaceFirst("^[^\\p{L}°%'\"]*", ""));
    if (typed.matches("[-+−\\d.,;\\s/]+")) {
      return kind.onCalendar() ? typed : (typed + " " + symbol).strip();
    }
    boolean own =
        unit.filter(each -> each.equals(kind.percent() ? Units.PERCENT : kind.unit(book.system())))
            .isPresent();
    boolean several = ListedValues.of(typed, step.column(), book.system()).size() > 1;
    return own || several || kind.onCalendar() ? typed : typed + " = " + step.shown();
  }

  /** Returns the columns whose values are still needed, each once; at the end the month. */
  public List<Column> missing() {
    Outcome outcome = outcome();
    if (outcome instanceof Outcome.Blank) {
      return List.of(asked);
    }
    if (rowMatters()) {
      return List.of(rowNames(book.schema().table(asked.reference().table())));
    }
    if (!(outcome instanceof Outcome.Missing missing)) {
      return List.of();
    }
    Set<Column> columns = new LinkedHashSet<>();
    missing.needs().forEach(cell -> columns.add(book.schema().column(cell.column())));
    return List.copyOf(columns);
  }

  /** Says whether all is given but the month, and the answer differs from month to month. */
  public boolean rowMatters() {
    TableDefinition table = book.schema().table(asked.reference().table());
    return table.rows() instanceof TableDefinition.Rows.Named
        && key(table).isEmpty()
        && book.position(asked.reference()) > 0
        && !(outcome() instanceof Outcome.Missing)
        && IntStream.range(0, book.rows(table.id()))
                .mapToObj(row -> said(book.outcome(asked.reference(), row)))
                .distinct()
                .count()
            > 1;
  }

  /** Returns an outcome without the row it is about. */
  private static Object said(Outcome outcome) {
    return outcome instanceof Outcome.Refused refused ? refused.because() : outcome;
  }

  private Column rowNames(TableDefinition table) {
    return book.schema().tables().stream()
        .filter(each -> each.rows().equals(table.rows()))
        .findFirst()
        .orElseThrow()
        .columns()
        .get(0);
  }

  /**
   * Returns what the answer starts from: the cells nobody calculates that hold something, but for
   * what was {@link #assumed}.
   */
  public List<Working> start() {
    List<Working> assumed = assumed();
    return steps().stream()
        .filter(step -> step.symbols().isEmpty() && !(step.outcome() instanceof Outcome.Blank))
        .filter(step -> !assumed.contains(step) && !namedHere(step))
        .toList();
  }

  /** Says whether a cell holds but the name of a row that was made for the question. */
  private boolean namedHere(Working step) {
    return step.outcome() instanceof Outcome.Words && !isGiven(step.column());
  }

  /** Returns the steps that are calculated, each after those it needs, the answer last. */
  public List<Working> calculated() {
    List<Working> assumed = assumed();
    return steps().stream()
        .filter(step -> !step.symbols().isEmpty() && !assumed.contains(step))
        .toList();
  }

  /** Returns what was taken though nobody gave it, and is no fact: usual words and numbers. */
  public List<Working> assumed() {
    return steps().stream()
        .filter(step -> step.column().role() != Column.Role.CALCULATED)
        .filter(step -> !isGiven(step.column()) && step.inputs().isEmpty())
        .filter(
            step ->
                step.outcome() instanceof Outcome.Amount || step.outcome() instanceof Outcome.Words)
        .filter(step -> !fact(step.column()))
        .toList();
  }

  /** Says whether a cell was filled by the design itself, as the number of a month is. */
  private boolean fact(Column column) {
    TableDefinition table = book.schema().table(column.reference().table());
    return column.role() == Column.Role.INPUT && !table.single();
  }

  /**
   * Returns the columns on the way from what is missing to the answer, those nearest to the answer
   * first; one of them would do.
   */
  public List<Column> insteadOfMissing() {
    List<Column> way = new ArrayList<>(lacking(steps().stream()));
    way.removeIf(column -> column.reference().equals(asked.reference()));
    way.removeAll(missing());
    Collections.reverse(way);
    return List.copyOf(way);
  }

  /** Returns the columns without a value from which the answer follows in a single step. */
  public List<Column> nearestMissing() {
    Working last = book.working(asked.reference(), row(asked.reference()));
    return lacking(
        last.inputs().stream()
            .filter(Working.Input::used)
            .map(in -> book.working(in.column().reference(), Math.max(in.row(), 0))));
  }

  /** Returns the columns that lack something; a blank one only where it is needed. */
  private List<Column> lacking(Stream<Working> steps) {
    List<Column> needed = missing();
    return steps
        .filter(step -> step.outcome() instanceof Outcome.Missing || needed.contains(step.column()))
        .map(Working::column)
        .distinct()
        .toList();
  }

  /** Returns the columns given that have no part in the answer. */
  public List<Column> unused() {
    Set<Reference> needed = new HashSet<>();
    Deque<Reference> open = new ArrayDeque<>(List.of(asked.reference()));
    while (!open.isEmpty()) {
      Reference next = open.pop();
      if (needed.add(next)) {
        Column column = book.schema().column(next);
        Dependencies needs = book.schema().dependencies(column).orElse(null);
        if (needs != null) {
          open.addAll(needs.cells());
          open.addAll(needs.columns());
        }
      }
    }
    return given.keySet().stream()
        .filter(column -> !needed.contains(column.reference()))
        .filter(column -> book.position(column.reference()) > 0 || single(column))
        .toList();
  }

  private boolean single(Column column) {
    return book.schema().table(column.reference().table()).single();
  }
}
