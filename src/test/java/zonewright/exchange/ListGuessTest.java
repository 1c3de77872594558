package zonewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** What somebody means by headings of their own. The lists are invented. */
class ListGuessTest {
  private static ListMatch match(String text) throws ListProblem {
    ForeignList list = ForeignList.of(text.getBytes(StandardCharsets.UTF_8), "list.csv");
    return new ListMatch(Design.blank(UnitSystem.US).book(), Sheets.ZONES, list);
  }

  private static Optional<Column> guessed(String text) throws ListProblem {
    ListMatch match = match(text);
    match.guess();
    return match.target(0);
  }

  @Test
  void aWordSharedWithOurNameIsEnoughWhereTheValuesFit() throws ListProblem {
    assertThat(guessed("Zone name\nNorth bed\n")).contains(Facts.ZONE_NAME);
    assertThat(guessed("Watered area (m²)\n100\n")).contains(Emitters.AREA);
    assertThat(guessed("Watered area (m²)\nlarge\n")).isEmpty();
    assertThat(guessed("Watered area (gpm)\n100\n")).isEmpty();
  }

  @Test
  void wordsOfOurListsSayWhichColumnIsMeant() throws ListProblem {
    assertThat(guessed("Ground\nclay\nsand\n")).contains(Soils.SOIL_TYPE);
    assertThat(guessed("Plants\ncool-season turf\nannual flowers\n"))
        .as("the column of that name counts plants, and these are no counts")
        .contains(Plants.PLANT);
    assertThat(guessed("Plants\n12\n40\n")).contains(Emitters.PLANT_COUNT);
  }

  @Test
  void whereLittleSpeaksForAColumnThereIsNoGuess() throws ListProblem {
    assertThat(guessed("Phone\n555 0101\n")).isEmpty();
    assertThat(guessed("Heads\n12\n4\n")).as("heads or their spacing").isEmpty();
  }

  @Test
  void aColumnIsGuessedOnceAndTheUnitIsTold() throws ListProblem {
    ListMatch match = match("Area [m²],Watered area (m²),Note\n5,6,\n");
    assertThat(match.guess()).hasSize(1);
    assertThat(match.target(0).isPresent()).isNotEqualTo(match.target(1).isPresent());
    int position = match.target(0).isPresent() ? 0 : 1;
    assertThat(match.unit(position)).contains(Units.named("m²").orElseThrow());
  }

  @Test
  void nothingIsGuessedUnlessAsked() throws ListProblem {
    ListMatch match = match("Ground\nclay\n");
    assertThat(match.unmatched()).containsExactly(0);
    assertThat(match.suggestions(0)).first().isEqualTo(Soils.SOIL_TYPE);
  }
}
