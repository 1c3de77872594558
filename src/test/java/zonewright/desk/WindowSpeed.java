package zonewright.desk;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JTable;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserPreferences;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Row;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Measures the main window with many zones on a real display:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.desk.WindowSpeed</pre>
 *
 * <p>Prints the time from a key event to the end of the painting that shows what it did, median and
 * 99th percentile, and how much of it the event thread computed (a machine with other work to do
 * adds waiting to the first, not to the second); the time of a frame while scrolling; and memory a
 * zone.
 */
final class WindowSpeed {
  private static final int USUAL_EDITS = 500;
  private static final int WARM = 60;
  private static final int FRAMES = 300;

  private final int zones;
  private final int edits;
  private final List<Double> digits = new ArrayList<>();
  private final List<Double> enters = new ArrayList<>();
  private final List<Double> worked = new ArrayList<>();
  private final List<Double> frames = new ArrayList<>();
  private DeskWindow window;
  private volatile CountDownLatch painted = new CountDownLatch(0);
  private volatile boolean armed;
  private volatile long ended;
  private volatile long workedFrom;
  private volatile long workedTo;

  private WindowSpeed(int zones, int edits) {
    this.zones = zones;
    this.edits = edits;
  }

  /** Measures with as many zones and edits as the arguments say, 10,000 and 500 without them. */
  public static void main(String[] arguments) throws Exception {
    int zones = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    int edits = arguments.length > 1 ? Integer.parseInt(arguments[1]) : USUAL_EDITS;
    new WindowSpeed(zones, edits).run();
    System.exit(0);
  }

  private void run() throws Exception {
    long empty = used();
    EventQueue.invokeAndWait(this::open);
    idle();
    Thread.sleep(1500);
    System.out.printf(
        Locale.ROOT,
        "memory                     %8.0f bytes a zone%n",
        (used() - empty) / (double) zones);
    Random random = new Random(1);
    for (int i = 0; i < WARM + edits; i++) {
      edit(random, i >= WARM);
    }
    print("digit to painted field", digits);
    print("Enter to painted cell", enters);
    print("of it the processor", worked);
    scroll();
    print("frame while scrolling", frames);
  }

  private static long used() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(100);
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  private void open() {
    UserPreferences memory = new UserPreferences(new ForgottenPreferences());
    memory.keep("look", "LIGHT");
    Appearance look = new Appearance(memory);
    look.install();
    RepaintManager.setCurrentManager(
        new RepaintManager() {
          @Override
          public void paintDirtyRegions() {
            super.paintDirtyRegions();
            if (armed) {
              Toolkit.getDefaultToolkit().sync();
              ended = System.nanoTime();
              workedTo = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
              armed = false;
              painted.countDown();
            }
          }
        });
    try {
      window =
          new DeskWindow(
              memory,
              look,
              new OpenDesign(many(), "many"),
              new WorkbookShelf(),
              Optional.empty(),
              Files.createTempDirectory("window-speed"));
    } catch (java.io.IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
    window.show();
  }

  /** Returns the zones of the demo again and again. */
  private Design many() {
    Design design = Demo.libraryGarden(UnitSystem.US);
    List<Row> pattern = design.book().contents().rows(Sheets.ZONES);
    int columns = design.book().schema().table(Sheets.ZONES).columns().size();
    List<List<Entry>> rows = new ArrayList<>();
    for (int at = pattern.size(); at < zones; at++) {
      List<Entry> entries = new ArrayList<>();
      entries.add(new Entry.Words("Z" + (at + 1)));
      for (int column = 1; column < columns; column++) {
        entries.add(pattern.get(at % pattern.size()).entry(column));
      }
      rows.add(entries);
    }
    design.book().start(design.edits().appended(Sheets.ZONES, rows));
    return design;
  }

  private static void idle() throws Exception {
    for (int i = 0; i < 4; i++) {
      EventQueue.invokeAndWait(() -> {});
    }
  }

  private void edit(Random random, boolean counted) throws Exception {
    Column column = random.nextBoolean() ? Emitters.AREA : Soils.SLOPE;
    int row = random.nextInt(zones);
    int value = column.equals(Soils.SLOPE) ? 1 + random.nextInt(20) : 400 + random.nextInt(2000);
    EventQueue.invokeAndWait(() -> window.deck().goTo(new Place(column.reference(), row)));
    idle();
    Thread.sleep(5);
    idle();
    String text = Integer.toString(value);
    double first = timed(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, text.charAt(0));
    idle();
    for (char sign : text.substring(1).toCharArray()) {
      post(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, sign);
    }
    idle();
    double enter = timed(KeyEvent.KEY_PRESSED, KeyEvent.VK_ENTER, '\n');
    idle();
    if (counted) {
      digits.add(first);
      enters.add(enter);
      worked.add((workedTo - workedFrom) / 1e6);
    }
  }

  private double timed(int id, int code, char sign) throws Exception {
    painted = new CountDownLatch(1);
    long start = System.nanoTime();
    EventQueue.invokeLater(
        () -> {
          armed = true;
          workedFrom = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          dispatch(id, code, sign);
        });
    if (!painted.await(5, TimeUnit.SECONDS)) {
      throw new IllegalStateException("nothing was painted");
    }
    return (ended - start) / 1e6;
  }

  private void post(int id, int code, char sign) {
    EventQueue.invokeLater(() -> dispatch(id, code, sign));
  }

  private void dispatch(int id, int code, char sign) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    Component target = owner == null ? window.deck().focusTarget() : owner;
    target.dispatchEvent(new KeyEvent(target, id, System.currentTimeMillis(), 0, code, sign));
  }

  private void scroll() throws Exception {
    JTable table = (JTable) window.deck().focusTarget();
    for (int i = 0; i < FRAMES; i++) {
      int row = (int) ((long) i * zones / FRAMES);
      painted = new CountDownLatch(1);
      long start = System.nanoTime();
      EventQueue.invokeLater(
          () -> {
            armed = true;
            Rectangle cell = table.getCellRect(row, 5, true);
            SwingUtilities.getAncestorOfClass(javax.swing.JViewport.class, table);
            table.scrollRectToVisible(
                new Rectangle(cell.x, cell.y, 1, table.getVisibleRect().height));
          });
      if (painted.await(1, TimeUnit.SECONDS) && i > 20) {
        frames.add((ended - start) / 1e6);
      }
    }
  }

  private static void print(String what, List<Double> times) {
    List<Double> sorted = times.stream().sorted().toList();
    System.out.printf(
        Locale.ROOT,
        "%-26s p50 %6.2f ms   p99 %6.2f ms   most %6.2f ms   of %d%n",
        what,
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() * 99 / 100),
        sorted.get(sorted.size() - 1),
        sorted.size());
  }
}
