package zonewright.desk;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.Icon;
import javax.swing.KeyStroke;

/** Something a person can do from a menu, a button or the keyboard. */
final class Deed extends AbstractAction {
  private final transient Runnable deed;

  Deed(String name, Runnable deed) {
    super(name);
    this.deed = deed;
  }

  /** Sets the keys that do it. */
  Deed keys(String keys) {
    putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(keys));
    return this;
  }

  /** Sets what is drawn beside its name. */
  Deed drawn(Icon icon) {
    putValue(Action.SMALL_ICON, icon);
    return this;
  }

  /** Sets the longer text a pointer resting on it shows. */
  Deed tip(String words) {
    putValue(Action.SHORT_DESCRIPTION, words);
    return this;
  }

  void rename(String name) {
    putValue(Action.NAME, name);
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    deed.run();
  }
}
