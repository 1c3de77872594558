package zonewright.desk.sheets;

import javax.swing.JMenu;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserAction;
import zonewright.sheet.TableDefinition;

/** The menu that leads from sheet to sheet. */
public final class GoMenu {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final UserAction back;

  /** Makes what fills it; {@code back} leads to where a person came from. */
  public GoMenu(OpenDesign open, SheetDeck deck, UserAction back) {
    this.open = open;
    this.deck = deck;
    this.back = back;
  }

  /** Fills it. */
  public void fill(JMenu menu) {
    menu.add(back.item());
    menu.add(new UserAction("Next sheet", () -> deck.step(1)).keys("ctrl PAGE_DOWN").item());
    menu.add(new UserAction("Sheet before", () -> deck.step(-1)).keys("ctrl PAGE_UP").item());
    menu.addSeparator();
    for (SheetGroup group : SheetGroup.values()) {
      menu.add(
          new UserAction(group.words(), () -> front(group)).keys("ctrl " + group.digit()).item());
    }
    menu.addSeparator();
    for (SheetGroup group : SheetGroup.values()) {
      menu.add(sheets(group));
    }
  }

  private void front(SheetGroup group) {
    deck.show(group);
    deck.focusTarget().requestFocusInWindow();
  }

  private JMenu sheets(SheetGroup group) {
    JMenu sheets = new JMenu(group.words() + " sheets");
    for (String id : group.tables()) {
      TableDefinition table = open.book().schema().table(id);
      sheets.add(new UserAction(SheetGroup.caption(table), () -> deck.enter(id)).item());
    }
    return sheets;
  }
}
