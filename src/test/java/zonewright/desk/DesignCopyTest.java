package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Sample;
import zonewright.desk.part.DesignCopy;
import zonewright.desk.part.OpenDesign;
import zonewright.emitters.Emitters;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edits;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** The copy that is looked through away from the window holds what the design holds. */
class DesignCopyTest {
  private final OpenDesign open =
      new OpenDesign(Sample.LIBRARY_GARDEN.design(UnitSystem.US), "garden");
  private final DesignCopy copy = new DesignCopy(open);

  @AfterEach
  void close() {
    copy.close();
  }

  @Test
  void followsEverythingThatIsDoneAndTakenBack() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      step(random);
      if (random.nextBoolean()) {
        assertThat(held().sameEntries(open.book().snapshot())).as("step " + i).isTrue();
      }
    }
  }

  @Test
  void isTheOtherDesignOnceAnotherLiesOnTheDesk() throws Exception {
    held();
    open.replace(Sample.HOMEWORK.design(UnitSystem.SI), "homework");
    assertThat(held().sameEntries(open.book().snapshot())).isTrue();
  }

  private BookSnapshot held() throws Exception {
    CompletableFuture<Design> used = new CompletableFuture<>();
    copy.use(used::complete);
    return used.get(60, TimeUnit.SECONDS).book().snapshot();
  }

  private void step(Random random) {
    Design design = open.design();
    Edits edits = design.edits();
    int zone = random.nextInt(design.book().rows(Sheets.ZONES));
    switch (random.nextInt(8)) {
      case 0 -> design.book().undo();
      case 1 -> design.book().redo();
      case 2 -> design.book().perform(edits.duplicated(Sheets.ZONES, List.of(zone)));
      case 3 -> design.book().perform(edits.typed(Facts.ZONE_NOTE.reference(), zone, "gate"));
      case 4 -> {
        if (design.book().rows(Sheets.ZONES) > 3) {
          design.book().perform(edits.removed(Sheets.ZONES, zone, 1));
        }
      }
      default ->
          design
              .book()
              .perform(
                  edits.typed(
                      Emitters.AREA.reference(), zone, String.valueOf(100 + random.nextInt(900))));
    }
  }
}
