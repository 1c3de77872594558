package zonewright.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.climate.Climate;
import zonewright.estimate.Money;
import zonewright.estimate.Parts;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * What an office keeps for all its designs in a workbook of its own, which is a design like any
 * other: tables, prices, rules, and what is usually typed.
 */
public final class OfficeTables {
  /** The sheets whose rows are taken by their names. */
  private static final List<String> ROWS =
      List.of(
          Sheets.OWN_PLANTS,
          Sheets.OWN_EMITTERS,
          Sheets.OWN_SOILS,
          Sheets.OWN_COLUMNS,
          Sheets.VALVES,
          Sheets.MATERIALS,
          Sheets.STAGES,
          Sheets.DAY_RULES,
          Sheets.PARTS,
          Sheets.CREWS,
          Sheets.CURRENCIES,
          Sheets.RATES,
          Sheets.REBATES);

  /** Those among them that are rates in the money of the office. */
  private static final Set<String> IN_MONEY =
      Set.of(Sheets.CREWS, Sheets.CURRENCIES, Sheets.RATES, Sheets.REBATES);

  /** The sheets of which what is blank in a design is filled in. */
  private static final List<String> RULES =
      List.of(Sheets.SITE, Sheets.SUPPLY, Sheets.NIGHTS, Sheets.ESTIMATE, Sheets.SAVINGS);

  /** What belongs to one job and is nobody's rule. */
  private static final Set<Reference> OF_THE_JOB =
      Set.of(
          Facts.PROJECT_NAME.reference(),
          Facts.LOCATION.reference(),
          Facts.OFFICE.reference(),
          Climate.PLACE.reference());

  private final Book book;
  private final Book office;
  private final String name;
  private final Edits edits;

  /** The currency of the office where that of the job is another. */
  private final Optional<String> otherMoney;

  private final List<Edit> parts = new ArrayList<>();
  private final List<String> told = new ArrayList<>();
  private final List<String> differing = new ArrayList<>();

  private OfficeTables(Book book, Book office, String name) {
    this.book = book;
    this.office = in(book.system(), office);
    this.name = name;
    this.edits = new Edits(book);
    this.otherMoney =
        Money.currency(office)
            .filter(code -> Money.currency(book).isPresent())
            .filter(code -> !code.equalsIgnoreCase(ofJob(book)));
  }

  /**
   * What is taken.
   *
   * @param edit takes it
   * @param told what comes from where, a sentence each
   * @param differing rows that are in the design with other values, in words; taken too where asked
   */
  public record Taken(Edit edit, List<String> told, List<String> differing) {
    public Taken {
      told = List.copyOf(told);
      differing = List.copyOf(differing);
    }
  }

  /**
   * Returns a new design that begins with all there is in the office's workbook.
   *
   * @param name what the workbook is called
   */
  public static Design begun(Design office, String name, UnitSystem system) {
    Design design = Design.of(in(system, office.book()).snapshot());
    for (Reference from : OwnTables.from()) {
      for (int row = 0; row < design.book().rows(from.table()); row++) {
        if (design.book().entry(from, row) instanceof Entry.Blank) {
          design.book().start(design.edits().set(from, row, Entry.words(name)));
        }
      }
    }
    design.book().start(design.edits().set(Facts.OFFICE.reference(), 0, Entry.words(name)));
    return design;
  }

  /**
   * Returns what a design takes from the office's workbook: rows it has not, and what is typed
   * there in cells that are blank in the design.
   *
   * @param name what the workbook is called
   * @param changed whether rows that the design has with other values are made like the office's
   */
  public static Taken taken(Book book, Book office, String name, boolean changed) {
    OfficeTables tables = new OfficeTables(book, office, name);
    if (tables.otherMoney.isPresent()) {
      tables.otherMoney();
    }
    ROWS.forEach(table -> tables.rows(table, changed));
    RULES.forEach(tables::rules);
    if (!tables.parts.isEmpty()) {
      tables.parts.add(tables.edits.set(Facts.OFFICE.reference(), 0, Entry.words(name)));
    }
    return new Taken(
        new Edit.Several("taking from " + name, tables.parts), tables.told, tables.differing);
  }

  private static Book in(UnitSystem system, Book book) {
    Book other = book.another(book.snapshot());
    if (book.system() != system) {
      other.start(new Edits(other).switched(system));
    }
    return other;
  }

  private static String folded(Row row) {
    return row.entry(0) instanceof Entry.Words words
        ? words.text().strip().toLowerCase(Locale.ROOT)
        : "";
  }

