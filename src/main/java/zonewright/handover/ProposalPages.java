package zonewright.handover;

import java.util.ArrayList;
import java.util.List;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.design.ForClient;
import zonewright.estimate.Money;
import zonewright.estimate.ProposalFacts;
import zonewright.paper.Paper;
import zonewright.paper.PaperSize;
import zonewright.paper.PaperTable;
import zonewright.savings.Savings;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Writes the proposal of a design as pages to send and to sign. */
public final class ProposalPages {
  /** What the price stands for, on paper and on the sheet. */
  public static final String STANDS_FOR =
      "This price is made from a takeoff of the design and stands for the work described there. Permits,"
          + " local codes and licensed practice decide what may be done and by whom.";

  /** What a forecast is worth, on paper and on the sheet. */
  public static final String FORECAST =
      "Savings are a forecast from equations, published climate and what was typed. Weather, use and"
          + " rates will differ. Rebates are paid by the program's own rules and only if they are kept.";

  /** What is drawn as bars, with its figures, and not said again. */
  private static final List<Column> DRAWN = List.of(Savings.YEAR_BEFORE, Savings.YEAR_AFTER);

  private final Design office;
  private final Book book;
  private final Proposal proposal;

  private ProposalPages(Design office) {
    this.office = office;
    this.book = office.book();
    this.proposal = new Proposal(office);
  }

  /**
   * Returns the file, a PDF; the same design makes the same file to the byte.
   *
   * @param office a design of which {@link Proposal#lacking} says nothing
   */
  public static byte[] of(Design office) {
    ProposalPages pages = new ProposalPages(office);
    PaperSize size = PaperSize.of(office.book().system());
    String project = pages.or(Facts.PROJECT_NAME, "Irrigation");
    String number = pages.or(ProposalFacts.NUMBER, "");
    String name = "Proposal" + (number.isEmpty() ? "" : " " + number);
    try (Paper paper = new Paper(size, project + ": " + name, project, name)) {
      paper.page(name + ": " + project, "");
      pages.write(paper);
      return paper.file();
    }
  }

  private String or(Column column, String otherwise) {
    String said = proposal.shown(column, 0);
    return said.isEmpty() ? otherwise : said;
  }

  private void write(Paper paper) {
    proposal.facts().forEach(fact -> paper.fact(fact.column().name(), fact.value(), 11));
    listed(paper, "Scope of work", proposal.scope());
    listed(paper, "Not included", proposal.excluded());
    paper.heading("Price");
    amounts(paper, proposal.price());
    proposal
        .allowances()
        .ifPresent(
            line -> {
              amounts(paper, List.of(line));
              paper.sentences(proposal.allowancesFor(), 10);
            });
    alternates(paper);
    if (!proposal.payments().isEmpty()) {
      paper.heading("Payments");
      amounts(paper, proposal.payments());
    }
    savings(paper);
    listed(paper, "Terms", proposal.terms());
    paper.sentences(STANDS_FOR, 10);
    paper.heading("Accepted");
    paper.signatures(proposal.signatures());
  }

  private static void listed(Paper paper, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      paper.heading(heading);
      lines.forEach(line -> paper.indented("– " + line, 11));
    }
  }

  private void amounts(Paper paper, List<Proposal.Line> lines) {
    PaperTable table = new PaperTable().words("", 60).strongNumber("", 30);
    for (Proposal.Line line : lines) {
      table.row(List.of(line.words(), Money.text(book, line.column(), line.row())));
    }
    paper.table(table, 12, 9, 0);
  }

  private void alternates(Paper paper) {
    List<Proposal.Line> alternates = proposal.alternates();
    if (alternates.isEmpty()) {
      return;
    }
    paper.heading("Alternates: tick what you choose, and initial it");
    for (Proposal.Line alternate : alternates) {
      String amount = Money.text(book, alternate.column(), alternate.row());
      paper.tick(
          "%s: %s"
              .formatted(
                  alternate.words(),
                  proposal.taken(alternate)
                      ? amount + ", in the price already"
                      : "adds " + amount + " to the price"));
    }
  }

  private void savings(Paper paper) {
    List<Column> savings = proposal.savings();
    if (savings.isEmpty()) {
      return;
    }
    paper.heading("Water and money saved");
    List<Paper.Bar> bars = new ArrayList<>();
    for (Column column : DRAWN) {
      double amount = book.number(column.reference(), 0);
      if (amount >= 0) {
        bars.add(new Paper.Bar(column.name(), amount, proposal.shown(column, 0)));
      }
    }
    paper.bars(bars);
    for (Column column : savings) {
      if (DRAWN.contains(column)) {
        continue;
      }
      String value =
          column.kind() == QuantityKind.MONEY && !column.takesEntries()
              ? Money.text(book, column, 0)
              : or(column, "not known yet");
      paper.fact(column.name(), value, 11);
    }
    for (Finding finding : ForClient.findingsOfSavings(office)) {
      paper.sentences(finding.where() + " " + finding.sentence() + ".", 10);
    }
    paper.sentences(FORECAST, 10);
  }
}
