package zonewright.desk.sheets;

import java.util.HashSet;
import java.util.Set;
import javax.swing.Timer;
import zonewright.design.Design;
import zonewright.design.SheetsInUse;
import zonewright.desk.part.DesignCopy;
import zonewright.sheet.TableDefinition;

/** Keeps it known which sheets are in use, so that the others can stand back. */
public final class SheetUse {
  private static final int PAUSE_MILLIS = 400;

  private final DesignCopy copy;
  private final SheetDeck deck;
  private final Timer later = new Timer(PAUSE_MILLIS, event -> look());

  /** Makes one that looks in a copy of the design, so that no key waits for it. */
  public SheetUse(DesignCopy copy, SheetDeck deck) {
    this.copy = copy;
    this.deck = deck;
    later.setRepeats(false);
  }

  /** Looks once a person pauses. */
  public void lookSoon() {
    later.restart();
  }

  /** Looks no more. */
  public void close() {
    later.stop();
  }

  private void look() {
    copy.use(
        design -> {
          Set<String> used = of(design);
          javax.swing.SwingUtilities.invokeLater(() -> deck.used(used));
        });
  }

  private static Set<String> of(Design design) {
    Set<String> used = new HashSet<>();
    for (TableDefinition table : design.book().schema().tables()) {
      if (SheetsInUse.uses(design.book(), table)) {
        used.add(table.id());
      }
    }
    return used;
  }
}
