package zonewright.desk.findings;

import java.util.List;
import java.util.function.Supplier;
import zonewright.design.Finding;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.Prose;
import zonewright.desk.part.UserAction;
import zonewright.desk.sheets.SheetDeck;
import zonewright.desk.sheets.Wayfinder;
import zonewright.sheet.Place;

/** Goes through the findings and carries out their remedies. */
public final class Mending {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final Supplier<FindingsPane> findings;
  private final Wayfinder ways;
  private final MessageBar messages;
  private final UserAction next =
      new UserAction("Next finding", this::nextFinding)
          .keys("F8")
          .drawn(Pictogram.NEXT_FINDING)
          .tip("Go to the next finding (F8)");
  private final UserAction mend =
      new UserAction("Put the finding right", this::mendFinding).keys("F9");

  public Mending(
      OpenDesign open,
      SheetDeck deck,
      Supplier<FindingsPane> findings,
      Wayfinder ways,
      MessageBar messages) {
    this.open = open;
    this.deck = deck;
    this.findings = findings;
    this.ways = ways;
    this.messages = messages;
  }

  /** Returns what goes to the next finding. */
  public UserAction next() {
    return next;
  }

  /** Returns what carries out the remedy of the finding selected, or of the cell at hand. */
  public UserAction mend() {
    return mend;
  }

  private void nextFinding() {
    deck.front().finishTyping();
    findings.get().next();
  }

  private void mendFinding() {
    deck.front().finishTyping();
    findings
        .get()
        .curable(deck.current())
        .ifPresentOrElse(
            this::mend,
            () ->
                messages.tell("There is nothing here that the program can put right.", List.of()));
  }

  /** Carries out the remedy of a finding, or says why it would not help. */
  public void mend(Finding finding) {
    deck.front().finishTyping();
    finding
        .mend(open.book())
        .ifPresentOrElse(
            edit -> {
              open.book().perform(edit);
              ways.jump(new Place(finding.column(), finding.row()));
              messages.clear();
            },
            () ->
                messages.tell(
                    "That would not help here. " + Prose.capital(finding.cure()) + ".", List.of()));
  }
}
