package zonewright.design;

import static zonewright.trade.Sheets.CASES;
import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.CREWS;
import static zonewright.trade.Sheets.CURRENCIES;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.EXTRAS;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.RATES;
import static zonewright.trade.Sheets.REBATES;
import static zonewright.trade.Sheets.SAVINGS;
import static zonewright.trade.Sheets.SECTIONS;
import static zonewright.trade.Sheets.TAKEOFF;
import static zonewright.trade.Sheets.USE;
import static zonewright.trade.Sheets.YEARS;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import zonewright.climate.Climate;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Counted;
import zonewright.estimate.Counts;
import zonewright.estimate.Crews;
import zonewright.estimate.Currencies;
import zonewright.estimate.EstimateRules;
import zonewright.estimate.Parts;
import zonewright.estimate.ProposalFacts;
import zonewright.estimate.Sections;
import zonewright.estimate.ZoneCosts;
import zonewright.retrofit.AsFound;
import zonewright.retrofit.Beside;
import zonewright.retrofit.Difference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.retrofit.Takeoff;
import zonewright.savings.Cases;
import zonewright.savings.Rates;
import zonewright.savings.Rebates;
import zonewright.savings.SavingsRules;
import zonewright.savings.Use;
import zonewright.savings.Worth;
import zonewright.savings.Years;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Rule;
import zonewright.sheet.TableDefinition;

/** The sheets by which a design is priced and a retrofit proved; empty until somebody does. */
final class PricingSheets {
  private PricingSheets() {}

  /** Returns the sheets, to stand after the zones. */
  static List<TableDefinition> tables(List<Column> zoneColumns) {
    return List.of(
        new TableDefinition(
            FOUND,
            "Found",
            "zone as found",
            new TableDefinition.Rows.Free(),
            AsFound.columns(
                zoneColumns, List.of(Facts.ZONE_PLACE, Facts.ZONE_NOTE), Beside.columns())),
        new TableDefinition(
            TAKEOFF,
            "Takeoff",
            "zone",
            new TableDefinition.Rows.Alongside(ZONES),
            takeoffColumns()),
        named(
            COUNTS,
            "Counts",
            "thing counted",
            Counted.WORDS,
            with(Counts.columns(), ZoneCosts.COST_NEW, ZoneCosts.COST_NEEDED)),
        free(CREWS, "Crews", "crew", Crews.columns()),
        free(CURRENCIES, "Currencies", "currency", Currencies.columns()),
        free(
            PARTS,
            "Parts",
            "item",
            with(
                Parts.columns(),
                ZoneCosts.OF_NEW,
                ZoneCosts.OF_LATERAL,
                ZoneCosts.OF_MAIN,
                ZoneCosts.OF_WIRE,
                ZoneCosts.OF_NEEDED,
                ZoneCosts.OF_KEPT)),
        named(SECTIONS, "Sections", "section", Counted.SECTIONS, Sections.columns()),
        free(EXTRAS, "Extras", "extra", BuildUp.extraColumns()),
        single(ESTIMATE, "Estimate", estimate()),
        named(USE, "Use", "month", Climate.MONTH_NAMES, Use.columns()),
        free(RATES, "Rates", "tier", Rates.columns()),
        free(REBATES, "Rebates", "rebate", Rebates.columns()),
        single(SAVINGS, "Savings", Worth.savingsColumns()),
        named(CASES, "Cases", "case", Cases.NAMES, Worth.caseColumns()),
        named(YEARS, "Years", "year", Years.NAMES, Years.columns()));
  }

  /** Returns the rules, in the order in which they should be read. */
  static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>(EstimateRules.all());
    rules.addAll(SavingsRules.all());
    return rules;
  }

  /** Returns the edits that number the rows of the sheets that count them. */
  static List<Edit> numbering(Edits edits) {
    List<Edit> parts = new ArrayList<>();
    number(parts, edits, Use.POSITION, Climate.MONTH_NAMES.size(), 1);
    parts.add(
        edits.appended(
            RATES,
            Rates.TIERS.stream().map(tier -> List.<Entry>of(new Entry.Words(tier))).toList()));
    number(parts, edits, Years.POSITION, Years.NAMES.size(), 0);
    return parts;
  }

  private static void number(List<Edit> parts, Edits edits, Column column, int rows, int first) {
    for (int row = 0; row < rows; row++) {
      parts.add(edits.set(column.reference(), row, new Entry.Figure(row + first)));
    }
  }

  private static List<Column> takeoffColumns() {
    List<Column> columns = new ArrayList<>();
    columns.add(Takeoff.ZONE_NAME);
    columns.addAll(Difference.ofHeads());
    columns.addAll(PipeTakeoff.columns());
    columns.add(Difference.VOLUME_FOUND);
    columns.add(Difference.VOLUME_PROPOSED);
    columns.addAll(ZoneCosts.takeoffColumns());
    return columns;
  }

  private static List<Column> with(List<Column> columns, Column... more) {
    List<Column> all = new ArrayList<>(columns);
    all.addAll(List.of(more));
    return all;
  }

  private static TableDefinition named(
      String id, String title, String word, List<String> names, List<Column> columns) {
    return new TableDefinition(id, title, word, new TableDefinition.Rows.Named(names), columns);
  }

  private static TableDefinition free(String id, String title, String word, List<Column> columns) {
    return new TableDefinition(id, title, word, new TableDefinition.Rows.Free(), columns);
  }

  private static TableDefinition single(String id, String title, List<Column> columns) {
    return new TableDefinition(
        id,
        title,
        title.toLowerCase(java.util.Locale.ROOT),
        new TableDefinition.Rows.One(),
        columns);
  }

  private static List<Column> estimate() {
    List<Column> columns = new ArrayList<>(BuildUp.estimateColumns());
    columns.add(ZoneCosts.NOT_ALLOTTED);
    columns.addAll(ProposalFacts.columns());
    return columns;
  }
}
