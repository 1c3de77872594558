package zonewright.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.units.UnitSystem;
import zonewright.water.Controller;

class HandoverPagesTest {
  private static String text(byte[] file, int from, int to) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(from);
      stripper.setEndPage(to);
      return stripper.getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void aPageAProgramThenFactsMonthsAndTheList() throws IOException {
    Design design = Demo.libraryGarden(UnitSystem.US);
    String kind = Controller.CYCLES_AND_SOAKS;
    design.book().start(design.edits().typed(Controller.KIND.reference(), 0, kind));
    byte[] file = HandoverPages.of(design);
    assertThat(text(file, 1, 1)).contains("Program A", "Forecourt lawn", "100 percent", "Aug 90 %");
    assertThat(text(file, 2, 2)).contains("Program B", "Dry garden").doesNotContain("Program A");
    assertThat(text(file, 5, 5)).contains("What the nights give each zone", "West slope");
    assertThat(text(file, 6, 6)).contains("plants and soil", "loam");
    assertThat(text(file, 1, 99))
        .contains("0.24 in/day", "CIMIS zone 8", "100 %", "licensed", "Owner or operator");
    assertThat(text(HandoverPages.cardsOf(design), 1, 4)).isEqualTo(cards(text(file, 1, 4)));
    assertThat(text(HandoverPages.cardsOf(design), 5, 9)).isEmpty();
  }

  /** The pages of the cards, which are counted by themselves where they stand alone. */
  private static String cards(String pages) {
    return pages.replaceAll("of \\d+ ", "of 4 ");
  }

  @Test
  void whatDoesNotFitIsSaidAboveTheStationsAndEveryZoneIsListed() throws IOException {
    String first = text(HandoverPages.of(Demo.libraryGarden(UnitSystem.US)), 1, 1);
    assertThat(first.indexOf("This does not fit"))
        .isPositive()
        .isLessThan(first.indexOf("Zone 11, West slope ground cover: 44 of 99 min"));
    assertThat(first.indexOf("44 of 99 min")).isLessThan(first.indexOf("Minutes a cycle"));
    String zones = text(HandoverPages.of(Demo.libraryGarden(UnitSystem.US)), 1, 9);
    assertThat(zones).contains("11 West slope ground cover 99 44 55").contains("10 Dry garden");
  }

  @Test
  void theSameDesignMakesTheSameFile() {
    assertThat(HandoverPages.of(Demo.libraryGarden(UnitSystem.SI)))
        .isEqualTo(HandoverPages.of(Demo.libraryGarden(UnitSystem.SI)));
  }

  @Test
  void lettersTheTypefaceLacksDoNotStopIt() throws IOException {
    Design design = Demo.libraryGarden(UnitSystem.SI);
    String name = "Сад 図書館";
    design.book().start(design.edits().typed(Facts.PROJECT_NAME.reference(), 0, name));
    assertThat(text(HandoverPages.of(design), 1, 1)).contains("Сад ???");
  }
}
