package zonewright.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.WaterSense;
import zonewright.climate.Peak;
import zonewright.formula.Reference;
import zonewright.retrofit.AsFound;
import zonewright.savings.SavingsRules;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Rule;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/**
 * What a client gets of a design: lists of what goes in. All else stays in the office, and so does
 * whatever is added to the sheets later, until somebody lists it here.
 */
public final class ForClient {
  /**
   * The sheets that say how the garden is watered. Their formulas ask for no sheet but these, so
   * they work without the others.
   */
  public static final Set<String> SHEETS =
      Set.of(
          Sheets.SITE,
          Sheets.MONTHS,
          Sheets.WEATHER,
          Sheets.RECORD,
          Sheets.PROGRAMS,
          Sheets.NIGHTS,
          Sheets.STAGES,
          Sheets.DAY_RULES,
          Sheets.ZONES,
          Sheets.ZONE_NIGHTS,
          Sheets.MONTHLY,
          Sheets.SUPPLY,
          Sheets.VALVES,
          Sheets.MATERIALS,
          Sheets.PIPES,
          Sheets.TESTS,
          Sheets.CANS,
          Sheets.CONTROLLER,
          Sheets.FOUND,
          Sheets.OWN_PLANTS,
          Sheets.OWN_EMITTERS,
          Sheets.OWN_SOILS);

  /** Free words on them that go in, beside the names of rows. */
  private static final Set<Reference> WORDS =
      Set.of(
          Facts.PROJECT_NAME.reference(),
          Facts.LOCATION.reference(),
          Facts.PREPARED_BY.reference(),
          Facts.ZONE_PLACE.reference(),
          AsFound.of(Facts.ZONE_PLACE));

  /** What a client should know of the design. Their sentences name water, climate and limits. */
  private static final List<Rule> RULES =
      List.of(
          Peak.ONLY_DESCRIBED,
          WaterSense.EXCEEDED,
          Ordinance.EXCEEDED,
          Ordinance.MEAN_TOO_HIGH,
          LocalRule.EXCEEDED);

  /** What a client should know of savings. Their sentences name figures the proposal prints. */
  private static final List<Rule> OF_SAVINGS =
      List.of(
          SavingsRules.PAYBACK_OVER_LIFE,
          SavingsRules.USES_MORE,
          SavingsRules.OVERWATERED,
          SavingsRules.NOT_PAID,
          SavingsRules.LOW_BEATS_HIGH);

  private ForClient() {}

  /**
   * Returns a design of its own that holds the figures and choices of the sheets that go in, and of
   * their words those that go in; nothing else of the office's design is in it.
   */
  public static Design of(Design office) {
    Book book = office.book();
    BookSnapshot all = book.snapshot();
    BookSnapshot blank = Design.blank(all.system()).book().snapshot();
    Map<String, List<Row>> rows = new HashMap<>();
    for (TableDefinition table : book.declared().tables()) {
      boolean goes = SHEETS.contains(table.id());
      rows.put(
          table.id(),
          goes
              ? rows(book, table, all.rows(table.id()))
              : table.other().isPresent()
                  ? named(table, all.rows(table.id()))
                  : blank.rows(table.id()));
    }
    Design design = Design.of(new BookSnapshot(all.system(), rows));
    design.nights().learn(office.nights());
    return design;
  }

  private static List<Row> rows(Book book, TableDefinition table, List<Row> rows) {
    List<Row> kept = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      if (OwnTables.ids().contains(table.id())
          && !OwnTables.uses(book, table.id(), rows.get(row))) {
        continue;
      }
      List<Entry> entries = new ArrayList<>();
      for (int i = 0; i < table.columns().size(); i++) {
        boolean goes = goes(book, table, table.columns().get(i), row);
        entries.add(goes ? rows.get(row).entry(i) : Entry.BLANK);
      }
      kept.add(Row.of(rows.get(row).id(), entries));
    }
    return kept;
  }

  /** Says whether what is typed into a cell goes in: a number, a word of a list, listed words. */
  private static boolean goes(Book book, TableDefinition table, Column column, int row) {
    return switch (column.content()) {
      case NUMBER -> book.entry(column.reference(), row) instanceof Entry.Figure;
      case CHOICE -> !Double.isNaN(book.number(column.reference(), row));
      case WORDS ->
          WORDS.contains(column.reference()) || table.key().filter(column::equals).isPresent();
    };
  }

  /** Rows that stand beside others have to be there, under their names. */
  private static List<Row> named(TableDefinition table, List<Row> rows) {
    return rows.stream()
        .map(
            row ->
                Row.of(
                    row.id(),
                    IntStream.range(0, table.columns().size())
                        .mapToObj(i -> i == 0 ? row.entry(0) : Entry.BLANK)
                        .toList()))
        .toList();
  }

  /** Returns what a client should know of the office's design, the worst first. */
  public static List<Finding> findings(Design office) {
    List<Finding> found = by(office, RULES);
    found.addAll(findingsOfSavings(office));
    found.sort(Comparator.comparing(Finding::severity));
    return found;
  }

  /** Returns what a client should know of the savings; nothing where nothing is replaced. */
  public static List<Finding> findingsOfSavings(Design office) {
    return office.book().rows(Sheets.FOUND) == 0 ? List.of() : by(office, OF_SAVINGS);
  }

  private static List<Finding> by(Design office, List<Rule> rules) {
    List<Finding> found = new ArrayList<>();
    rules.forEach(rule -> RuleFinder.of(office.book(), rule).add(found));
    return found;
  }
}
