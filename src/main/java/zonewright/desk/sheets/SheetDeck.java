package zonewright.desk.sheets;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import zonewright.desk.part.Keyboard;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserAction;
import zonewright.sheet.Place;
import zonewright.sheet.Schema;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.water.Demand;

/**
 * The sheets of the design: a row of groups, and under it the sheets of the group at the front,
 * under tabs. A sheet is built when it is first looked at.
 */
public final class SheetDeck extends JPanel {
  private final OpenDesign open;
  private final List<Runnable> onSelected = new ArrayList<>();
  private final JTabbedPane tabs = new JTabbedPane();
  private final GroupBar groups = new GroupBar(this::show);
  private final Map<String, SheetView> views = new HashMap<>();
  private final Map<SheetGroup, String> lastOf = new EnumMap<>(SheetGroup.class);
  private final ColumnViews columnViews;
  private final SheetTools tools;
  private transient Function<Place, Optional<Severity>> flags = place -> Optional.empty();
  private transient Function<Place, String> facts = place -> "";
  private transient Consumer<Place> refused = place -> {};
  private transient Pasting pasting = (table, block, asItIs) -> false;
  private transient Runnable ownColumn = () -> {};
  private String front = Sheets.ZONES;
  private List<String> inTabs = List.of();

  /** The sheets in use; empty while that is not known. */
  private transient Set<String> used = Set.of();

  private boolean building;
  private boolean pending;

