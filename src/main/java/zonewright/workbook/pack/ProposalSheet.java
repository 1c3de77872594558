package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import zonewright.design.Caution;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.ForClient;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Extras;
import zonewright.estimate.Money;
import zonewright.handover.Proposal;
import zonewright.handover.ProposalPages;
import zonewright.savings.Cases;
import zonewright.savings.Worth;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.workbook.kit.CellStyleName;

/** The proposal to the owner: the price, what is in it, what may be chosen, and what it saves. */
final class ProposalSheet implements PackSheet {
  @Override
  public String word() {
    return "proposal";
  }

  @Override
  public String title() {
    return "Proposal";
  }

  @Override
  public String about() {
    return "The price to the owner, what is in it, alternates, and what it saves.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return Proposal.lacking(design.book());
  }

  @Override
  public void write(PackBook pack) {
    Page page = pack.page(title(), false, 42, 22, 18, 22);
    Book book = pack.office().book();
    String currency = Money.currency(book).map("All money in %s."::formatted).orElse("");
    page.title("Proposal: " + pack.project(), currency);
    Proposal proposal = new Proposal(pack.office());
    for (Proposal.Fact fact : proposal.facts()) {
      page.words(0, fact.column().name(), CellStyleName.NAME)
          .words(1, fact.value(), CellStyleName.PLAIN)
          .reaching(1, fact.value(), CellStyleName.PLAIN)
          .next();
    }
    listed(page, "Scope of work", proposal.scope());
    listed(page, "Not included", proposal.excluded());
    price(page.next(), book, proposal);
    alternates(page, proposal);
    if (!proposal.payments().isEmpty()) {
      page.next().band("Payments");
      proposal.payments().forEach(line -> amount(page, line).next());
    }
    if (!proposal.savings().isEmpty()) {
      savings(page.next(), pack, proposal);
      page.sheet().setRowBreak(page.row());
    }
    listed(page, "Terms", proposal.terms());
    terms(page.next());
    page.next().band("Accepted");
    for (String name : proposal.signatures()) {
      page.next().words(0, name, CellStyleName.NAME).words(1, "", CellStyleName.NAME).next();
    }
  }

  private static void listed(Page page, String band, List<String> lines) {
    if (!lines.isEmpty()) {
      page.next().band(band);
      lines.forEach(line -> page.across(line, CellStyleName.PLAIN));
    }
  }

  private static Page amount(Page page, Proposal.Line line) {
    return page.words(0, line.words(), CellStyleName.NAME)
        .ofOffice(1, line.column(), line.row(), CellStyleName.CALCULATED);
  }

  private static void price(Page page, Book book, Proposal proposal) {
    page.band("The price");
    for (Proposal.Line line : proposal.price()) {
      amount(page, line);
      if (line.column().equals(BuildUp.TOTAL)) {
        page.words(2, Money.text(book, BuildUp.TOTAL, 0), CellStyleName.SMALL);
      }
      page.next();
    }
    proposal
        .allowances()
        .ifPresent(
            line -> {
              amount(page, line).next();
              page.across(proposal.allowancesFor(), CellStyleName.SMALL);
            });
  }

  private static void alternates(Page page, Proposal proposal) {
    List<Proposal.Line> alternates = proposal.alternates();
    if (alternates.isEmpty()) {
      return;
    }
    page.next().band("Alternates, to choose");
    page.headings("Alternate", "Adds to the price", "Taken now", "Tick to choose");
    for (Proposal.Line alternate : alternates) {
      page.ofOffice(0, Extras.LABEL, alternate.row(), CellStyleName.PLAIN)
          .ofOffice(1, alternate.column(), alternate.row(), CellStyleName.CALCULATED)
          .words(2, proposal.taken(alternate) ? "yes" : "no", CellStyleName.PLAIN)
          .words(3, "☐", CellStyleName.PLAIN)
          .next();
    }
  }

  private static void savings(Page page, PackBook pack, Proposal proposal) {
    page.band("What it saves");
    for (Column column : proposal.savings()) {
      page.words(0, column.heading(pack.design().book().system()), CellStyleName.NAME)
          .ofOffice(1, column, 0, CellStyleName.CALCULATED)
          .next();
    }
    page.next().headings("If things turn out …", "Low", "As expected", "High");
    for (Column column :
        List.of(
            Cases.ACHIEVED,
            Cases.RISE,
            Worth.FIRST_YEAR,
            Worth.PAYBACK,
            Worth.NET_PRESENT_VALUE,
            Worth.RATE_OF_RETURN)) {
      page.words(0, column.name(), CellStyleName.NAME);
      for (int at = 0; at < Cases.NAMES.size(); at++) {
        page.ofOffice(at + 1, column, at, CellStyleName.CALCULATED);
      }
      page.next();
    }
    for (Finding finding : ForClient.findingsOfSavings(pack.office())) {
      page.across(finding.where() + " " + finding.sentence() + ".", CellStyleName.PLAIN);
    }
    page.across(ProposalPages.FORECAST, CellStyleName.SMALL);
  }

  private static void terms(Page page) {
    page.band("Take care");
    page.across(ProposalPages.STANDS_FOR, CellStyleName.CAUTION);
    for (Caution caution : Caution.all().subList(0, 4)) {
      page.across(caution.topic() + ". " + caution.sentences(), CellStyleName.CAUTION);
    }
  }
}
