package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import net.miginfocom.layout.PlatformDefaults;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.desk.file.UnsavedWork;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.SystemDarkness;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.sheets.StandardViews;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Opens the window. */
public final class Desk {
  private static final Logger LOG = Logger.getLogger(Desk.class.getName());

  private final CompletableFuture<Design> demo;
  private final CompletableFuture<UserPreferences> memory;

  private Desk(CompletableFuture<Design> demo, CompletableFuture<UserPreferences> memory) {
    this.demo = demo;
    this.memory = memory;
  }

  /**
   * Begins with what the window needs and can be had before there is one: the demo is calculated
   * while the toolkit and the look come up, which takes about as long. Returns at once.
   */
  public static Desk begin() {
    CompletableFuture<Design> demo =
        CompletableFuture.supplyAsync(
            () -> calculated(Demo.libraryGarden(UnitSystem.US)), work -> start("demo", work));
    CompletableFuture<UserPreferences> memory = new CompletableFuture<>();
    start("beforehand", () -> prepare(memory));
    return new Desk(demo, memory);
  }

  /** Has those columns calculated that the window shows first. */
  private static Design calculated(Design design) {
    TableDefinition zones = design.book().schema().table(Sheets.ZONES);
    List<String> first = StandardViews.of(zones).values().iterator().next();
    for (Column column : zones.columns()) {
      if (first.contains(column.reference().column())) {
        design.book().number(column.reference(), 0);
      }
    }
    return design;
  }

  private static void prepare(CompletableFuture<UserPreferences> wanted) {
    try {
      UserPreferences memory = UserPreferences.ofUser();
      if (Appearance.followsSystem(memory)) {
        SystemDarkness.askAhead();
      }
      wanted.complete(memory);
    } catch (RuntimeException | Error fault) {
      wanted.completeExceptionally(fault);
      throw fault;
    }
    // The layouts look at their own classes for a good while when they are first used.
    PlatformDefaults.getPlatform();
  }

  private static void start(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Shows the window on a file, or on the demo where none is given; returns at once.
   *
   * <p>Needs a display: ask {@link java.awt.GraphicsEnvironment#isHeadless} first.
   */
  public void open(Optional<Path> file) {
    SwingUtilities.invokeLater(() -> show(file));
    start("icons", WindowIcon::images);
  }

  private void show(Optional<Path> file) {
    Appearance look = new Appearance(memory.join());
    look.install();
    OpenDesign design =
        file.isPresent()
            ? new OpenDesign(Design.blank(UnitSystem.US), "New design")
            : new OpenDesign(demo::join, "Demo: library garden");
    DeskWindow window =
        new DeskWindow(
            memory.join(),
            look,
            design,
            new WorkbookShelf(),
            Optional.empty(),
            UnsavedWork.usualSpare());
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, fault) -> unexpected(fault, window.messages()));
    file.ifPresentOrElse(
        window::show,
        () -> {
          window.show();
          window.afterwards(window::offerLeftOver);
        });
    window.afterwards(() -> design.book().settle());
  }

  /** Tells a person of a fault of the program, and keeps what is known of it for its makers. */
  private static void unexpected(Throwable fault, MessageBar messages) {
    LOG.log(Level.WARNING, "a fault in the window", fault);
    SwingUtilities.invokeLater(
        () ->
            messages.problem(
                "The program made a mistake here; your design is as it was. Save it under another"
                    + " name to be safe.",
                List.of(String.valueOf(fault))));
  }
}
