package zonewright.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javax.swing.SwingUtilities;
import zonewright.design.Demo;
import zonewright.design.Design;
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
    // The demo is calculated while the toolkit and the look come up: each takes about as long.
    CompletableFuture<Design> demo =
        CompletableFuture.supplyAsync(() -> Demo.libraryGarden(UnitSystem.US));
    SwingUtilities.invokeLater(() -> start(file, demo));
  }

  private static void start(Optional<Path> file, CompletableFuture<Design> demo) {
    Memory memory = Memory.ofUser();
    Look look = new Look(memory);
    look.install();
    OpenDesign design = new OpenDesign(demo.join(), "Demo: library garden");
    DeskWindow window =
        new DeskWindow(
            memory, look, design, new WorkbookShelf(), Optional.empty(), UnsavedWork.usualSpare());
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> window.unexpected(fault));
    window.show();
    file.ifPresentOrElse(window::open, window::offerLeftOver);
  }
}
