package zonewright.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.ProposalFacts;
import zonewright.estimate.Sections;
import zonewright.formula.Outcome;
import zonewright.retrofit.Takeoff;
import zonewright.savings.Savings;
import zonewright.savings.Use;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;

/**
 * What a proposal to the owner says, for its pages and for its sheet alike. Of the zones it names
 * only what a client's copy has too.
 */
public final class Proposal {
  private static final int MOST_ZONES = 60;

  private final Book book;

  /** Reads the proposal of an office's design. */
  public Proposal(Design office) {
    this.book = office.book();
  }

  /** A line of the proposal: what it is, and the cell its figure stands in. */
  public record Line(String words, Column column, int row) {}

  /** A name and what it is. */
  public record Fact(Column column, String value) {}

  /** Says why nothing can be proposed yet, if so. */
  public static Optional<String> lacking(Book book) {
    if (book.rows(Sheets.PARTS) == 0 && book.rows(Sheets.EXTRAS) == 0) {
      return Optional.of("There are no items and no extras to price yet.");
    }
    return Double.isNaN(book.number(BuildUp.TOTAL.reference(), 0))
        ? Optional.of(
            "The price cannot be added up: "
                + book.outcome(BuildUp.TOTAL.reference(), 0).sentence()
                + ".")
        : Optional.empty();
  }

  /** Returns whom and what the proposal is for; what was not typed is left out. */
  public List<Fact> facts() {
    return Stream.of(
            ProposalFacts.CLIENT,
            Facts.LOCATION,
            ProposalFacts.NUMBER,
            ProposalFacts.DATE,
            ProposalFacts.VALID,
            Facts.PREPARED_BY)
        .map(column -> new Fact(column, shown(column, 0)))
        .filter(fact -> !fact.value().isEmpty())
        .toList();
  }

  /** Returns what is done, in the office's words and by section and zone. */
  public List<String> scope() {
    List<String> scope = new ArrayList<>(own(ProposalFacts.SCOPE));
    List<String> sections =
        IntStream.range(0, book.rows(Sheets.SECTIONS))
            .filter(row -> book.number(Sections.COST_OF_SECTION.reference(), row) > 0)
            .mapToObj(row -> shown(Sections.SECTION, row))
            .toList();
    if (!sections.isEmpty()) {
      scope.add("Parts of the work: " + String.join(", ", sections) + ".");
    }
    int zones = book.rows(Sheets.ZONES);
    for (int row = 0; row < Math.min(zones, MOST_ZONES); row++) {
      if (book.counts(Sheets.ZONES, row)) {
        scope.add(zone(row));
      }
    }
    if (zones > MOST_ZONES) {
      scope.add("And %s more zones, as the design has them.".formatted(zones - MOST_ZONES));
    }
    return scope;
  }

  private String zone(int row) {
    List<String> parts = new ArrayList<>();
    for (Column column : List.of(Facts.ZONE_PLACE, Emitters.AREA, Emitters.EMITTER)) {
      parts.add(shown(column, row));
    }
    parts.removeIf(String::isEmpty);
    return "Zone %s: %s%s."
        .formatted(shown(Facts.ZONE_NAME, row), String.join(", ", parts), howMuch(row).orElse(""));
  }

  /** Returns how many emitters a zone has, of drip line how long it is. */
  private Optional<String> howMuch(int row) {
    boolean line = book.number(Takeoff.DRIP_LENGTH.reference(), row) > 0;
    String much = shown(line ? Takeoff.DRIP_LENGTH : Emitters.EMITTER_COUNT, row);
    return much.isEmpty() ? Optional.empty() : Optional.of((line ? ", " : " × ") + much);
  }

  /** Returns what the price does not cover. */
  public List<String> excluded() {
    return own(ProposalFacts.EXCLUDED);
  }

  /** Returns the office's own terms. */
  public List<String> terms() {
    return own(ProposalFacts.TERMS);
  }

  /** Returns the price as it adds up, the total last. */
  public List<Line> price() {
    // Tax on material, beside its rate, would tell what the material costs: it is not shown.
    return taxOnAll()
        ? List.of(
            new Line("The work as described, before tax", BuildUp.NET_PRICE, 0),
            new Line("Tax", BuildUp.TAX, 0),
            new Line("Price", BuildUp.TOTAL, 0))
        : List.of(new Line("Price, tax included", BuildUp.TOTAL, 0));
  }

