package zonewright.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.uncertainty.HowSure;
import zonewright.units.UnitSystem;

/** What to measure first, on paper. */
class MeasurePagesTest {
  private final HowSure sure = HowSure.of(Demo.libraryGarden(UnitSystem.US).book().snapshot());

  @Test
  void thePagesNameTheMeasurementsWithHowTheyAreDoneAndASentenceAZone() throws IOException {
    byte[] file = MeasurePages.of(sure);
    try (PDDocument document = Loader.loadPDF(file)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("What to measure first", "1 Digging for roots", "Needs: a spade")
          .contains("How sure the site is", "Volume a year: 443,234 gal in the design")
          .contains("Zone 9 Measure the intake rate (intake test): cycles lie between 2 and 3");
    }
    assertThat(MeasurePages.of(sure)).isEqualTo(file);
  }
}
