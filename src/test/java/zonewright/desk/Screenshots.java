package zonewright.desk;

import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JRootPane;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.design.Sample;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.sheets.SheetGroup;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * Paints the window with one sheet or more of each group, light and dark, for help and README, on a
 * real display; the garden of the demo, and for prices and savings the retrofit:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.desk.Screenshots</pre>
 *
 * <p>Writes into {@code help/images}, or into the folder given.
 */
final class Screenshots {
  private static final int WIDTH = 1400;
  private static final int HEIGHT = 860;

  /** What only a retrofit fills; all other sheets are shown with the garden. */
  private static final List<String> OF_THE_RETROFIT =
      Stream.of(SheetGroup.RETROFIT, SheetGroup.ESTIMATE, SheetGroup.SAVINGS)
          .flatMap(group -> group.tables().stream())
          .toList();

  private static final List<String> OF_THE_GARDEN =
      IrrigationSheets.schema().tables().stream()
          .map(TableDefinition::id)
          .filter(table -> !OF_THE_RETROFIT.contains(table))
          .toList();

  private Screenshots() {}

  /** Writes all pictures. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments.length > 0 ? arguments[0] : "help/images");
    Files.createDirectories(folder);
    for (Appearance.Choice choice :
        new Appearance.Choice[] {Appearance.Choice.LIGHT, Appearance.Choice.DARK}) {
      shoot(folder, choice);
    }
    System.exit(0);
  }

  private static void shoot(Path folder, Appearance.Choice choice) throws Exception {
    shoot(folder, choice, Demo.libraryGarden(UnitSystem.US), "Library garden", OF_THE_GARDEN);
    shoot(
        folder,
        choice,
        Sample.CAMPUS_RETROFIT.design(UnitSystem.US),
        "Campus retrofit",
        OF_THE_RETROFIT);
  }

  private static void shoot(
      Path folder, Appearance.Choice choice, Design design, String name, List<String> sheets)
      throws Exception {
    DeskWindow[] made = new DeskWindow[1];
    EventQueue.invokeAndWait(() -> made[0] = open(choice, design, name));
    DeskWindow window = made[0];
    String look = choice.name().toLowerCase(Locale.ROOT);
    settle(window);
    if (sheets.equals(OF_THE_GARDEN)) {
      write(window, folder.resolve("window-" + look + ".png"));
    }
    for (String sheet : sheets) {
      EventQueue.invokeAndWait(() -> window.deck().enter(sheet));
      settle(window);
      write(window, folder.resolve("sheet-" + sheet + "-" + look + ".png"));
    }
    EventQueue.invokeAndWait(() -> window.frame().dispose());
  }

  private static DeskWindow open(Appearance.Choice choice, Design design, String name) {
    UserPreferences memory = new UserPreferences(new ForgottenPreferences());
    memory.keep("look", choice.name());
    memory.keep("width", WIDTH);
    memory.keep("height", HEIGHT);
    Appearance look = new Appearance(memory);
    look.install();
    try {
      DeskWindow window =
          new DeskWindow(
              memory,
              look,
              new OpenDesign(design, name),
              new WorkbookShelf(),
              Optional.empty(),
              Files.createTempDirectory("screenshots"));
      window.show();
      return window;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Waits until the window shows all it has to show of a sheet. */
  private static void settle(DeskWindow window) throws Exception {
    boolean[] looking = {true};
    for (int quiet = 0; quiet < 6; quiet = looking[0] ? 0 : quiet + 1) {
      Thread.sleep(60);
      EventQueue.invokeAndWait(() -> looking[0] = looking(window.frame()));
    }
  }

  private static boolean looking(Container part) {
    return Arrays.stream(part.getComponents())
        .anyMatch(
            each ->
                (each instanceof JLabel label
                        && String.valueOf(label.getText()).startsWith("Looking for findings"))
                    || (each instanceof Container inner && looking(inner)));
  }

  private static void write(DeskWindow window, Path file) throws Exception {
    BufferedImage[] image = new BufferedImage[1];
    EventQueue.invokeAndWait(() -> image[0] = painted(window.frame()));
    ImageIO.write(image[0], "png", file.toFile());
  }

  private static BufferedImage painted(JFrame frame) {
    JRootPane root = frame.getRootPane();
    BufferedImage image =
        new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    if (Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints")
        instanceof Map<?, ?> hints) {
      pen.addRenderingHints(hints);
    }
    root.paint(pen);
    pen.dispose();
    return image;
  }
}
