package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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
    assertThat(origin()).isEqualTo("published for the place; the table Places names the source");
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.HARGREAVES);
    assertThat(origin()).startsWith("calculated by Hargreaves");
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.DESCRIPTION);
    assertThat(origin()).isEqualTo("a general description of the climate only");
  }

  @Test
  void noPlaceIsListedWhoseFiguresNobodyRead() {
    for (int row = 0; row < Climate.PLACES.size(); row++) {
      assertThat(Climate.PLACES.origin(row))
          .as(Climate.PLACES.keys().get(row))
          .contains("verified")
          .doesNotContain("from memory");
    }
  }
}
