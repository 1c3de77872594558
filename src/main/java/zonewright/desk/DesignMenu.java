package zonewright.desk;

import javax.swing.JMenu;
import javax.swing.JMenuItem;
import zonewright.desk.findings.Mending;
import zonewright.desk.list.ListDesk;
import zonewright.desk.list.PricingDesk;
import zonewright.desk.part.UserAction;
import zonewright.desk.sheets.DesignSteps;
import zonewright.desk.sheets.SheetDeck;
import zonewright.desk.weather.WeatherDesk;

/** The menu of what is done to the design as a whole. */
record DesignMenu(
    SheetDeck deck,
    DesignSteps steps,
    Mending mending,
    ZoneSplit split,
    PricingDesk pricing,
    ListDesk lists,
    WeatherDesk weather,
    SideWindows windows) {
  /** Fills it. */
  void fill(JMenu menu) {
    menu.add(steps.units().item());
    menu.add(mending.next().item());
    menu.add(mending.mend().item());
    menu.add(split.one().item());
    menu.add(split.all().item());
    menu.addSeparator();
    windows.timing().forEach(action -> menu.add(action.item()));
    menu.addSeparator();
    windows.otherwise().forEach(action -> menu.add(action.item()));
    menu.addSeparator();
    menu.add(item("Find a climate place …", weather::findPlace));
    menu.add(item("Read weather …", weather::readAsked));
    menu.addSeparator();
    menu.add(item("Take the zones as found", pricing::takeAsFound));
    menu.add(item("Propose the zones as found", pricing::proposeAsFound));
    menu.add(item("Read a price book …", lists::readPrices));
    menu.add(item("Write the price book …", pricing::writePrices));
  }

  private JMenuItem item(String name, Runnable work) {
    return new UserAction(name, deck.typed(work)).item();
  }
}
