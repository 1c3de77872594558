package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.desk.file.Shelf;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.Refused;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;
import zonewright.workbook.pack.PackOrder;

/** A file that takes its time to open. */
@Tag("window")
@CacioTest
class DeskOpeningTest {
  @TempDir Path folder;
  private Path file;
  private DeskDriver desk;
  private final CountDownLatch mayRead = new CountDownLatch(1);

  /** A disk on which a file is read when a test lets it, and not once before. */
  private final class SlowShelf implements Shelf {
    private final Shelf real = new WorkbookShelf();

    @Override
    public DesignFile.Written put(
        Design design, Path path, Optional<KeptFile> kept, Progress progress) throws Refused {
      return real.put(design, path, kept, progress);
    }

    @Override
    public DesignFile.Written handOver(
        Design design, Path path, PackOrder order, Optional<KeptFile> kept, Progress progress)
        throws Refused {
      return real.handOver(design, path, order, kept, progress);
    }

    @Override
    public Taken take(Path path, Optional<String> password, Progress progress) throws Refused {
      try {
        assertThat(mayRead.await(60, TimeUnit.SECONDS)).isTrue();
      } catch (InterruptedException ended) {
        Thread.currentThread().interrupt();
      }
      return real.take(path, password, Progress.UNWATCHED);
    }
  }

  @BeforeEach
  void write() throws DesignFileException {
    file = folder.resolve("garden.xlsx");
    DesignFile.write(Demo.libraryGarden(UnitSystem.SI), file);
    desk =
        new DeskDriver(
            folder.resolve("spare"),
            new SlowShelf(),
            new OpenDesign(Design.blank(UnitSystem.US), "New design"),
            window -> window.show(file));
  }

  @AfterEach
  void close() {
    mayRead.countDown();
    desk.close();
  }

  /** Returns the colours of the window above the line at its foot. */
  private Set<Color> colours() {
    return desk.ask(
        () -> {
          var content = desk.window().frame().getRootPane();
          BufferedImage image =
              new BufferedImage(
                  content.getWidth(), content.getHeight(), BufferedImage.TYPE_INT_RGB);
          Graphics graphics = image.getGraphics();
          content.paint(graphics);
          graphics.dispose();
          Set<Color> colours = new HashSet<>();
          for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight() / 3; y++) {
              colours.add(new Color(image.getRGB(x, y)));
            }
          }
          return colours;
        });
  }

  @Test
  void startedOnAFileTheWindowShowsNoOtherDesignFirst() {
    assertThat(colours()).as("nothing but the curtain").hasSize(1);
    assertThat(desk.ask(() -> desk.window().frame().getTitle()))
        .isEqualTo("Opening garden.xlsx … – Zonewright");
    mayRead.countDown();
    desk.waitUntil("it is open", () -> desk.window().openDesign().file().isPresent());
    assertThat(colours()).hasSizeGreaterThan(1);
    assertThat(desk.book().rows(Sheets.ZONES)).isEqualTo(12);
    assertThat(desk.ask(() -> desk.window().frame().getTitle()))
        .isEqualTo("garden.xlsx – Zonewright");
  }

  @Test
  void breakOffAtTheFootWorksWhileOpeningWhateverTheReaderDoes() {
    desk.waitUntil("it may be broken off", () -> desk.shows("break off"));
    desk.click("break off");
    desk.waitUntil("it is broken off", () -> desk.shows("message"));
    assertThat(desk.text("message"))
        .isEqualTo("“garden.xlsx” was not opened; nothing has changed.");
    mayRead.countDown();
    desk.click("button New row");
    assertThat(desk.book().rows(Sheets.ZONES)).as("the hands are free").isEqualTo(1);
    assertThat(desk.ask(() -> desk.window().openDesign().file())).isEmpty();
  }

  @Test
  void escapeBreaksItOffToo() {
    desk.waitUntil("it may be broken off", () -> desk.shows("break off"));
    desk.press("ESCAPE");
    desk.waitUntil("it is broken off", () -> desk.shows("message"));
  }
}
