package zonewright.desk.grid;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Prints how long a grid over many zones takes to open, to paint and to show an edit. */
public final class GridSpeed {
  private GridSpeed() {}

  /** Measures with as many zones as the argument says, 10,000 without one. */
  public static void main(String[] arguments) throws Exception {
    int zones = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    SwingUtilities.invokeAndWait(() -> measure(zones));
    System.exit(0);
  }

  private static void measure(int zones) {
    FlatLightLaf.setup();
    Design design = Demo.libraryGarden(UnitSystem.US);
    List<Row> pattern = design.book().contents().rows(Sheets.ZONES);
    int columns = design.book().schema().table(Sheets.ZONES).columns().size();
    List<List<Entry>> rows = new ArrayList<>();
    for (int at = pattern.size(); at < zones; at++) {
      Row row = pattern.get(at % pattern.size());
      List<Entry> entries = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        entries.add(row.entry(column));
      }
      rows.add(entries);
    }
    design.book().perform(design.edits().appended(Sheets.ZONES, rows));
    long start = System.nanoTime();
    SheetGrid grid = new SheetGrid(design.book(), Sheets.ZONES);
    JFrame frame = new JFrame();
    frame.add(grid);
    frame.setSize(1380, 800);
    frame.setVisible(true);
    print("open", start);
    BufferedImage image = new BufferedImage(1380, 800, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    for (int i = 0; i < 20; i++) {
      int row = i * zones / 20;
      grid.table().changeSelection(row, i * 2, false, false);
      long paint = System.nanoTime();
      grid.paint(g);
      print("paint at row " + row, paint);
      long edit = System.nanoTime();
      design.book().perform(design.edits().typed(Emitters.AREA.reference(), row, "900"));
      print("edit", edit);
      long again = System.nanoTime();
      grid.paint(g);
      print("paint after edit", again);
    }
    g.dispose();
  }

  private static void print(String what, long since) {
    System.out.println(
        String.format(Locale.ROOT, "%-20s %7.1f ms", what, (System.nanoTime() - since) / 1e6));
  }
}
