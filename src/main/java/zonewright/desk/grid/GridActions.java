package zonewright.desk.grid;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The actions of one grid, bound to its keys and there for menus. */
final class GridActions {
  private final JComponent grid;
  private final Map<GridAction, Action> actions = new EnumMap<>(GridAction.class);

  GridActions(JComponent grid) {
    this.grid = grid;
  }

  /** Says what an action does and binds its keys. */
  void does(GridAction which, Runnable what) {
    AbstractAction action =
        new AbstractAction(which.label()) {
          @Override
          public void actionPerformed(ActionEvent event) {
            what.run();
          }
        };
    which.key().ifPresent(key -> action.putValue(Action.ACCELERATOR_KEY, key));
    actions.put(which, action);
    InputMap keys = grid.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    for (KeyStroke key : which.keys()) {
      keys.put(key, which);
    }
    grid.getActionMap().put(which, action);
  }

  /** Returns an action; one that is never enabled where the grid has no such action. */
  Action get(GridAction which) {
    Action known = actions.get(which);
    if (known != null) {
      return known;
    }
    AbstractAction none =
        new AbstractAction(which.label()) {
          @Override
          public void actionPerformed(ActionEvent event) {}
        };
    none.setEnabled(false);
    return none;
  }
}
