package zonewright.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.emitters.Emitters;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Money;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.soil.Soils;
import zonewright.trade.OwnRows;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * The tables as what is entered makes them: plants, emitters and soils of a person's own stand in
 * those of the trade with the program's, and money has the smallest amount of the job's currency.
 */
final class OwnTables {
  private static final int MOST_KNOWN = 8;
  private static final String UNSAID = "typed on the sheet %s, no source given";

  private static final List<OwnRows> ALL =
      List.of(
          new OwnRows(Sheets.OWN_PLANTS, "OwnPlants", "plant", Plants.TYPES)
              .number(
                  "plant-factor",
                  "Plant factor",
                  QuantityKind.FACTOR,
                  Bounds.above(0, 2, Units.ONE),
                  "Share of reference ET the plant needs, by whatever basis the site chooses.",
                  Plants.factorHeadings())
              .number(
                  "root-depth",
                  "Root depth",
                  QuantityKind.DEPTH,
                  Bounds.above(0, 120, Units.INCH),
                  "How deep it draws water.",
                  "Root depth (in)")
              .number(
                  "allowed-depletion",
                  "Allowed depletion",
                  QuantityKind.SHARE,
                  Bounds.above(0, 1, Units.ONE),
                  "Part of the available water it may use up between waterings.",
                  "Allowed depletion"),
          new OwnRows(Sheets.OWN_EMITTERS, "OwnEmitters", "emitter", Emitters.KINDS)
              .number(
                  "distribution-uniformity",
                  "Distribution uniformity",
                  QuantityKind.SHARE,
                  Bounds.above(0, 1, Units.ONE),
                  "What the driest quarter gets, as a part of the mean.",
                  "Distribution uniformity")
              .number(
                  "irrigation-efficiency",
                  "Irrigation efficiency",
                  QuantityKind.SHARE,
                  Bounds.above(0, 1, Units.ONE),
                  "Part of the water applied that plants can use.",
                  "Irrigation efficiency")
              .number(
                  "working-pressure",
                  "Working pressure",
                  QuantityKind.PRESSURE,
                  Bounds.above(0, 200, Units.POUND_PER_SQUARE_INCH),
                  "Pressure it is made for.",
                  "Working pressure (psi)"),
          new OwnRows(Sheets.OWN_SOILS, "OwnSoils", "soil", Soils.TEXTURES)
              .number(
                  "intake-rate",
                  "Intake rate",
                  QuantityKind.RATE,
                  Bounds.above(0, 50, Units.INCH_PER_HOUR),
                  "Water it lets in for long, on level bare ground.",
                  "Intake rate (in/h)")
              .number(
                  "surface-storage",
                  "Surface storage",
                  QuantityKind.DEPTH,
                  Bounds.from(0, 5, Units.INCH),
                  "Water that may stand on it before it runs off, whatever the slope.",
                  Soils.storageHeadings())
              .number(
                  "available-water",
                  "Available water",
                  QuantityKind.STORAGE,
                  Bounds.above(0, 12, Units.INCH_PER_FOOT),
                  "Water it holds for plants.",
                  "Available water (in/ft)"));

