package zonewright.desk;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.SwingUtilities;
import zonewright.design.Demo;
import zonewright.units.UnitSystem;

/** Opens the window. */
public final class Desk {
  private Desk() {}

  /**
   * Shows the window on a file, or on the demo where none is given; returns at once.
   *
   * <p>Needs a display: ask {@link java.awt.GraphicsEnvironment#isHeadless} first.
   */
  public static void open(Optional<Path> file) {
    SwingUtilities.invokeLater(() -> start(file));
  }

  private static void start(Optional<Path> file) {
    Memory memory = Memory.ofUser();
    Look look = new Look(memory);
    look.install();
    OpenDesign design = new OpenDesign(Demo.libraryGarden(UnitSystem.US), "Demo: library garden");
    DeskWindow window =
        new DeskWindow(
            memory, look, design, new WorkbookShelf(), Optional.empty(), UnsavedWork.usualSpare());
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> window.unexpected(fault));
    window.show();
    file.ifPresentOrElse(window::open, window::offerLeftOver);
  }
}
