package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** The sheets of the design under tabs. */
final class SheetDeck extends JTabbedPane {
  private final OpenDesign open;
  private final List<Runnable> onSelected = new ArrayList<>();
  private final Map<String, SheetView> views = new LinkedHashMap<>();
  private final ColumnViews columnViews;
  private final SheetTools tools;
  private boolean building;
  private boolean pending;

  SheetDeck(OpenDesign open, ColumnViews columnViews) {
    this.open = open;
    this.columnViews = columnViews;
    this.tools = new SheetTools(columnViews);
    putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, tools);
    setName("sheets");
    setTabLayoutPolicy(SCROLL_TAB_LAYOUT);
    getAccessibleContext().setAccessibleName("Sheets");
    addChangeListener(
        event -> {
          serve();
          selected();
        });
    build();
    open.onReplaced(this::build);
  }

  /** Hears when another cell or another sheet is selected. */
  void onSelected(Runnable listener) {
    onSelected.add(listener);
  }

  /** Tells once of what may have been several changes in a row. */
  private void selected() {
    if (!building && !pending) {
      pending = true;
      SwingUtilities.invokeLater(
          () -> {
            pending = false;
            onSelected.forEach(Runnable::run);
          });
    }
  }

  private void build() {
    building = true;
    removeAll();
    views.clear();
    for (TableDefinition table : open.book().blueprint().tables()) {
      SheetView view =
          table.single()
              ? new RecordView(open.book(), table.id(), this::selected)
              : new GridView(open.book(), table.id(), this::selected);
      view.grid().ifPresent(grid -> SheetTools.arrange(columnViews, table, grid, tools::refresh));
      views.put(table.id(), view);
      addTab(table.title(), view.component());
    }
    for (int at = 0; at < getTabCount(); at++) {
      setToolTipTextAt(at, getTitleAt(at) + " (Ctrl+" + (at + 1) + ")");
    }
    show(views.containsKey(Sheets.ZONES) ? Sheets.ZONES : views.keySet().iterator().next());
    building = false;
    serve();
    selected();
  }

  private void serve() {
    if (!building) {
      tools.serve(open.book().blueprint().table(frontTable()), front().grid());
    }
  }

  /** Returns the tools beside the tabs. */
  SheetTools tools() {
    return tools;
  }

  /** Brings a sheet to the front. */
  void show(String table) {
    setSelectedIndex(List.copyOf(views.keySet()).indexOf(table));
  }

  /** Returns the sheet at the front. */
  SheetView front() {
    return List.copyOf(views.values()).get(Math.max(0, getSelectedIndex()));
  }

  /** Returns the identifier of the sheet at the front. */
  String frontTable() {
    return List.copyOf(views.keySet()).get(Math.max(0, getSelectedIndex()));
  }

  /** Sets who says which cells have a finding, and how grave it is. */
  void flag(Function<Place, Optional<Severity>> flags) {
    views.values().forEach(view -> view.flag(flags));
  }

  /** Returns the cell the person is at, where it is still there. */
  Optional<Place> current() {
    return front().current().filter(open::holds);
  }

  /** Goes to a cell on whichever sheet it stands. */
  void goTo(Place place) {
    show(place.column().table());
    front().goTo(place);
  }

  /** Goes to the run time of the first zone, with what follows from it in view beside it. */
  void goToFirstResult() {
    if (views.containsKey(Sheets.ZONES) && open.book().rows(Sheets.ZONES) > 0) {
      goTo(new Place(CycleAndSoak.SOAK.reference(), 0));
      goTo(new Place(Demand.RUN_TIME.reference(), 0));
    }
  }

  /** Returns what takes the keyboard here. */
  Component focusTarget() {
    return front().focusTarget();
  }
}
