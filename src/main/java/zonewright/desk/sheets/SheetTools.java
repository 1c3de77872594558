package zonewright.desk.sheets;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.grid.Arrangement;
import zonewright.desk.grid.GridAction;
import zonewright.desk.grid.SheetGrid;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.UserAction;
import zonewright.sheet.TableDefinition;

/** Beside the tabs: which columns of the sheet are shown, in what order its rows, and which. */
public final class SheetTools extends JPanel {
  private final ColumnViews views;
  private final JButton view = tool("choose view", "View", Pictogram.DOWN);
  private final JButton sort = tool("sort rows", "Sort", Pictogram.SORT);
  private final JButton filter = tool("filter rows", "Filter", Pictogram.FILTER);
  private Optional<SheetGrid> grid = Optional.empty();
  private TableDefinition table;

  public SheetTools(ColumnViews views) {
    super(new MigLayout("insets 4 6 0 2, gap 2, hidemode 3, alignx right, aligny center"));
    this.views = views;
    setName("sheet tools");
    setOpaque(false);
    view.setHorizontalTextPosition(SwingConstants.LEADING);
    view.setToolTipText("Which columns are shown, in which order");
    sort.setToolTipText("Sort the rows by up to three columns (Ctrl+Shift+O)");
    filter.setToolTipText("Show only some of the rows (Ctrl+Shift+F)");
    view.addActionListener(event -> menu().show(view, 0, view.getHeight()));
    sort.addActionListener(event -> does(GridAction.SORT));
    filter.addActionListener(event -> does(GridAction.FILTER));
    add(view);
    add(sort);
    add(filter);
  }

  private static JButton tool(String name, String text, Pictogram sign) {
    JButton button = new JButton(text, sign);
    button.setName(name);
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    return button;
  }

  private void does(GridAction which) {
    grid.ifPresent(found -> UserAction.run(found.action(which), found));
  }

  /** Serves another sheet. */
  public void serve(TableDefinition sheet, Optional<SheetGrid> itsGrid) {
    table = sheet;
    grid = itsGrid;
    refresh();
  }

  /** Brings names and what can be done up to date. */
  public void refresh() {
    setVisible(grid.isPresent());
    grid.ifPresent(
        found -> {
          view.setText("View: " + current(found).map(ColumnViews.View::name).orElse("changed"));
          sort.setEnabled(found.action(GridAction.SORT).isEnabled());
          int hidden = found.hiddenRows();
          filter.setText(hidden == 0 ? "Filter" : "Filter: " + hidden + " hidden");
        });
  }

  private Optional<ColumnViews.View> current(SheetGrid found) {
    return views.matching(table, found.usuallyFrozen(), found.columns().arrangement());
  }

  /** Remembers what a person changes in the arrangement of the columns of a new grid. */
  public static void remember(
      ColumnViews views, Supplier<TableDefinition> table, SheetGrid grid, Runnable changed) {
    grid.columns()
        .onChanged(
            () -> {
              views.keepLast(table.get(), grid.usuallyFrozen(), grid.columns().arrangement());
              changed.run();
            });
  }

  /** Returns the menu of views. */
  public JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu("Views");
    grid.ifPresent(found -> fill(menu, found));
    return menu;
  }

  private void fill(JPopupMenu menu, SheetGrid found) {
    Optional<ColumnViews.View> shown = current(found);
    ButtonGroup group = new ButtonGroup();
    List<ColumnViews.View> all = views.of(table, found.usuallyFrozen());
    for (ColumnViews.View each : all) {
      JRadioButtonMenuItem item = new JRadioButtonMenuItem(each.name());
      item.setSelected(shown.equals(Optional.of(each)));
      item.addActionListener(event -> found.columns().apply(each.arrangement()));
      group.add(item);
      if (!each.own() && each.name().equals(table.columns().get(0).band())) {
        menu.addSeparator();
      }
      menu.add(item);
    }
    menu.addSeparator();
    for (GridAction which :
        List.of(
            GridAction.CHOOSE_COLUMNS,
            GridAction.FREEZE,
            GridAction.THAW,
            GridAction.FIT_COLUMNS)) {
      Action action = found.action(which);
      menu.add(action);
    }
    menu.addSeparator();
    JMenuItem keep = new JMenuItem("Keep this as a view of my own …");
    keep.addActionListener(event -> keep(found));
    menu.add(keep);
    shown
        .filter(ColumnViews.View::own)
        .ifPresent(
            own -> {
              JMenuItem forget = new JMenuItem("Forget the view “" + own.name() + "”");
              forget.addActionListener(
                  event -> {
                    views.forget(table, own.name());
                    refresh();
                  });
              menu.add(forget);
            });
  }

  /** Asks for the name of a view of one's own and keeps it. */
  private void keep(SheetGrid found) {
    Arrangement arrangement = found.columns().arrangement();
    TableDefinition of = table;
    found.askName(
        "What shall the view be called?",
        "such as “Rates and soils”",
        name -> {
          views.keep(of, name, arrangement);
          refresh();
        });
  }

  /** Shows the columns in the next of the views. */
  public void nextView() {
    grid.ifPresent(
        found -> {
          List<ColumnViews.View> all = views.of(table, found.usuallyFrozen());
          int at = current(found).map(all::indexOf).orElse(-1);
          found.columns().apply(all.get((at + 1) % all.size()).arrangement());
        });
  }

  /** Keeps the columns shown as a view of one's own. */
  public void keepView() {
    grid.ifPresent(this::keep);
  }
}
