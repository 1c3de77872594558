package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.estimate.JobFacts;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

/** The office's workbook in the menu of files. */
@Tag("window")
@CacioTest
class DeskOfficeTest {
  private final DeskDriver desk = new DeskDriver();

  @TempDir private Path folder;

  @BeforeEach
  void keep() throws Exception {
    Design office = Design.blank(UnitSystem.US);
    office.book().perform(office.edits().typed(JobFacts.LABOUR_RATE.reference(), 0, "61"));
    Path file = folder.resolve("office.xlsx");
    DesignFile.write(office, file);
    desk.questions.file = Optional.of(file);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private double rate() {
    return desk.ask(() -> desk.book().number(JobFacts.LABOUR_RATE.reference(), 0));
  }

  @Test
  void whatTheDesignHasNotIsTakenAndUndoTakesItBack() {
    desk.choose("Take what this design has not");
    desk.waitUntil("it is taken", () -> rate() == 61);
    assertThat(desk.ask(() -> desk.window().messages().sentence()))
        .isEqualTo("Taken from “office.xlsx”; Undo takes it back.");
    desk.act(() -> desk.book().undo());
    assertThat(rate()).isNaN();
  }

  @Test
  void newDesignsBeginWithItOnceItIsChosen() {
    desk.choose("Begin new designs with it");
    desk.waitUntil(
        "it is told",
        () -> desk.window().messages().sentence().startsWith("New designs begin with what"));
    desk.choose("New");
    desk.waitUntil("the form", () -> desk.dialogIsOpen("start form"));
    desk.clickInDialog("start form", "begin design");
    desk.waitUntil("the design", () -> rate() == 61);
  }
}