  private boolean taxOnAll() {
    return book.outcome(JobFacts.TAX_ON.reference(), 0) instanceof Outcome.Words words
        && !words.text().equals(JobFacts.ON_MATERIAL);
  }

  /** Returns what of the price is set aside for what is not settled; nothing where nothing is. */
  public Optional<Line> allowances() {
    return book.number(BuildUp.ALLOWANCES.reference(), 0) == 0
        ? Optional.empty()
        : Optional.of(new Line("In it, allowances", BuildUp.ALLOWANCES_PRICE, 0));
  }

  /** Returns what the allowances are for. */
  public String allowancesFor() {
    String names = String.join(", ", of(Extras.ALLOWANCE).stream().map(Line::words).toList());
    return (names.isEmpty() ? "" : names + ". ")
        + "Allowances are sums set aside for what is not settled; what is really spent is charged instead.";
  }

  /** Returns the alternates with what each adds to the price. */
  public List<Line> alternates() {
    return of(Extras.ALTERNATE);
  }

  /** Says whether an alternate is in the price. */
  public boolean taken(Line alternate) {
    return book.number(Extras.COUNTS.reference(), alternate.row()) != 0;
  }

  private List<Line> of(String kind) {
    return IntStream.range(0, book.rows(Sheets.EXTRAS))
        .filter(
            row ->
                book.entry(Extras.KIND.reference(), row) instanceof Entry.Words words
                    && words.text().equalsIgnoreCase(kind))
        .mapToObj(row -> new Line(shown(Extras.LABEL, row), BuildUp.ALTERNATE_PRICE, row))
        .toList();
  }

  /**
   * Returns the schedule of payments, which adds up to the price; none where all is due at once.
   */
  public List<Line> payments() {
    List<Line> payments = new ArrayList<>();
    payment(ProposalFacts.DEPOSIT_SHARE, ProposalFacts.DEPOSIT).ifPresent(payments::add);
    payment(ProposalFacts.PROGRESS_SHARE, ProposalFacts.PROGRESS).ifPresent(payments::add);
    if (!payments.isEmpty()) {
      payments.add(new Line(ProposalFacts.REST.name(), ProposalFacts.REST, 0));
    }
    return payments;
  }

  private Optional<Line> payment(Column share, Column amount) {
    double part = book.number(share.reference(), 0);
    return part > 0
        ? Optional.of(
            new Line(
                amount.name() + ", " + share.shown(part, book.system()) + " of the price",
                amount,
                0))
        : Optional.empty();
  }

  /** Returns who signs, the office first. */
  public List<String> signatures() {
    String office = shown(ProposalFacts.SIGNED_BY, 0);
    String client = shown(ProposalFacts.CLIENT, 0);
    return List.of(
        "For the office" + (office.isEmpty() ? "" : ": " + office) + ", date",
        "Accepted" + (client.isEmpty() ? "" : ": " + client) + ", date");
  }

  /** Returns what a retrofit saves; nothing where nothing is replaced. */
  public List<Column> savings() {
    if (book.rows(Sheets.FOUND) == 0) {
      return List.of();
    }
    List<Column> savings =
        new ArrayList<>(
            List.of(
                Use.BASIS,
                Savings.YEAR_BEFORE,
                Savings.YEAR_AFTER,
                Savings.SAVED_VOLUME,
                Savings.SAVED_SHARE,
                Savings.WATER_SAVING,
                Savings.ENERGY_SAVING,
                Savings.UPKEEP,
                Savings.REBATE,
                Savings.NET_COST,
                Savings.WATER_RISE,
                Savings.DISCOUNT,
                Savings.LIFE));
    if (book.number(Savings.UPKEEP.reference(), 0) == 0) {
      savings.remove(Savings.UPKEEP);
    }
    return savings;
  }

  private List<String> own(Column column) {
    return book.entry(column.reference(), 0) instanceof Entry.Words words
        ? List.of(words.text().split("\\s*[;\\n]\\s*")).stream()
            .filter(each -> !each.isBlank())
            .map(each -> each.substring(0, 1).toUpperCase(Locale.ROOT) + each.substring(1))
            .toList()
        : List.of();
  }

  /** Returns a cell as it is printed; empty where it is blank or not known. */
  String shown(Column column, int row) {
    Outcome outcome = book.outcome(column.reference(), row);
    return outcome.lacks() || outcome instanceof Outcome.Blank
        ? ""
        : book.shown(column.reference(), outcome);
  }
}
