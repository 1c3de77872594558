package zonewright.desk;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import zonewright.nights.NightWords;
import zonewright.sheet.Severity;
import zonewright.timetable.NightPlan;

/** A night in a list: its name, how long it takes, and a mark where it does not fit. */
final class NightCell extends DefaultListCellRenderer {
  @Override
  public Component getListCellRendererComponent(
      JList<?> list, Object value, int index, boolean selected, boolean focused) {
    super.getListCellRendererComponent(list, "", index, selected, focused);
    if (value instanceof NightPlan night) {
      boolean over = night.overrunMinutes() > 0;
      String length =
          night.runs().isEmpty()
              ? "nothing waters"
              : over
                  ? night.overrunMinutes() + " min too long"
                  : NightWords.length(night.lengthMinutes())
                      + ", done "
                      + NightWords.time(night.finishMinute());
      setText("<html>" + night.night().label() + "<br><small>" + length + "</small></html>");
      setIcon(over ? new SeverityMark(Severity.CHECK) : null);
      getAccessibleContext().setAccessibleName(night.night().label() + ", " + length);
    }
    setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 8));
    return this;
  }
}