  /** Schemas made lately, by what was entered; a copy of a design has the very same. */
  private static final Map<List<Object>, Schema> KNOWN =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<List<Object>, Schema> eldest) {
              return size() > MOST_KNOWN;
            }
          });

  private OwnTables() {}

  /** Returns the sheets. */
  static List<TableDefinition> sheets() {
    return ALL.stream().map(OwnRows::sheet).toList();
  }

  /** Returns the identifiers of the sheets. */
  static Set<String> ids() {
    return ALL.stream().map(own -> own.sheet().id()).collect(Collectors.toUnmodifiableSet());
  }

  /** Returns the identifiers of the sheets that say what the tables are like. */
  static Set<String> defining() {
    return Stream.concat(ids().stream(), Stream.of(Sheets.ESTIMATE))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Returns the columns that say from which workbook of the office a row was taken. */
  static List<Reference> from() {
    return ALL.stream().map(own -> own.from().reference()).toList();
  }

  /** Says whether anything in a book is one of a sheet's rows, by its name. */
  static boolean uses(Book book, String sheet, Row row) {
    OwnRows own =
        ALL.stream().filter(each -> each.sheet().id().equals(sheet)).findFirst().orElseThrow();
    String name = words(own, own.name(), row);
    return IrrigationSheets.schema().tables().stream()
        .flatMap(table -> table.columns().stream())
        .filter(column -> column.takesEntries() && looksIn(column, own.table()))
        .map(Column::reference)
        .anyMatch(
            column ->
                IntStream.range(0, book.rows(column.table()))
                    .anyMatch(
                        at ->
                            book.entry(column, at) instanceof Entry.Words words
                                && words.text().equalsIgnoreCase(name)));
  }

  private static boolean looksIn(Column column, ReferenceTable table) {
    return column.words().equals(Optional.of(new WordList.Published(table)));
  }

  /** Returns what is called as a row of the program's table is, and so cannot be chosen. */
  static List<Finding> findings(Book book) {
    List<Finding> found = new ArrayList<>();
    for (OwnRows own : ALL) {
      Reference name = own.name().reference();
      for (int row = 0; row < book.rows(name.table()); row++) {
        String called = words(own, own.name(), book.contents().row(name.table(), row));
        if (own.table().position(called).isPresent()) {
          found.add(
              new Finding(
                  Severity.CHECK,
                  name,
                  row,
                  new FindingWords.Plain(
                      Finder.where(book.cellName(name, row)),
                      "is called as a row of the program's table is, which counts in its place",
                      "give it another name",
                      Optional.empty())));
        }
      }
    }
    return found;
  }

  /** Returns the tables and columns there are with what is entered on these sheets. */
  static Schema schema(BookSnapshot entered) {
    int decimals = moneyDecimals(entered);
    List<Object> said = new ArrayList<>(List.of(entered.system(), decimals));
    for (OwnRows own : ALL) {
      int width = own.sheet().columns().size();
      for (Row row : entered.rows(own.sheet().id())) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < width; i++) {
          entries.add(row.entry(i));
        }
        said.add(entries);
      }
    }
    return said.size() == 2 && decimals == Money.USUAL_DECIMALS
        ? IrrigationSheets.schema()
        : KNOWN.computeIfAbsent(said, any -> made(entered).withMoneyOf(decimals));
  }

  private static int moneyDecimals(BookSnapshot entered) {
    int at = IrrigationSheets.schema().table(Sheets.ESTIMATE).columns().indexOf(JobFacts.CURRENCY);
    return entered.rows(Sheets.ESTIMATE).stream()
        .flatMap(row -> Money.words(row.entry(at)).stream())
        .findFirst()
        .map(Money::decimals)
        .orElse(Money.USUAL_DECIMALS);
  }

  private static Schema made(BookSnapshot entered) {
    Map<ReferenceTable, ReferenceTable> tables = new HashMap<>();
    Map<ReferenceTable, Map<String, String>> takesAfter = new HashMap<>();
    for (OwnRows own : ALL) {
      Map<String, String> words = new LinkedHashMap<>();
      List<List<String>> further = rows(own, entered, words);
      if (!further.isEmpty()) {
        tables.put(own.table(), own.table().with(further));
        takesAfter.put(own.table(), words);
      }
    }
    return tables.isEmpty()
        ? IrrigationSheets.schema()
        : IrrigationSheets.schema().withTables(tables, takesAfter);
  }

  /** Returns the rows that can be chosen: named, unlike all others, and taking after one. */
  private static List<List<String>> rows(
      OwnRows own, BookSnapshot entered, Map<String, String> takesAfter) {
    List<List<String>> rows = new ArrayList<>();
    Set<String> taken = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    taken.addAll(own.table().keys());
    for (Row row : entered.rows(own.sheet().id())) {
      String name = words(own, own.name(), row);
      OptionalInt like = own.table().position(words(own, own.like(), row));
      if (!name.isEmpty() && like.isPresent() && taken.add(name)) {
        rows.add(texts(own, row, name, like.getAsInt(), entered.system()));
        takesAfter.put(name, own.table().keys().get(like.getAsInt()));
      }
    }
    return rows;
  }

  private static List<String> texts(
      OwnRows own, Row row, String name, int like, UnitSystem system) {
    ReferenceTable table = own.table();
    List<String> texts = new ArrayList<>(table.row(like));
    texts.set(0, name);
    own.numbers()
        .forEach(
            (column, headings) ->
                number(own, column, row, system)
                    .ifPresent(
                        value ->
                            headings.forEach(
                                heading ->
                                    texts.set(
                                        table.headings().indexOf(heading),
                                        table
                                            .numbers(heading, column.kind())
                                            .written(value, system)))));
    String source = words(own, own.source(), row);
    String likeIt = "; the rest as " + table.keys().get(like) + ": " + texts.get(texts.size() - 2);
    texts.set(
        texts.size() - 2,
        (source.isEmpty() ? UNSAID.formatted(own.sheet().title()) : source) + likeIt);
    texts.set(texts.size() - 1, OwnRows.STATUS);
    return texts;
  }

  private static Entry entry(OwnRows own, Column column, Row row) {
    return row.entry(own.sheet().columns().indexOf(column));
  }

  private static String words(OwnRows own, Column column, Row row) {
    return entry(own, column, row) instanceof Entry.Words words ? words.text().strip() : "";
  }

  /** Returns a number that may be used; one that is out of range is a finding of its own. */
  private static Optional<Double> number(OwnRows own, Column column, Row row, UnitSystem system) {
    return entry(own, column, row) instanceof Entry.Figure figure
            && column
                .bounds()
                .orElseThrow()
                .problem(figure.value(), column.kind(), system)
                .isEmpty()
        ? Optional.of(figure.value())
        : Optional.empty();
  }
}
