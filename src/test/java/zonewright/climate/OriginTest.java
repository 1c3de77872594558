package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.design.Finding;
import zonewright.formula.Outcome;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;

/** A design says where its reference evapotranspiration comes from and what that is worth. */
class OriginTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  private String origin() {
    return ((Outcome.Words) sketch.outcome(Climate.ORIGIN)).text();
  }

  @Test
  void theOriginFollowsTheChoices() {
    assertThat(origin()).isEqualTo("typed by month");
    sketch.type(Climate.PLACE, "Vacaville");
    assertThat(origin()).isEqualTo("published for the place; read in the source");
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.HARGREAVES);
    assertThat(origin()).startsWith("calculated by Hargreaves");
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.DESCRIPTION);
    assertThat(origin()).isEqualTo("a general description of the climate only");
  }

  @Test
  void figuresFromMemoryAreAFindingUntilAnotherPlaceIsChosen() {
    sketch.type(Climate.PLACE, "Sacramento");
    assertThat(origin()).isEqualTo("published for the place; figures from memory");
    assertThat(sketch.design().findings())
        .extracting(Finding::line)
        .anyMatch(line -> line.contains("Sacramento") && line.contains("from memory"));
    sketch.type(Climate.PLACE, "CIMIS zone 8");
    assertThat(sketch.design().findings())
        .extracting(Finding::line)
        .noneMatch(line -> line.contains("from memory"));
  }
}
