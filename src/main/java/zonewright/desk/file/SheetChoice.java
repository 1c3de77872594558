package zonewright.desk.file;

import java.awt.Component;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import zonewright.workbook.pack.Audience;
import zonewright.workbook.pack.PackSheet;

/** A list of the sheets there are to hand over, with a tick for each. */
public final class SheetChoice {
  private SheetChoice() {}

  /** Asks; none where the person thinks better of it. */
  public static Optional<List<PackSheet>> ask(Component window, List<PackSheet> sheets) {
    JPanel panel = new JPanel(new MigLayout("insets 4, wrap 2, gapy 4", "[][grow]"));
    Map<PackSheet, JCheckBox> ticks = new LinkedHashMap<>();
    for (PackSheet sheet : sheets) {
      JCheckBox tick = new JCheckBox(sheet.title(), true);
      tick.setName("sheet " + sheet.word());
      tick.setEnabled(!sheet.standing());
      tick.setToolTipText(sheet.standing() ? "Stands in every design file" : null);
      ticks.put(sheet, tick);
      panel.add(tick);
      panel.add(
          new JLabel(
              sheet.audience() == Audience.OFFICE
                  ? sheet.about() + " For your own office."
                  : sheet.about()),
          "growx, wmin 260");
    }
    Object[] answers = {"Write …", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            window,
            new JScrollPane(panel),
            "Which sheets to hand over",
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[0]);
    return answer == 0
        ? Optional.of(sheets.stream().filter(sheet -> ticks.get(sheet).isSelected()).toList())
        : Optional.empty();
  }
}
