package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.units.UnitSystem;

/** Names tell rows apart. */
class NamesTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);

  private boolean toldApart() {
    return design.findings().stream().noneMatch(finding -> finding.line().contains("same name"));
  }

  @Test
  void twoZonesOfOneNameAreAFinding() {
    assertThat(toldApart()).isTrue();
    design.book().perform(design.edits().typed(Facts.ZONE_NAME.reference(), 4, "1"));
    assertThat(design.findings())
        .anyMatch(
            finding ->
                finding.row() == 4
                    && finding.line().contains("zone 1: has the same name as row 1"));
  }

  @Test
  void twoProgramsOfOneNameAreAFindingWhateverTheCapitals() {
    design.book().perform(design.edits().typed(SiteBudget.PROGRAM.reference(), 1, "a"));
    assertThat(toldApart()).isFalse();
  }
}
