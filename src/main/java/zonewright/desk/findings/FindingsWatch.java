package zonewright.desk.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.desk.part.DesignCopy;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.sheets.SheetDeck;
import zonewright.nights.NightsPlan;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/**
 * Keeps the list of findings, and the marks in the cells, up to date with the design. They are
 * looked for in a copy, so that no key waits for them.
 */
public final class FindingsWatch {
  private static final int DELAY_MILLIS = 120;

  /** With many zones there is more to lay out: worth it only once a person pauses. */
  private static final int DELAY_OF_MANY_MILLIS = 300;

  private static final int MANY_ZONES = 400;

  private final OpenDesign open;
  private final DesignCopy copy;
  private final FindingsPane pane;
  private final SheetDeck deck;
  private final Timer later;

  /** Counts the looks, so that only the last is shown. */
  private final AtomicLong asked = new AtomicLong();

  /**
   * What was found.
   *
   * @param worst the gravest finding of each cell that has any
   */
  private record Found(List<Finding> all, Map<Place, Severity> worst) {
    static Found in(Design design) {
      List<Finding> all = design.findings();
      Map<Place, Severity> worst = new HashMap<>();
      for (Finding finding : all) {
        worst.putIfAbsent(new Place(finding.column(), finding.row()), finding.severity());
      }
      return new Found(all, worst);
    }
  }

  public FindingsWatch(OpenDesign open, DesignCopy copy, FindingsPane pane, SheetDeck deck) {
    this.open = open;
    this.copy = copy;
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
   * Says whether a design has so many zones that looking through all of them takes long enough to
   * be noticed.
   */
  public static boolean many(Design design) {
    return design.book().rows(Sheets.ZONES) >= MANY_ZONES;
  }

  /** Another design lies on the desk: what was found of the last is no longer shown. */
  public void startAnew() {
    pane.looking();
    deck.flag(place -> Optional.empty());
    refresh();
  }

  /** Looks for what there is to say. */
  public void refresh() {
    later.stop();
    long number = asked.incrementAndGet();
    Optional<NightsPlan> nights = open.design().nights().before();
    copy.use(other -> look(other, nights, number));
  }

  /** Looks through a copy, unless something else was asked for meanwhile. */
  private void look(Design other, Optional<NightsPlan> nights, long number) {
    if (number != asked.get()) {
      return;
    }
    nights.ifPresent(other.nights()::learn);
    Found found = Found.in(other);
    SwingUtilities.invokeLater(
        () -> {
          if (number == asked.get()) {
            show(found);
          }
        });
  }

  private void show(Found found) {
    pane.show(found.all());
    deck.flag(place -> Optional.ofNullable(found.worst().get(place)));
  }

  /** Looks no more. */
  public void close() {
    later.stop();
    asked.incrementAndGet();
  }
}
