package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Checked against the definition of both rates; worked by hand, no source. */
class StandingWaterTest {
  private static StandingWater water(
      double applied, double takenIn, int cycles, double minutes, double soak) {
    return StandingWater.over(
        new StandingWater.Rates(applied, takenIn), 0.3, cycles, minutes, soak, Units.INCH);
  }

  @Test
  void risesWithTheExcessWhileTheValveRunsAndFallsWithTheIntakeRateWhileItRests() {
    StandingWater water = water(0.03, 0.01, 2, 10, 15);

    assertThat(water.cycles())
        .containsExactly(new StandingWater.Cycle(0, 10), new StandingWater.Cycle(25, 35));
    assertThat(water.given().get(1).depth()).isCloseTo(0.2, within(1e-12));
    assertThat(water.given().get(2).minutes()).isEqualTo(25);
    assertThat(water.given().get(2).depth()).isCloseTo(0.05, within(1e-12));
    assertThat(water.given().get(3).depth()).isCloseTo(0.25, within(1e-12));
    assertThat(water.end()).isCloseTo(60, within(1e-9));
    assertThat(water.greatestAtOnce()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void aSoakLongerThanNeededLeavesTheGroundDryForTheRestOfIt() {
    StandingWater water = water(0.03, 0.01, 2, 10, 50);

    assertThat(water.given())
        .extracting(StandingWater.Point::minutes)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(0.0, 10.0, 30.0, 60.0, 70.0, 90.0);
    assertThat(water.greatest()).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void noWaterStandsWhereTheSoilTakesItInAsFastAsItComes() {
    StandingWater water = water(0.01, 0.01, 1, 40, 0);

    assertThat(water.greatest()).isZero();
    assertThat(water.greatestAtOnce()).isZero();
    assertThat(water.end()).isEqualTo(40);
  }

  @Property
  void whatComesInGoesInAndNothingIsEverBelowTheGround(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.2) double applied,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.2) double takenIn,
      @ForAll @IntRange(min = 1, max = 20) int cycles,
      @ForAll @IntRange(min = 1, max = 60) int minutes,
      @ForAll @IntRange(min = 0, max = 200) int soak) {
    StandingWater water = water(applied, takenIn, cycles, minutes, soak);

    assertThat(water.given()).allMatch(point -> point.depth() >= -1e-12);
    assertThat(water.given().get(water.given().size() - 1).depth()).isCloseTo(0, within(1e-9));
    assertThat(water.greatest()).isLessThanOrEqualTo(water.greatestAtOnce() + 1e-9);
    for (int i = 1; i < water.given().size(); i++) {
      assertThat(water.given().get(i).minutes())
          .isGreaterThanOrEqualTo(water.given().get(i - 1).minutes());
    }
  }

  @Test
  void theCyclesOfTheDemoKeepUnderTheirLimitInBothUnitSystems() {
    for (UnitSystem system : UnitSystem.values()) {
      Book book = Demo.libraryGarden(system).book();
      for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
        StandingWater water = ((StandingWater.Shown) StandingWater.of(book, zone)).water();
        double storage = book.number(Soils.SURFACE_STORAGE.reference(), zone);
        assertThat(water.limit()).isEqualTo(storage);
        boolean runsOff =
            book.number(Emitters.PRECIPITATION_RATE.reference(), zone)
                > book.number(Soils.INTAKE_RATE.reference(), zone);
        assertThat(water.greatestAtOnce() > 0).isEqualTo(runsOff);
        if (runsOff) {
          assertThat(water.greatest()).isLessThanOrEqualTo(storage + 1e-9);
        }
      }
    }
  }

  @Test
  void saysWhatIsMissingWhereThereIsNothingToShow() {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));

    StandingWater.Answer answer = StandingWater.of(design.book(), 0);

    assertThat(answer).isInstanceOf(StandingWater.NotKnown.class);
    assertThat(((StandingWater.NotKnown) answer).sentence())
        .startsWith("Rate on wetted ground: needs");
  }
}
