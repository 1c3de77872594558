package zonewright.design;

import static zonewright.trade.Sheets.EXTRAS;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.REBATES;
import static zonewright.trade.Sheets.ZONES;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import zonewright.climate.Climate;
import zonewright.estimate.Counted;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.PriceBook;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.pipes.Wiring;
import zonewright.savings.Rates;
import zonewright.savings.Rebates;
import zonewright.savings.Savings;
import zonewright.savings.Use;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

/**
 * A retrofit to look at, from the zones as found to the price: an invented school campus, with
 * invented zones, prices, rates and rebates.
 */
final class CampusRetrofit {
  private static final String[][] RATE_TIERS = {
    {"30", "4.10", "3.60"}, {"120", "5.85", "3.60"}, {"", "8.20", "3.60"},
  };

  private static final int[] SETTINGS = {0, 0, 60, 80, 100, 100, 100, 100, 100, 70, 40, 0};

  private final Design design = Design.blank(UnitSystem.US);
  private final Edits edits = design.edits();
  private final List<Edit> parts = new ArrayList<>();

  private CampusRetrofit() {}

  static Design design(UnitSystem system) {
    Design made = new CampusRetrofit().make();
    if (system != UnitSystem.US) {
      made.book().start(made.edits().switched(system));
    }
    return made;
  }

  private Design make() {
    Map<Column, String> single = new LinkedHashMap<>();
    single.put(Facts.PROJECT_NAME, "Alder Hill School (invented example)");
    single.put(Facts.LOCATION, "An invented town; climate of a published reference zone");
    single.put(Facts.PREPARED_BY, "Zonewright demo");
    single.put(Climate.PLACE, "CIMIS zone 5");
    single.put(SiteRules.AVAILABLE_FLOW, "75 gpm");
    single.put(JobFacts.CURRENCY, "USD");
    single.put(JobFacts.LABOUR_RATE, "62");
    single.put(JobFacts.OVERHEAD_SHARE, "14 %");
    single.put(JobFacts.PROFIT_SHARE, "9 %");
    single.put(JobFacts.CONTINGENCY_SHARE, "5 %");
    single.put(JobFacts.TAX_SHARE, "7.25 %");
    single.put(JobFacts.TAX_ON, JobFacts.ON_MATERIAL);
    single.put(JobFacts.CONTROLLERS_KEPT, "0");
    single.put(JobFacts.SENSORS_KEPT, "0");
    single.put(Use.BASIS, Use.BY_DESIGN);
    single.put(Rates.BILLED_BY, Rates.THOUSAND_GALLONS);
    single.put(Savings.WATER_RISE, "4 %");
    single.put(Savings.DISCOUNT, "5 %");
    single.put(Savings.LIFE, "15");
    single.forEach((column, text) -> parts.add(edits.typed(column.reference(), 0, text)));
    parts.add(edits.appended(PROGRAMS, List.of(List.of(new Entry.Words("C")))));
    rows(ZONES, lines("campus-proposed.csv"));
    design.book().start(new Edit.Several("zones", parts));
    parts.clear();
    rows(FOUND, lines("campus-as-found.csv"));
    extras();
    money();
    design.book().start(new Edit.Several("retrofit", parts));
    priceBook();
    return design;
  }

  private void extras() {
    List<Column> columns = List.of(Extras.LABEL, Extras.KIND, Extras.AMOUNT, Extras.NOTE);
    rows(
        EXTRAS,
        columns,
        List.of(
            List.of("Trencher for the new zone", Extras.EQUIPMENT, "240", "invented; one day"),
            List.of("Turf taken off, zone 3", Extras.SUBCONTRACT, "960", "invented"),
            List.of(
                "Planting of zone 3", Extras.ALLOWANCE, "1800", "invented; plants not chosen yet"),
            List.of(
                "Flow sensor and master valve",
                Extras.ALTERNATE,
                "1450",
                "invented; owner to decide")));
  }

  private void money() {
    for (int tier = 0; tier < RATE_TIERS.length; tier++) {
      parts.add(edits.typed(Rates.UP_TO.reference(), tier, RATE_TIERS[tier][0]));
      parts.add(edits.typed(Rates.WATER_PRICE.reference(), tier, RATE_TIERS[tier][1]));
      parts.add(edits.typed(Rates.SEWER_PRICE.reference(), tier, RATE_TIERS[tier][2]));
    }
    for (int month = 0; month < SETTINGS.length; month++) {
      parts.add(edits.typed(Use.SETTING.reference(), month, SETTINGS[month] + " %"));
    }
    List<Column> columns =
        List.of(
            Rebates.LABEL,
            Rebates.COUNTED_BY,
            Rebates.EMITTER,
            Rebates.EACH,
            Rebates.CAP,
            Rebates.NOTE);
    rows(
        REBATES,
        columns,
        List.of(
            List.of(
                "Rotating nozzles",
                Counted.EMITTERS,
                "multi-stream rotating nozzle",
                "2",
                "500",
                "invented"),
            List.of("Weather-based controller", Counted.CONTROLLERS, "", "200", "", "invented")));
    int last = design.book().rows(ZONES) - 1;
    parts.add(edits.typed(Wiring.RUN.reference(), last, "320 ft"));
    parts.add(edits.typed(Laterals.LENGTH.reference(), last, "95 ft"));
    parts.add(edits.typed(Laterals.SIZE.reference(), last, "1 in"));
    parts.add(edits.typed(Mains.LENGTH.reference(), last, "60 ft"));
    parts.add(edits.typed(Mains.SIZE.reference(), last, "1-1/2 in"));
  }

  private void priceBook() {
    try {
      design
          .book()
          .start(
              new PriceBook(design.book()).edit(text("/zonewright/estimate/demo-price-book.csv")));
    } catch (PriceBook.Unreadable problem) {
      throw new IllegalStateException(problem);
    }
  }

  private void rows(String table, List<CSVRecord> lines) {
    List<Column> columns = new ArrayList<>();
    for (String heading : lines.get(0)) {
      columns.add(
          design.book().schema().table(table).columns().stream()
              .filter(column -> column.name().equals(heading))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException(table + " has no " + heading)));
    }
    rows(table, columns, lines.subList(1, lines.size()).stream().map(CSVRecord::toList).toList());
  }

  private void rows(String table, List<Column> columns, List<List<String>> texts) {
    TableDefinition definition = design.book().schema().table(table);
    List<List<Entry>> rows = new ArrayList<>();
    for (List<String> line : texts) {
      List<Entry> entries = new ArrayList<>();
      for (Column column : definition.columns()) {
        int at = columns.indexOf(column);
        entries.add(at < 0 ? Entry.BLANK : Entries.read(column, line.get(at), UnitSystem.US));
      }
      rows.add(entries);
    }
    parts.add(edits.appended(table, rows));
  }

  private static List<CSVRecord> lines(String resource) {
    try {
      return CSVFormat.RFC4180.parse(reader(resource)).getRecords();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static String text(String resource) {
    try (Reader reader = reader(resource)) {
      StringBuilder text = new StringBuilder();
      char[] some = new char[4096];
      for (int n = reader.read(some); n >= 0; n = reader.read(some)) {
        text.append(some, 0, n);
      }
      return text.toString();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Reader reader(String resource) {
    InputStream stream = CampusRetrofit.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new IllegalStateException("the program lacks " + resource);
    }
    return new InputStreamReader(stream, StandardCharsets.UTF_8);
  }
}