  public SheetDeck(OpenDesign open, ColumnViews columnViews) {
    super(new BorderLayout());
    this.open = open;
    this.columnViews = columnViews;
    this.tools = new SheetTools(columnViews);
    tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, tools);
    tabs.setName("sheets");
    tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
    tabs.getAccessibleContext().setAccessibleName("Sheets");
    tabs.addChangeListener(
        event -> {
          if (!building && tabs.getSelectedIndex() >= 0) {
            show(inTabs.get(tabs.getSelectedIndex()));
          }
        });
    add(groups, BorderLayout.PAGE_START);
    add(tabs, BorderLayout.CENTER);
    open.onReplaced(this::build);
    open.onChanged(
        changes -> {
          if (changes.columns()) {
            tools.serve(schema().table(front), front().grid());
          }
        });
  }

  /** Who may take what is pasted into a sheet. */
  public interface Pasting {
    /**
     * Says whether somebody else takes a block that is pasted into a table.
     *
     * @param asItIs pastes it into the table all the same
     */
    boolean takesOver(String table, List<List<String>> block, Runnable asItIs);
  }

  /** Sets who may take what is pasted. */
  public void onPaste(Pasting who) {
    pasting = who;
  }

  /** Sets who says why nothing is typed into a cell, and what can be done instead. */
  public void onRefused(Consumer<Place> who) {
    refused = who;
  }

  /** Sets who says what else is known of a cell, in a sentence. */
  public void onFact(Function<Place, String> who) {
    facts = who;
  }

  /** Hears when another cell or another sheet is selected. */
  public void onSelected(Runnable listener) {
    onSelected.add(listener);
  }

  /** Sets who lets a person define a column of their own. */
  public void onOwnColumn(Runnable who) {
    ownColumn = who;
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

  /** Builds the first sheet of the design, which is asked for only now. */
  public void build() {
    views.clear();
    lastOf.clear();
    inTabs = List.of();
    show(Sheets.ZONES);
  }

  private Schema schema() {
    return open.book().schema();
  }

  private SheetView view(String id) {
    return views.computeIfAbsent(id, this::made);
  }

  private SheetView made(String id) {
    TableDefinition table = schema().table(id);
    SheetView view =
        table.single()
            ? new RecordView(open.book(), id, this::selected)
            : new GridView(
                open.book(), id, frozen -> columnViews.last(table, frozen), this::selected);
    view.grid()
        .ifPresent(
            grid ->
                SheetTools.remember(columnViews, () -> schema().table(id), grid, tools::refresh));
    view.flag(flags);
    view.onFact(place -> facts.apply(place));
    view.onRefused(place -> refused.accept(place));
    view.onOwnColumn(() -> ownColumn.run());
    view.grid()
        .ifPresent(grid -> grid.onPaste((block, asItIs) -> pasting.takesOver(id, block, asItIs)));
    stepping((JComponent) view.focusTarget(), "ctrl PAGE_DOWN", 1);
    stepping((JComponent) view.focusTarget(), "ctrl PAGE_UP", -1);
    return view;
  }

  /** In the cells themselves, for the panes around them would take these keys to scroll. */
  private void stepping(JComponent cells, String key, int places) {
    cells.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), key);
    cells.getActionMap().put(key, new UserAction(key, () -> step(places)));
  }

  /** Returns the tools beside the tabs. */
  public SheetTools tools() {
    return tools;
  }

  /** Brings a group to the front, with the sheet of it that was there last. */
  public void show(SheetGroup group) {
    show(lastOf.getOrDefault(group, group.tables().get(0)));
  }

  /** Brings a sheet to the front. */
  public void show(String table) {
    SheetGroup group = SheetGroup.of(table);
    boolean hadKeyboard = views.containsKey(front) && Keyboard.has(view(front).component());
    building = true;
    front = table;
    lastOf.put(group, table);
    if (!inTabs.equals(group.tables())) {
      fill(group);
    }
    int at = inTabs.indexOf(table);
    Component shown = view(table).component();
    if (tabs.getComponentAt(at) != shown) {
      tabs.setComponentAt(at, shown);
    }
    tabs.setSelectedIndex(at);
    groups.front(group);
    building = false;
    tools.serve(schema().table(table), front().grid());
    if (hadKeyboard) {
      focusTarget().requestFocusInWindow();
    }
    selected();
  }

  /** Shows which sheets and groups are in use; the others stand back. */
  public void used(Set<String> tables) {
    used = tables;
    groups.used(group -> group.tables().stream().anyMatch(tables::contains));
    quietTabs();
  }

  private void quietTabs() {
    for (int at = 0; at < tabs.getTabCount(); at++) {
      boolean quiet = !used.isEmpty() && !used.contains(inTabs.get(at));
      tabs.setForegroundAt(at, quiet ? UIManager.getColor("Zonewright.muted") : null);
    }
  }

  private void fill(SheetGroup group) {
    tabs.removeAll();
    inTabs = group.tables();
    for (String id : inTabs) {
      SheetView known = views.get(id);
      TableDefinition table = schema().table(id);
      tabs.addTab(
          SheetGroup.caption(table),
          null,
          known == null ? new JPanel() : known.component(),
          table.about());
    }
    quietTabs();
  }

  /** Brings the sheet so many places on in the order of the groups to the front. */
  public void step(int places) {
    List<String> all =
        Arrays.stream(SheetGroup.values()).flatMap(group -> group.tables().stream()).toList();
    show(all.get(Math.floorMod(all.indexOf(front) + places, all.size())));
    focusTarget().requestFocusInWindow();
  }

  /** Returns the sheet at the front. */
  public SheetView front() {
    return view(front);
  }

  /** Returns the identifier of the sheet at the front. */
  public String frontTable() {
    return front;
  }

  /** Sets who says which cells have a finding, and how grave it is. */
  public void flag(Function<Place, Optional<Severity>> who) {
    flags = who;
    views.values().forEach(view -> view.flag(who));
  }

  /** Returns what is done once what is being typed has been taken over. */
  public Runnable typed(Runnable then) {
    return () -> {
      front().finishTyping();
      then.run();
    };
  }

  /** Brings a sheet to the front, with the keyboard in it. */
  public void enter(String table) {
    show(table);
    focusTarget().requestFocusInWindow();
  }

  /** Returns the cell the person is at, where it is still there. */
  public Optional<Place> current() {
    return front().current().filter(open::holds);
  }

  /** Goes to a cell on whichever sheet it stands. */
  public void goTo(Place place) {
    if (!open.holds(place)) {
      return;
    }
    show(place.column().table());
    front().goTo(place);
  }

  /** Begins at the first columns, with the first zone's run time where it is seen beside them. */
  public void goToStart() {
    show(Sheets.ZONES);
    front().grid().ifPresent(grid -> grid.begin(Demand.RUN_TIME));
  }

  /** Returns what takes the keyboard here. */
  public Component focusTarget() {
    return front().focusTarget();
  }
}
