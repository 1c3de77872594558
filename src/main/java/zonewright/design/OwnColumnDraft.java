package zonewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import zonewright.equation.EquationReading;
import zonewright.equation.KindWords;
import zonewright.equation.KnownColumns;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;

/**
 * A column of one's own as somebody writes it down, before it is in the design: what it would give,
 * and the edit that puts it there.
 *
 * @param name what it is called
 * @param sheet the title of the sheet it stands on
 * @param kind the kind of its numbers, in words
 * @param equation how it is calculated, as typed
 * @param decimals how many it shows; empty for the usual
 * @param least the least it should be, as typed; empty for none
 * @param most the most it should be, as typed; empty for none
 * @param note what is said where a limit is broken; empty for nothing
 */
public record OwnColumnDraft(
    String name,
    String sheet,
    String kind,
    String equation,
    String decimals,
    String least,
    String most,
    String note) {
  /** What a column is called as long as it has no name. */
  private static final String UNNAMED = "The new column";

  /** What is to be said of a draft. */
  public sealed interface Judged {}

  /**
   * It can be calculated.
   *
   * @param column what it would be
   * @param shown what it gives in the row asked for, or why it gives nothing there
   */
  public record Fine(Column column, String shown) implements Judged {}

  /**
   * It cannot.
   *
   * @param cell the cell of the definition that is wrong
   * @param sentence what is wrong and what would be right
   * @param place where in the equation, and what could stand there; none where it is another cell
   */
  public record Not(Reference cell, String sentence, Optional<EquationReading.Problem> place)
      implements Judged {}

  /** Returns a draft of the definition in a row. */
  public static OwnColumnDraft of(Book book, int row) {
    return of(book.contents().row(Sheets.OWN_COLUMNS, row));
  }

  /** Returns what a row says; what cannot be read says nothing. */
  static OwnColumnDraft of(Row row) {
    String[] texts = new String[8];
    for (int i = 0; i < texts.length; i++) {
      Entry entry = row.entry(i);
      texts[i] =
          entry instanceof Entry.Words words
              ? words.text().strip()
              : entry instanceof Entry.Figure figure ? QuantityText.exact(figure.value()) : "";
    }
    return new OwnColumnDraft(
        texts[0], texts[1], texts[2], texts[3], texts[4], texts[5], texts[6], texts[7]);
  }

  /** Returns how many decimals it shows; none for the usual, or where there cannot be so many. */
  Optional<Integer> digits() {
    return decimals.matches("[0-" + OwnColumnSheet.MOST_DECIMALS + "]")
        ? Optional.of(Integer.valueOf(decimals))
        : Optional.empty();
  }

  /** Returns what stands in a cell of the definition. */
  public String text(Reference cell) {
    List<Column> columns = IrrigationSheets.schema().table(Sheets.OWN_COLUMNS).columns();
    return texts().get(columns.indexOf(IrrigationSheets.schema().column(cell)));
  }

  /** In the order of the columns of the sheet. */
  private List<String> texts() {
    return List.of(name, sheet, kind, equation, decimals, least, most, note);
  }

  /** Returns the titles of the sheets that can have columns of one's own. */
  public static List<String> sheets() {
    Column sheet = IrrigationSheets.schema().column(OwnColumnSheet.SHEET);
    return sheet.words().flatMap(WordList::constant).orElseThrow();
  }

  /** Returns the edit that adds it to a design. */
  public Edit added(Book book) {
    return new Edit.Several(
        "new column " + name.strip(), parts(book, book.rows(Sheets.OWN_COLUMNS)));
  }

  private List<Edit> parts(Book book, int row) {
    Edits edits = new Edits(book);
    List<Column> columns = book.declared().table(Sheets.OWN_COLUMNS).columns();
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      entries.add(Entries.read(columns.get(i), texts().get(i).strip(), book.system()));
    }
    if (row == book.rows(Sheets.OWN_COLUMNS)) {
      return List.of(edits.appended(Sheets.OWN_COLUMNS, List.of(entries)));
    }
    return IntStream.range(0, columns.size())
        .mapToObj(i -> edits.set(columns.get(i).reference(), row, entries.get(i)))
        .toList();
  }

  /** Returns the edit that makes the definition in a row this one. */
  public Edit changed(Book book, int row) {
    return new Edit.Several("change of column " + name.strip(), parts(book, row));
  }

  /** Returns the edit that takes the definition in a row away. */
  public static Edit removed(Book book, int row) {
    return new Edits(book).removed(Sheets.OWN_COLUMNS, row, 1);
  }

  /**
   * Returns what it gives, or what is wrong with it.
   *
   * @param row the definition it stands in place of; none where it is new
   * @param at the row of its sheet it is looked at in; the first where there is no such row
   */
  public Judged judged(Book book, Optional<Integer> row, int at) {
    return judgedIn(book.another(book.snapshot()), row, at);
  }

  /**
   * Returns what it gives, or what is wrong with it, tried on a copy of a design that is changed by
   * it; the rest as in {@link #judged}.
   */
  public Judged judgedIn(Book trial, Optional<Integer> row, int at) {
    if (name.isBlank()) {
      Judged named =
          new OwnColumnDraft(UNNAMED, sheet, kind, equation, decimals, least, most, note)
              .judgedIn(trial, row, at);
      return named instanceof Fine fine
          ? new Not(
              OwnColumnSheet.NAME.reference(),
              "It would give %s. Give the column a name.".formatted(fine.shown()),
              Optional.empty())
          : named;
    }
    int mine = row.orElse(trial.rows(Sheets.OWN_COLUMNS));
    trial.start(new Edit.Several("trial", parts(trial, mine)));
    OwnColumns own = OwnColumns.of(trial);
    Optional<OwnColumns.Wrong> wrong = own.wrong(trial, mine);
    if (wrong.isPresent()) {
      return new Not(wrong.get().column(), wrong.get().sentence(), wrong.get().place());
    }
    Optional<Column> column = own.column(mine);
    if (column.isEmpty()) {
      boolean placed = sheets().contains(sheet);
      return placed
          ? new Not(
              OwnColumnSheet.KIND.reference(), "Say what kind its numbers are.", Optional.empty())
          : new Not(OwnColumnSheet.SHEET, "Say on which sheet it stands.", Optional.empty());
    }
    Reference reference = column.get().reference();
    int rows = trial.rows(reference.table());
    if (rows == 0) {
      return new Fine(column.get(), "There is no row on this sheet yet.");
    }
    int seen = at < 0 || at >= rows ? 0 : at;
    return new Fine(
        column.get(),
        "%s: %s"
            .formatted(
                trial.cellName(reference, seen).row(),
                trial.shown(reference, trial.outcome(reference, seen))));
  }

  /** Returns the columns an equation of a sheet can name in a design as it is. */
  public static KnownColumns known(Book book, String sheet) {
    String home =
        book.declared().tables().stream()
            .filter(table -> table.title().equals(sheet))
            .map(TableDefinition::id)
            .findFirst()
            .orElse(Sheets.ZONES);
    return new KnownColumns(book.schema(), Map.of(), home, Synonyms::of);
  }

  /** Returns the kinds there are, in words. */
  public static List<String> kinds() {
    return KindWords.all();
  }
}
