package zonewright.design;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import zonewright.equation.EquationReading;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Rule;
import zonewright.sheet.Schema;
import zonewright.sheet.SchemaSource;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;

/**
 * The columns that follow from the rows of the sheet of one's own columns: each stands behind the
 * declared ones of its sheet and is calculated like them. One whose equation is wrong stands there
 * too and says so in its cells, so that nothing that names it loses it.
 */
public final class OwnColumns {
  private static final int MOST_KNOWN = 8;

  /** The sheets whose rows say which columns and words there are. */
  private static final Set<String> DEFINING =
      Stream.concat(Stream.of(Sheets.OWN_COLUMNS), OwnTables.defining().stream())
          .collect(Collectors.toUnmodifiableSet());

  /** What follows from rows that were met lately; a copy of a design has the very same columns. */
  private static final Map<Known, OwnColumns> KNOWN =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Known, OwnColumns> eldest) {
              return size() > MOST_KNOWN;
            }
          });

  /**
   * What is wrong with a definition.
   *
   * @param column the cell that is wrong
   * @param sentence what is wrong with it
   * @param place where in an equation or a limit; none for other cells
   */
  record Wrong(Reference column, String sentence, Optional<EquationReading.Problem> place) {
    Wrong(Reference column, String sentence) {
      this(column, sentence, Optional.empty());
    }
  }

  /**
   * A word of a definition that should be the name of a row of the design.
   *
   * @param row of the definition
   * @param cell of the definition
   */
  record NamedRow(int row, Reference cell, EquationReading.RowWord word) {}

  private final Schema schema;
  private final OwnColumnReading read;

  private OwnColumns(Schema schema, OwnColumnReading read) {
    this.schema = schema;
    this.read = read;
  }

  /** Which columns a design has: those declared, and those its own rows define. */
  public static SchemaSource source() {
    return new SchemaSource() {
      @Override
      public Schema declared() {
        return IrrigationSheets.schema();
      }

      @Override
      public Set<String> definedBy() {
        return DEFINING;
      }

      @Override
      public Schema schema(BookSnapshot entered) {
        Schema others = OwnTables.schema(entered);
        List<Row> rows = entered.rows(Sheets.OWN_COLUMNS);
        // most designs have none, and a start should not pay for what it does not use
        return rows.isEmpty() ? others : OwnColumns.of(others, rows).schema;
      }
    };
  }

  /** Returns the columns that a book's rows define. */
  public static OwnColumns of(Book book) {
    Map<String, List<Row>> defining = new HashMap<>();
    book.declared().tables().stream()
        .map(TableDefinition::id)
        .filter(DEFINING::contains)
        .forEach(table -> defining.put(table, book.contents().rows(table)));
    return of(new BookSnapshot(book.system(), defining));
  }

  /** Returns the columns that rows define. */
  static OwnColumns of(BookSnapshot entered) {
    return of(OwnTables.schema(entered), entered.rows(Sheets.OWN_COLUMNS));
  }

  private static OwnColumns of(Schema others, List<Row> rows) {
    List<OwnColumnDraft> drafts = rows.stream().map(OwnColumnDraft::of).toList();
    return KNOWN.computeIfAbsent(new Known(others, drafts), Known::made);
  }

  /** The tables without columns of one's own, and what defines these. */
  private record Known(Schema others, List<OwnColumnDraft> rows) {
    OwnColumns made() {
      OwnColumnReading reading = new OwnColumnReading(others, rows);
      Map<String, List<Column>> further =
          reading.columns().values().stream()
              .collect(Collectors.groupingBy(column -> column.reference().table()));
      return new OwnColumns(further.isEmpty() ? others : others.withColumns(further), reading);
    }
  }

  /** Returns what to tell where a number breaks a limit of its own. */
  public List<Rule> rules() {
    return read.rules();
  }

  /** Returns how the identifiers of the rules on columns of one's own of a sheet begin. */
  public static String idOfRules(TableDefinition table) {
    return table.id() + "." + OwnColumnReading.OWN;
  }

  /** Returns what is wrong with a definition, by its row, whatever rows there are. */
  Optional<Wrong> wrong(int row) {
    return Optional.ofNullable(read.wrong().get(row));
  }

  /** Returns what is wrong with a definition in a book, whose rows may have other names by now. */
  Optional<Wrong> wrong(Book book, int row) {
    return wrong(row)
        .or(
            () ->
                read.words().stream()
                    .filter(named -> named.row() == row)
                    .flatMap(named -> wrong(book, named).stream())
                    .findFirst());
  }

  private static Optional<Wrong> wrong(Book book, NamedRow named) {
    return named
        .word()
        .problem(names(book, named.word().column()))
        .map(problem -> new Wrong(named.cell(), problem.sentence(), Optional.of(problem)));
  }

  private static List<String> names(Book book, Column column) {
    Reference rows = namesOf(book.schema(), column);
    return book.contents().rows(rows.table()).stream()
        .map(row -> row.entry(0) instanceof Entry.Words words ? words.text() : "")
        .toList();
  }

  /** The column of the names a column can hold. */
  private static Reference namesOf(Schema schema, Column column) {
    WordList.RowsOf rows = (WordList.RowsOf) schema.list(column).orElseThrow();
    return schema.table(rows.table()).columns().get(0).reference();
  }

  /** Returns the columns of the names of rows that definitions ask for. */
  Set<Reference> namesAskedFor() {
    return read.words().stream()
        .map(named -> namesOf(schema, named.word().column()))
        .collect(Collectors.toSet());
  }

  /** Returns the column a row defines; none where too little of it is there. */
  public Optional<Column> column(int row) {
    return Optional.ofNullable(read.columns().get(row));
  }

  /** Returns the row that defines a column; none for one the program declares. */
  public Optional<Integer> rowOf(Reference column) {
    return read.columns().entrySet().stream()
        .filter(each -> each.getValue().reference().equals(column))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
