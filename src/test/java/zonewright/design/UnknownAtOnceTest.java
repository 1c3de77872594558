package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.savings.Use;
import zonewright.units.UnitSystem;

/** What savings wait for is said at once. */
class UnknownAtOnceTest {
  private static List<Finding> of(Design design, String words) {
    return design.findings().stream().filter(finding -> finding.line().contains(words)).toList();
  }

  @Test
  void savedAgainstAMeterThatWasNotReadIsSaid() {
    Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
    for (int month = 0; month < 12; month++) {
      design.book().perform(design.edits().typed(Use.METERED.reference(), month, "400000 gal"));
    }
    design.book().perform(design.edits().typed(Use.BASIS.reference(), 0, Use.BY_METER));
    assertThat(of(design, "no metered water")).isEmpty();
    design.book().perform(design.edits().typed(Use.METERED.reference(), 6, ""));
    assertThat(of(design, "no metered water"))
        .singleElement()
        .satisfies(finding -> assertThat(finding.line()).contains("July"));
  }
}
