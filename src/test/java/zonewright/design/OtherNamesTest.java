package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.emitters.Emitters;
import zonewright.exchange.ForeignList;
import zonewright.exchange.ListMatch;
import zonewright.exchange.ListProblem;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Words of the trade for what our tables list. Which grasses grow in cool and which in warm seasons
 * is common knowledge of the trade, from memory.
 */
class OtherNamesTest {
  private static ReferenceTable table(Column column) {
    return ((WordList.Published) column.words().orElseThrow()).table();
  }

  @ParameterizedTest
  @CsvSource({
    "Tall fescue, cool-season turf",
    "Kentucky bluegrass, cool-season turf",
    "bermudagrass, warm-season turf",
    "St. Augustine grass, warm-season turf",
    "zoysia, warm-season turf",
    "annuals, annual flowers"
  })
  void plantsAreKnownByTheirOtherNames(String word, String ours) {
    assertThat(table(Plants.PLANT).alsoCalled(word)).contains(ours);
    assertThat(table(Plants.PLANT).position(ours)).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "Spray heads, fixed spray",
    "dripline, drip line",
    "rotary nozzle, multi-stream rotating nozzle"
  })
  void soAreEmitters(String word, String ours) {
    assertThat(table(Emitters.EMITTER).alsoCalled(word)).contains(ours);
    assertThat(table(Emitters.EMITTER).position(ours)).isPresent();
  }

  /** What may be two of ours is asked about: drip may be a line or single emitters. */
  @Test
  void whatMayBeTwoOfOursIsNeither() {
    assertThat(table(Emitters.EMITTER).alsoCalled("drip")).isEmpty();
    assertThat(table(Plants.PLANT).alsoCalled("shrubs")).isEmpty();
    assertThat(table(Plants.PLANT).alsoCalled("lawn")).isEmpty();
  }

  @Test
  void aCellWithAnotherNameIsToldWhatItIsHere() {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    design.book().perform(design.edits().typed(Plants.PLANT.reference(), 0, "zoysia"));
    assertThat(design.book().outcome(Plants.PLANT.reference(), 0).sentence())
        .contains("did you mean “warm-season turf”?");
  }

  @Test
  void inAListTheyBecomeOursAndThatIsToldOnce() throws ListProblem {
    Design design = Design.blank(UnitSystem.US);
    ForeignList list =
        ForeignList.pasted(
            "Zone\tPlant type\tEmitter\n1\tTall Fescue\tspray\n2\ttall fescue\tdrip\n");
    ListMatch.Taken taken = new ListMatch(design.book(), Sheets.ZONES, list).taken();
    assertThat(taken.notes())
        .containsOnlyOnce("Plant type: “Tall Fescue” was read as “cool-season turf”.")
        .contains("Emitter: “spray” was read as “fixed spray”.")
        .anyMatch(note -> note.startsWith("Line 3, Emitter: “drip” is none of the words"));
    design.book().perform(taken.edit());
    assertThat(List.of(0, 1))
        .allSatisfy(
            row ->
                assertThat(design.book().outcome(Plants.PLANT.reference(), row).text())
                    .isEqualTo("cool-season turf"));
  }
}
