package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import zonewright.desk.file.FileKeeper;
import zonewright.desk.file.OfficeDesk;
import zonewright.desk.handover.HandOver;
import zonewright.desk.list.ListDesk;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.UserAction;
import zonewright.desk.sheets.SheetDeck;

/** The menu of files: what begins, opens, saves and hands over. */
final class FileMenu {
  private final JMenu recent = new JMenu("Recent");
  private final SheetDeck deck;
  private final FileKeeper keeper;
  private final ListDesk lists;
  private final OfficeDesk office;
  private final HandOver handOver;
  private final Windowed windowed;
  private final UserAction open;
  private final UserAction save;

  /** What only a window can do. */
  record Windowed(UserAction begin, UserAction print, UserAction exportPicture, UserAction quit) {}

  FileMenu(
      SheetDeck deck,
      FileKeeper keeper,
      ListDesk lists,
      OfficeDesk office,
      HandOver handOver,
      Windowed windowed) {
    this.deck = deck;
    this.office = office;
    this.keeper = keeper;
    this.lists = lists;
    this.handOver = handOver;
    this.windowed = windowed;
    open =
        new UserAction("Open …", deck.typed(keeper::openAsked))
            .keys("ctrl O")
            .drawn(Pictogram.OPEN)
            .tip("Open a design (Ctrl+O)");
    save =
        new UserAction("Save", deck.typed(() -> keeper.save(() -> {})))
            .keys("ctrl S")
            .drawn(Pictogram.SAVE)
            .tip("Save (Ctrl+S)");
  }

  /** Returns what asks for a file and opens it. */
  UserAction open() {
    return open;
  }

  /** Returns what saves the design. */
  UserAction save() {
    return save;
  }

  /** Fills it. */
  void fill(JMenu menu) {
    menu.add(windowed.begin().item());
    menu.add(open.item());
    menu.add(new UserAction("Open the demo", keeper::demo).item());
    menu.add(recent);
    menu.addSeparator();
    menu.add(save.item());
    Runnable saveAs = deck.typed(() -> keeper.saveAs(() -> {}));
    menu.add(new UserAction("Save as …", saveAs).keys("ctrl shift S").item());
    menu.add(item("Back to what was saved", keeper::revert));
    JMenu adding = new JMenu("Add zones");
    adding.add(item("From a list (CSV) …", lists::readAsked));
    adding.add(item("From what was copied …", lists::paste));
    adding.add(item("As found, from a list (CSV) …", lists::readFoundAsked));
    menu.add(adding);
    JMenu ofTheOffice = new JMenu("The office's workbook");
    ofTheOffice.add(item("Take what this design has not", office::take));
    ofTheOffice.add(item("Begin new designs with it …", office::choose));
    ofTheOffice.add(item("Begin new designs blank", office::forget));
    menu.add(ofTheOffice);
    JMenu handing = new JMenu("Hand over");
    handing.add(item("Whole pack …", handOver::whole));
    handing.add(item("Chosen sheets …", handOver::chosen));
    handing.add(item("Copy for the client …", handOver::forClient));
    handing.add(item("Proposal (PDF) …", handOver::proposal));
    handing.add(item("Pages to print (PDF) …", handOver::pages));
    handing.add(item("Nights as a calendar …", handOver::calendar));
    menu.add(handing);
    menu.addSeparator();
    menu.add(windowed.print().item());
    menu.add(windowed.exportPicture().item());
    menu.addSeparator();
    menu.add(windowed.quit().item());
  }

  private JMenuItem item(String name, Runnable work) {
    return new UserAction(name, deck.typed(work)).item();
  }

  /** Brings the list of recent files up to date. */
  void refreshRecent(List<Path> files) {
    recent.removeAll();
    for (Path file : files) {
      JMenuItem item =
          new UserAction(file.getFileName().toString(), () -> keeper.open(file)).item();
      item.setToolTipText(file.toString());
      recent.add(item);
    }
    recent.setEnabled(!files.isEmpty());
  }
}
