package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.desk.file.Shelf;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.Refused;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;
import zonewright.workbook.pack.PackOrder;

/** Two windows save one file at the same time: the second to be done asks. */
@Tag("window")
@CacioTest
class SavingAtOnceTest {
  private static final String MINE = "Mine";
  private static final String THEIRS = "Theirs";

  @TempDir Path folder;
  private Path file;
  private Path theirs;
  private DeskDriver desk;

  /** A disk on which somebody else saves while a file is being written. */
  private final class BusyShelf implements Shelf {
    private final Shelf real = new WorkbookShelf();
    private boolean busy = true;

    @Override
    public DesignFile.Written put(
        Design design, Path path, Optional<KeptFile> kept, Progress progress) throws Refused {
      if (busy) {
        busy = false;
        try {
          Files.copy(theirs, path, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException problem) {
          throw new UncheckedIOException(problem);
        }
      }
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
      return real.take(path, password, progress);
    }
  }

  private String written() throws DesignFileException {
    return DesignFile.read(file)
        .design()
        .book()
        .entry(Facts.PROJECT_NAME.reference(), 0)
        .toString();
  }

  @BeforeEach
  void open() throws DesignFileException {
    file = folder.resolve("garden.xlsx");
    theirs = folder.resolve("theirs.xlsx");
    DesignFile.write(Design.blank(UnitSystem.US), file);
    Design other = Design.blank(UnitSystem.US);
    other.book().perform(other.edits().typed(Facts.PROJECT_NAME.reference(), 0, THEIRS));
    DesignFile.write(other, theirs);
    desk =
        new DeskDriver(
            folder.resolve("spare"),
            new BusyShelf(),
            new OpenDesign(Demo.libraryGarden(UnitSystem.US), "New design"),
            window -> window.show(file));
    desk.waitUntil("it is open", () -> desk.window().openDesign().file().isPresent());
  }

  @AfterEach
  void close() {
    desk.close();
  }

  @Test
  void whatAnotherSavedWhileOursWasBeingWrittenIsNotReplacedUnasked() throws Exception {
    desk.act(
        () -> {
          Design design = desk.window().openDesign().design();
          design.book().perform(design.edits().typed(Facts.PROJECT_NAME.reference(), 0, MINE));
          desk.window().keeper().save(() -> {});
        });
    desk.waitUntil("it is told", () -> desk.shows("message"));
    assertThat(desk.text("message"))
        .startsWith("“garden.xlsx” was not saved: it was")
        .endsWith("Your work is still here.");
    assertThat(written()).contains(THEIRS);
    assertThat(desk.ask(() -> desk.window().openDesign().unsaved())).isTrue();
    desk.click("offer Save over it");
    desk.waitUntil("it is saved", () -> !desk.window().openDesign().unsaved());
    assertThat(written()).contains(MINE);
  }
}
