package zonewright.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import zonewright.design.Design;
import zonewright.handover.Proposal;
import zonewright.handover.ProposalPages;

/** Writes the proposal as pages to send and to sign. */
@Command(
    name = "proposal",
    header = "Write the proposal to the owner as a PDF: scope, price, payments, terms, signatures.",
    description = {
      "",
      "What the office says on it, such as client, number, terms and payments, is typed on the sheet"
          + " Estimate; the price adds up on the page. The pack has the same as a sheet.",
      ""
    },
    footer = {"", "Examples:", "  zonewright proposal offer.pdf --from priced.xlsx"})
final class ProposalCommand extends PagesCommand {
  @Override
  Optional<String> lacking(Design design) {
    return Proposal.lacking(design.book());
  }

  @Override
  byte[] pages(Design design) {
    return ProposalPages.of(design);
  }
}