  private void rows(String id, boolean changed) {
    TableDefinition table = book.declared().table(id);
    if (otherMoney.isPresent() && IN_MONEY.contains(id)) {
      if (office.rows(id) > 0) {
        told.add(
            "%s: not taken, for its money is in %s.".formatted(table.title(), otherMoney.get()));
      }
      return;
    }
    Map<String, Integer> there = new HashMap<>();
    for (int row = 0; row < book.rows(id); row++) {
      there.putIfAbsent(folded(book.contents().row(id, row)), row);
    }
    List<List<Entry>> fresh = new ArrayList<>();
    List<String> other = new ArrayList<>();
    for (Row row : office.contents().rows(id)) {
      Integer own = there.get(folded(row));
      if (folded(row).isEmpty()) {
        continue;
      }
      if (own == null) {
        fresh.add(entries(table, row));
      } else if (differs(table, row, own)) {
        other.add(((Entry.Words) row.entry(0)).text());
        if (changed) {
          change(table, row, own);
        }
      }
    }
    if (!fresh.isEmpty()) {
      parts.add(edits.appended(id, fresh));
      told.add("%s: %s taken from %s.".formatted(table.title(), counted(fresh.size()), name));
    }
    if (!other.isEmpty()) {
      String names = String.join(", ", other);
      differing.add("%s: %s".formatted(table.title(), names));
      if (changed) {
        told.add("%s: made like those of %s: %s.".formatted(table.title(), name, names));
      }
    }
  }

  private static String counted(int rows) {
    return rows == 1 ? "1 row" : rows + " rows";
  }

  private List<Entry> entries(TableDefinition table, Row row) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      boolean from = OwnTables.from().contains(column.reference());
      entries.add(
          from
              ? Entry.words(name)
              : column.equals(Parts.PRICE_IN) ? priceIn(row, i) : row.entry(i));
    }
    return entries;
  }

  /** A price in the money of the office says so where the job's is another. */
  private Entry priceIn(Row row, int at) {
    Entry said = row.entry(at);
    if (otherMoney.isEmpty()) {
      return said;
    }
    return said instanceof Entry.Blank
        ? Entry.words(otherMoney.get())
        : Money.words(said).filter(ofJob(book)::equalsIgnoreCase).isPresent() ? Entry.BLANK : said;
  }

  private static String ofJob(Book book) {
    return Money.currency(book).orElse("");
  }

  /** Has a currency of the office stand among those of the job. */
  private void otherMoney() {
    String code = otherMoney.orElseThrow();
    boolean there = book.choices(Parts.PRICE_IN).stream().anyMatch(code::equalsIgnoreCase);
    if (!there && office.rows(Sheets.PARTS) > 0) {
      parts.add(edits.appended(Sheets.CURRENCIES, List.of(List.of(Entry.words(code)))));
      told.add("Currencies: prices of %s are in %s; type what one is worth.".formatted(name, code));
    }
  }

  private boolean differs(TableDefinition table, Row row, int own) {
    List<Entry> entries = entries(table, row);
    for (int i = 1; i < table.columns().size(); i++) {
      boolean from = OwnTables.from().contains(table.columns().get(i).reference());
      if (!from && !entries.get(i).equals(book.contents().row(table.id(), own).entry(i))) {
        return true;
      }
    }
    return false;
  }

  private void change(TableDefinition table, Row row, int own) {
    List<Entry> entries = entries(table, row);
    for (int i = 1; i < table.columns().size(); i++) {
      parts.add(edits.set(table.columns().get(i).reference(), own, entries.get(i)));
    }
  }

  /** Fills in what the office types usually and the design leaves blank. */
  private void rules(String id) {
    TableDefinition table = book.declared().table(id);
    int count = 0;
    for (Column column : table.inputs()) {
      Reference cell = column.reference();
      for (int row = 0; row < Math.min(book.rows(id), office.rows(id)); row++) {
        boolean blank = book.entry(cell, row) instanceof Entry.Blank;
        Entry usual = office.entry(cell, row);
        boolean money = otherMoney.isPresent() && column.kind().isMoney();
        if (blank && !money && !(usual instanceof Entry.Blank) && !OF_THE_JOB.contains(cell)) {
          parts.add(edits.set(cell, row, usual));
          count++;
        }
      }
    }
    if (count > 0) {
      told.add(
          "%s: %s filled in as in %s."
              .formatted(table.title(), count == 1 ? "1 cell" : count + " cells", name));
    }
  }
}
