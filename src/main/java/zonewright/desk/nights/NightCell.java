package zonewright.desk.nights;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import zonewright.desk.part.SeverityMark;
import zonewright.nights.NightWords;
import zonewright.sheet.Severity;
import zonewright.timetable.NightPlan;
import zonewright.timetable.Undone;

/** A night in a list: its name, how long it takes, and a mark where it does not fit. */
public final class NightCell extends DefaultListCellRenderer {
  @Override
  public Component getListCellRendererComponent(
      JList<?> list, Object value, int index, boolean selected, boolean focused) {
    super.getListCellRendererComponent(list, "", index, selected, focused);
    if (value instanceof NightPlan night) {
      boolean over = !night.undone().isEmpty();
      String length =
          night.isEmpty()
              ? "nothing waters"
              : over
                  ? undone(night) + " min not placed"
                  : NightWords.length(night.lengthMinutes())
                      + ", done "
                      + NightWords.time(night.finishMinute());
      setText(
          "<html>" + NightWords.label(night.night()) + "<br><small>" + length + "</small></html>");
      setIcon(over ? new SeverityMark(Severity.CHECK) : null);
      getAccessibleContext().setAccessibleName(NightWords.label(night.night()) + ", " + length);
    }
    setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 8));
    return this;
  }

  private static int undone(NightPlan night) {
    return night.undone().stream().mapToInt(Undone::minutes).sum();
  }
}
