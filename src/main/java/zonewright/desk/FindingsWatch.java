package zonewright.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Timer;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/** Keeps the list of findings, and the marks in the cells, up to date with the design. */
final class FindingsWatch {
  private static final int DELAY_MILLIS = 120;

  /** With many zones a copy is made of all: worth it only once a person pauses. */
  private static final int DELAY_OF_MANY_MILLIS = 400;

  private static final int MANY_ZONES = 400;

  private final OpenDesign open;
  private final FindingsPane pane;
  private final SheetDeck deck;
  private final FindingsSeeker seeker = new FindingsSeeker();
  private final Timer later;

  FindingsWatch(OpenDesign open, FindingsPane pane, SheetDeck deck) {
    this.open = open;
    this.pane = pane;
    this.deck = deck;
    later = new Timer(DELAY_MILLIS, event -> refresh());
    later.setRepeats(false);
    open.onChanged(
        changes -> {
          later.setInitialDelay(many(open.design()) ? DELAY_OF_MANY_MILLIS : DELAY_MILLIS);
          later.restart();
        });
  }

  /**
   * Says whether a design has so many zones that looking through all of them is another thread's
   * work, on a design of its own.
   */
  static boolean many(Design design) {
    return design.book().rows(Sheets.ZONES) >= MANY_ZONES;
  }

  /** Looks for what there is to say. */
  void refresh() {
    later.stop();
    Design design = open.design();
    if (many(design)) {
      seeker.seek(design.book().snapshot(), design.nights().before(), this::show);
    } else {
      seeker.forget();
      show(design.findings());
    }
  }

  private void show(List<Finding> found) {
    pane.show(found);
    Map<Place, Severity> worst = new HashMap<>();
    for (Finding finding : found) {
      worst.putIfAbsent(new Place(finding.column(), finding.row()), finding.severity());
    }
    deck.flag(place -> Optional.ofNullable(worst.get(place)));
  }

  /** Looks no more. */
  void close() {
    later.stop();
    seeker.close();
  }
}
