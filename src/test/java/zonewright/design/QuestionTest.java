package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Working;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;

final class QuestionTest {
  @Test
  void stepsComeInTheOrderInWhichTheyAreCalculated() {
    Question question =
        new Question(
            Emitters.PRECIPITATION_RATE,
            Map.of(
                Emitters.EMITTER_COUNT, "10", Emitters.EMITTER_FLOW, "1 gpm", Emitters.AREA, "900"),
            UnitSystem.US);

    assertThat(question.steps())
        .extracting(step -> step.column().name())
        .endsWith("Zone flow", "Area", "Rate by area", "Precipitation rate")
        .doesNotContain("Rate by spacing");
  }

  @Test
  void aSumIsFollowedIntoItsOnlyRow() {
    Question question =
        new Question(
            SiteBudget.SITE_WEEK,
            Map.of(
                ZoneBudget.VOLUME_PER_WATERING_DAY,
                "100",
                zonewright.water.Demand.WATERING_DAYS,
                "2"),
            UnitSystem.US);

    assertThat(question.outcome().number()).isEqualTo(200);
    assertThat(question.steps()).extracting(Working::column).contains(ZoneBudget.VOLUME_PER_WEEK);
  }

  @Test
  void theOnlyZoneBelongsToTheFirstProgram() {
    Question question =
        new Question(
            SiteBudget.PROGRAM_WEEK, Map.of(ZoneBudget.VOLUME_PER_WEEK, "300 gal"), UnitSystem.US);

    assertThat(question.shown()).isEqualTo("300 gal");
  }

  @Test
  void whatIsMissingIsNamedWithWhatItLeadsTo() {
    Question question =
        new Question(CycleAndSoak.LONGEST_CYCLE, Map.of(Soils.SOIL_TYPE, "loam"), UnitSystem.US);

    assertThat(question.missing())
        .extracting(Column::name)
        .containsExactlyInAnyOrder("Emitters", "Flow each", "Area", "Slope");
    assertThat(question.insteadOfMissing())
        .extracting(Column::name)
        .contains("Zone flow", "Precipitation rate", "Surface storage");
  }

  @Test
  void aValueOutOfRangeIsAProblemOfItsColumn() {
    Question question =
        new Question(CycleAndSoak.LONGEST_CYCLE, Map.of(Soils.SLOPE, "250 %"), UnitSystem.US);

    assertThat(question.problems())
        .singleElement()
        .satisfies(
            problem -> assertThat(problem.where().column()).isEqualTo(Soils.SLOPE.reference()));
  }

  @Test
  void aValueThatDoesNotMatterIsTold() {
    Question question =
        new Question(
            Emitters.PRECIPITATION_RATE,
            Map.of(Emitters.ZONE_FLOW, "12", Emitters.AREA, "900", Plants.PLANT_FACTOR, "0.5"),
            UnitSystem.US);

    assertThat(question.unused()).extracting(Column::name).containsExactly("Plant factor");
  }

  @Test
  void everyColumnCanBeAskedForWithNothingGiven() {
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      for (Column column : table.columns()) {
        Question question = new Question(column, Map.of(), UnitSystem.SI);

        assertThat(question.shown()).as(column.name()).isNotBlank();
        assertThat(question.outcome() instanceof Outcome.Missing)
            .as(column.name() + " names what is missing")
            .isEqualTo(
                !question.missing().isEmpty()
                    && !question.rowMatters()
                    && !(question.outcome() instanceof Outcome.Blank));
      }
    }
  }
}
