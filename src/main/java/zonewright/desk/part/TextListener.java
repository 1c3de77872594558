package zonewright.desk.part;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Hears of every change of what stands in a field. */
public record TextListener(Runnable changed) implements DocumentListener {
  @Override
  public void insertUpdate(DocumentEvent event) {
    changed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    changed.run();
  }

  /** Attributes are none of the words. */
  @Override
  public void changedUpdate(DocumentEvent event) {}
}
