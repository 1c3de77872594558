package zonewright.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import zonewright.design.Design;
import zonewright.handover.HandoverPages;
import zonewright.trade.Sheets;

/** Writes the handover pack as pages to print. */
@Command(
    name = "handover",
    header =
        "Write the handover pack as a PDF: program cards, facts for the controller, checklist.",
    description = {
      "",
      "One page for each program as it is keyed in, then what a weather-based controller asks zone"
          + " by zone, the peak climate value and the months, and the list to go through on the day."
          + " The same design makes the same file.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright handover garden.pdf --from garden.xlsx",
      "  zonewright handover garden.pdf --sample library-garden --replace"
    })
final class HandoverCommand extends PagesCommand {
  @Override
  Optional<String> lacking(Design design) {
    return design.book().rows(Sheets.ZONES) == 0
        ? Optional.of("There is nothing to hand over: the design has no zones.")
        : Optional.empty();
  }

  @Override
  byte[] pages(Design design) {
    return HandoverPages.of(design);
  }
}
