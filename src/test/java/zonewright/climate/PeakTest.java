package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Which month the baseline is made for. */
class PeakTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  private void months(double... inches) {
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, Double.toString(inches[month]));
    }
  }

  private String peak() {
    return sketch.outcome(Peak.MONTH) instanceof Outcome.Words words ? words.text() : "none";
  }

  /** City of Vacaville code (2022), Table 14.27.030.A (verified): July 8.2 in, 52.3 in a year. */
  @Test
  void aPublishedPlaceFillsTheMonths() {
    sketch.type(Climate.PLACE, "vacaville");
    assertThat(peak()).isEqualTo("July");
    assertThat(sketch.read(Peak.REFERENCE_ET, Units.INCH_PER_DAY))
        .isCloseTo(8.2 / 31, within(1e-12));
    assertThat(sketch.read(Climate.YEAR_REFERENCE_ET, Units.INCH)).isCloseTo(52.3, within(0.05));
  }

  @Test
  void theSouthernSummerIsFoundToo() {
    months(7, 6, 5, 3, 2, 1, 1, 2, 3, 5, 6, 7.5);
    assertThat(peak()).isEqualTo("December");
  }

  @Test
  void theMeanDayCountsNotTheLengthOfTheMonth() {
    months(1, 1, 1, 1, 6.2, 6.1, 1, 1, 1, 1, 1, 1);
    assertThat(peak()).isEqualTo("June");
  }

  @Test
  void byDeficitTheRainIsTakenOff() {
    months(1, 1, 1, 1, 5, 6, 6.4, 5.5, 1, 1, 1, 1);
    sketch.type(Rain.METHOD, Rain.SHARE).type(Rain.COUNTED_SHARE, "100");
    for (int month = 0; month < 12; month++) {
      sketch.type(Rain.MONTH_RAIN, month, month == 6 ? "3 in" : "0.5 in");
    }
    sketch.type(Peak.CHOICE, Peak.BY_ET);
    assertThat(peak()).isEqualTo("July");
    sketch.type(Peak.CHOICE, Peak.BY_DEFICIT);
    assertThat(peak()).isEqualTo("June");
  }

  /**
   * Derived: lawn at 0.8 needs 0.8 × 6.2 in in May and 0.8 × 7.4 − 1 in in July; shrubs at 0.2 need
   * 1.24 in in May and, beside an inch of rain, 0.48 in in July. So a lawn alone peaks in May at
   * 4.96 in against 4.92; with plants that need little still more in May.
   */
  @Test
  void byNeedTheMonthOfGreatestNeedIsThePeakAndTheOthersStayBelowIt() {
    months(1, 1, 1, 1, 6.2, 1, 7.4, 1, 1, 1, 1, 1);
    sketch.type(Rain.METHOD, Rain.SHARE).type(Rain.COUNTED_SHARE, "100");
    for (int month = 0; month < 12; month++) {
      sketch.type(Rain.MONTH_RAIN, month, month == 6 ? "1 in" : "0 in");
    }
    assertThat(peak()).as("a field of reference grass").isEqualTo("July");
    sketch.type(Facts.ZONE_NAME, "1").type(Emitters.AREA, "1000 ft2");
    assertThat(peak()).as("a zone begun has no say").isEqualTo("July");
    sketch.type(Plants.PLANT_FACTOR, "0.8");
    assertThat(peak()).isEqualTo("May");
    assertThat(sketch.read(SiteBudget.PERCENT, 6, Units.ONE)).isCloseTo(4.92 / 4.96, within(1e-9));
    sketch.type(Peak.CHOICE, Peak.BY_ET);
    assertThat(peak()).isEqualTo("July");
    assertThat(sketch.read(SiteBudget.PERCENT, 4, Units.ONE)).isCloseTo(4.96 / 4.92, within(1e-9));
    assertThat(sketch.design().findings())
        .extracting(Finding::line)
        .anyMatch(line -> line.contains("May") && line.contains("which is made for July"));
  }

  @Test
  void ofTwoEqualMonthsTheDrierCounts() {
    months(1, 1, 1, 1, 6, 1, 6, 1, 1, 1, 1, 1);
    sketch.type(Rain.METHOD, Rain.SHARE);
    for (int month = 0; month < 12; month++) {
      sketch.type(Rain.MONTH_RAIN, month, month == 4 ? "2 in" : "0 in");
    }
    assertThat(peak()).isEqualTo("July");
  }

  /**
   * FAO-56 Table 2 (verified): temperate, arid and semi-arid, warm: 6 to 9 mm/day. The top of the
   * range is taken, and warned of.
   */
  @Test
  void aGeneralDescriptionGivesTheTopOfItsRangeAndAWarning() {
    sketch.type(WeatherSite.ET_METHOD, WeatherSite.DESCRIPTION);
    sketch.type(WeatherSite.DESCRIBED_CLIMATE, "dry temperate - warm");
    assertThat(sketch.read(Peak.REFERENCE_ET, Units.MILLIMETRE_PER_DAY))
        .isCloseTo(9, within(1e-12));
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("general description"));
    assertThat(sketch.outcome(Peak.MONTH)).isInstanceOf(Outcome.NotApplicable.class);
  }

  @Test
  void aMissingMonthIsNamed() {
    sketch.type(Climate.REFERENCE_ET, 0, "2 in");
    assertThat(sketch.outcome(Peak.REFERENCE_ET).sentence()).contains("Climate place");
  }
}
