package zonewright.desk.grid;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Shows the grids over the demo garden, to look at them: {@code [dark] [si] [table]}. */
public final class GridShow {
  private GridShow() {}

  /** Opens the window. */
  public static void main(String[] arguments) {
    List<String> wanted = List.of(arguments);
    SwingUtilities.invokeLater(() -> open(wanted));
  }

  private static void open(List<String> wanted) {
    if (wanted.contains("dark")) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    Design design = Demo.libraryGarden(wanted.contains("si") ? UnitSystem.SI : UnitSystem.US);
    String table =
        List.of(Sheets.SITE, Sheets.MONTHS, Sheets.PROGRAMS).stream()
            .filter(wanted::contains)
            .findFirst()
            .orElse(Sheets.ZONES);
    JFrame frame = new JFrame("Grid");
    frame.setDefaultCloseOperation(WindowConstants.EXIT_ON_CLOSE);
    frame.add(grid(design, table), BorderLayout.CENTER);
    frame.setSize(1380, 640);
    frame.setVisible(true);
  }

  private static JPanel grid(Design design, String table) {
    if (table.equals(Sheets.SITE)) {
      return new RecordGrid(design.book(), table);
    }
    SheetGrid grid = new SheetGrid(design.book(), table);
    Map<CellPlace, Severity> flags = flags(design);
    grid.setFlags(place -> Optional.ofNullable(flags.get(place)));
    return grid;
  }

  private static Map<CellPlace, Severity> flags(Design design) {
    return design.findings().stream()
        .collect(
            Collectors.toMap(
                finding -> new CellPlace(finding.column(), finding.row()),
                Finding::severity,
                (one, other) -> one));
  }
}
