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
    byte[] file = HandoverPages.of(Demo.libraryGarden(UnitSystem.US));
    assertThat(text(file, 1, 1)).contains("Program A", "Forecourt lawn", "100 percent");
    assertThat(text(file, 2, 2)).contains("Program B", "Dry garden").doesNotContain("Program A");
    assertThat(text(file, 3, 3)).contains("What the nights give each zone", "West slope");
    assertThat(text(file, 4, 4)).contains("plants and soil", "loam");
    assertThat(text(file, 1, 99))
        .contains("0.24 in/day", "CIMIS zone 8", "100 %", "licensed", "Owner or operator");
  }

  @Test
  void whatDoesNotFitIsSaidAboveTheStationsAndEveryZoneIsListed() throws IOException {
    String first = text(HandoverPages.of(Demo.libraryGarden(UnitSystem.US)), 1, 1);
    assertThat(first.indexOf("This does not fit"))
        .isPositive()
        .isLessThan(first.indexOf("Zone 11, West slope ground cover: 44 of 99 min"));
    assertThat(first.indexOf("44 of 99 min")).isLessThan(first.indexOf("Minutes a cycle"));
    String zones = text(HandoverPages.of(Demo.libraryGarden(UnitSystem.US)), 3, 3);
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
