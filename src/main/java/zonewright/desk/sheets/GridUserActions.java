package zonewright.desk.sheets;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JMenu;
import zonewright.desk.grid.GridAction;
import zonewright.desk.part.UserAction;

/** What menus do to the selected cells, rows and columns of the sheet at the front. */
public final class GridUserActions {
  private static final List<List<GridAction>> EDITS =
      List.of(
          List.of(
              GridAction.CUT,
              GridAction.COPY,
              GridAction.COPY_WITH_HEADINGS,
              GridAction.COPY_AS_SHOWN,
              GridAction.PASTE,
              GridAction.PASTE_VALUES,
              GridAction.PASTE_TRANSPOSED),
          List.of(GridAction.SELECT_ALL, GridAction.SELECT_COLUMNS, GridAction.SELECT_ROWS),
          List.of(
              GridAction.EDIT,
              GridAction.CLEAR,
              GridAction.FILL_DOWN,
              GridAction.FILL_SERIES,
              GridAction.TODAY),
          List.of(GridAction.NOTE, GridAction.COLOUR),
          List.of(
              GridAction.INSERT_ROWS,
              GridAction.DUPLICATE_ROWS,
              GridAction.DELETE_ROWS,
              GridAction.MOVE_ROWS_UP,
              GridAction.MOVE_ROWS_DOWN),
          List.of(GridAction.FIND, GridAction.FIND_NEXT, GridAction.REPLACE));

  private static final List<List<GridAction>> ROWS_AND_COLUMNS =
      List.of(
          List.of(GridAction.SORT, GridAction.FILTER, GridAction.SHOW_ALL_ROWS),
          List.of(GridAction.OWN_COLUMN),
          List.of(
              GridAction.COLUMN_LEFT,
              GridAction.COLUMN_RIGHT,
              GridAction.CHOOSE_COLUMNS,
              GridAction.HIDE_COLUMNS,
              GridAction.SHOW_COLUMNS,
              GridAction.FREEZE,
              GridAction.THAW,
              GridAction.FIT_COLUMNS));

  private final SheetDeck deck;
  private final Consumer<GridAction> perform;
  private final Map<GridAction, UserAction> actions = new EnumMap<>(GridAction.class);

  public GridUserActions(SheetDeck deck, Consumer<GridAction> perform) {
    this.deck = deck;
    this.perform = perform;
  }

  /** Adds what is done to cells and rows. */
  public void edits(JMenu menu) {
    groups(menu, EDITS);
  }

  /** Adds what is done to what is shown of a sheet. */
  public void rowsAndColumns(JMenu menu) {
    groups(menu, ROWS_AND_COLUMNS);
  }

  private void groups(JMenu menu, List<List<GridAction>> groups) {
    for (List<GridAction> group : groups) {
      menu.addSeparator();
      for (GridAction which : group) {
        UserAction action = new UserAction(which.label(), () -> perform.accept(which));
        which.key().ifPresent(key -> action.putValue(Action.ACCELERATOR_KEY, key));
        actions.put(which, action);
        menu.add(action.item());
      }
    }
  }

  /** Finds out anew what can be done. */
  public void refresh() {
    actions.forEach((which, action) -> action.setEnabled(deck.front().action(which).isEnabled()));
  }
}
