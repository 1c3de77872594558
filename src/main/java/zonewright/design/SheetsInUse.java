package zonewright.design;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Which sheets a design uses: those every design has, and those somebody typed into or made notes
 * on, with what stands together with them. The others are not in anybody's way.
 */
public final class SheetsInUse {
  /** What every design has, in the order in which a reader wants it. */
  public static final List<String> ALWAYS =
      List.of(
          Sheets.SITE,
          Sheets.ZONES,
          Sheets.MONTHS,
          Sheets.NIGHTS,
          Sheets.MONTHLY,
          Sheets.ZONE_NIGHTS);

  /** Sheets that are of use together only. */
  private static final List<List<String>> TOGETHER =
      List.of(
          List.of(Sheets.SUPPLY, Sheets.PIPES),
          List.of(Sheets.TESTS, Sheets.CANS),
          List.of(Sheets.ALTERNATIVES, Sheets.CHANGES),
          List.of(
              Sheets.ESTIMATE,
              Sheets.TAKEOFF,
              Sheets.COUNTS,
              Sheets.PARTS,
              Sheets.CREWS,
              Sheets.CURRENCIES,
              Sheets.SECTIONS,
              Sheets.EXTRAS),
          List.of(
              Sheets.SAVINGS,
              Sheets.USE,
              Sheets.RATES,
              Sheets.REBATES,
              Sheets.CASES,
              Sheets.YEARS));

  private SheetsInUse() {}

  /** Says whether a design uses a sheet. */
  public static boolean uses(Book book, TableDefinition table) {
    if (ALWAYS.contains(table.id())) {
      return true;
    }
    Optional<List<String>> group =
        TOGETHER.stream().filter(each -> each.contains(table.id())).findFirst();
    return group.orElse(List.of(table.id())).stream()
        .anyMatch(
            id ->
                typedInto(book, book.schema().table(id))
                    || remarked(book, book.schema().table(id)));
  }

  /** Says whether there is a note or a colour on a sheet: it must stand somewhere. */
  private static boolean remarked(Book book, TableDefinition table) {
    return book.contents().rows(table.id()).stream()
        .flatMap(row -> row.remarks().keySet().stream())
        .anyMatch(column -> table.column(column).isPresent());
  }

  private static boolean typedInto(Book book, TableDefinition table) {
    return table.columns().stream()
        .filter(table::takesEntries)
        .anyMatch(column -> typedInto(book, column));
  }

  /** Says whether something stands in a column that does not stand there in every new design. */
  public static boolean typedInto(Book book, Column column) {
    if (!column.takesEntries()) {
      return false;
    }
    Reference reference = column.reference();
    Optional<Book> fresh =
        book.declared().equals(IrrigationSheets.schema())
            ? Optional.of(New.BOOKS.get(book.system()))
            : Optional.empty();
    for (int row = 0; row < book.rows(reference.table()); row++) {
      Entry entry = book.entry(reference, row);
      boolean there = fresh.isPresent() && row < fresh.get().rows(reference.table());
      Entry before = there ? fresh.get().entry(reference, row) : Entry.BLANK;
      if (!(entry instanceof Entry.Blank) && !entry.equals(before)) {
        return true;
      }
    }
    return false;
  }

  /** What stands in a new design. */
  private static final class New {
    static final Map<UnitSystem, Book> BOOKS =
        Stream.of(UnitSystem.values())
            .collect(
                Collectors.toMap(
                    system -> system,
                    system -> Design.blank(system).book(),
                    (one, other) -> one,
                    () -> new EnumMap<>(UnitSystem.class)));
  }
}
