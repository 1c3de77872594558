package zonewright.desk;

import javax.swing.JMenu;
import zonewright.sheet.TableDefinition;

/** The menu that leads from sheet to sheet. */
final class GoMenu {
  private final DeskWindow window;
  private final Deed back;

  /** Makes what fills it; {@code back} leads to where a person came from. */
  GoMenu(DeskWindow window, Deed back) {
    this.window = window;
    this.back = back;
  }

  /** Fills it. */
  void fill(JMenu menu) {
    menu.add(Menus.item(back));
    menu.add(
        Menus.item(new Deed("Next sheet", () -> window.deck().step(1)).keys("ctrl PAGE_DOWN")));
    menu.add(
        Menus.item(new Deed("Sheet before", () -> window.deck().step(-1)).keys("ctrl PAGE_UP")));
    menu.addSeparator();
    for (SheetGroup group : SheetGroup.values()) {
      menu.add(
          Menus.item(new Deed(group.words(), () -> front(group)).keys("ctrl " + group.digit())));
    }
    menu.addSeparator();
    for (SheetGroup group : SheetGroup.values()) {
      menu.add(sheets(group));
    }
  }

  private void front(SheetGroup group) {
    window.deck().show(group);
    window.deck().focusTarget().requestFocusInWindow();
  }

  private JMenu sheets(SheetGroup group) {
    JMenu sheets = new JMenu("Sheets of " + group.words());
    for (String id : group.tables()) {
      TableDefinition table = window.openDesign().book().blueprint().table(id);
      sheets.add(Menus.item(new Deed(SheetGroup.caption(table), () -> window.goToSheet(id))));
    }
    return sheets;
  }
}
