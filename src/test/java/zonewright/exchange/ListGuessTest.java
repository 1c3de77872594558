package zonewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.IrrigationSheets;
import zonewright.design.Synonyms;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
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
  void aFlowBesideANumberOfHeadsIsThatOfEachWhereItDoesNotGrowWithTheNumber() throws ListProblem {
    assertThat(second("Qty,GPM\n4,1.5\n9,1.5\n14,1.6\n")).contains(Emitters.EMITTER_FLOW);
    assertThat(second("Qty,GPM\n4,6\n9,13.5\n14,22\n")).contains(Emitters.ZONE_FLOW);
  }

  private static Optional<Column> second(String text) throws ListProblem {
    ListMatch match = match(text);
    match.guess();
    return match.target(1);
  }

  @Test
  void whereLittleSpeaksForAColumnThereIsNoGuess() throws ListProblem {
    assertThat(guessed("Phone\n555 0101\n")).isEmpty();
    assertThat(guessed("Heads\ntall\nlow\n")).as("no numbers of heads").isEmpty();
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
  void otherNamesOfTheTradeAreKnown() throws ListProblem {
    ListMatch match =
        match(
            """
            Station,Description,Size,Planting,Heads,Head type,GPM per head,Soil type,Grade (%),DU,Remarks
            1,Front lawn,900,turf,12,rotor,2.1,loam,3,0.7,by the drive
            2,Rose bed,240,roses,8,bubbler,0.5,clay,0,0.8,
            """);
    match.guess();
    assertThat(IntStream.range(0, 11).mapToObj(at -> match.target(at).orElseThrow()).toList())
        .containsExactly(
            Facts.ZONE_NAME,
            Facts.ZONE_PLACE,
            Emitters.AREA,
            Plants.PLANT,
            Emitters.EMITTER_COUNT,
            Emitters.EMITTER,
            Emitters.EMITTER_FLOW,
            Soils.SOIL_TYPE,
            Soils.SLOPE,
            Emitters.DISTRIBUTION_UNIFORMITY,
            Facts.ZONE_NOTE);
  }

  @Test
  void aWordThatIsNoneOfOursIsToldAndKept() throws ListProblem {
    ListMatch match = match("Station,Planting\n1,Cool-Season Turf\n2,roses\n");
    match.guess();
    assertThat(match.taken().notes())
        .containsExactly(
            "Line 3, Planting: “roses” is none of the words for Plant type; kept as it stands,"
                + " choose another in the grid.");
    assertThat(match.entry(1, 1)).isEqualTo(new Entry.Words("roses"));
  }

  @Test
  void theSurestGuessComesFirst() throws ListProblem {
    ListMatch match = match("Soil of the place,Soil type\nclay,loam\nclay,loam\n");
    match.guess();
    assertThat(match.target(1)).contains(Soils.SOIL_TYPE);
    assertThat(match.target(0)).isNotEqualTo(match.target(1));
  }

  @ParameterizedTest
  @CsvSource({
    "GPM per head, 2.1, 2.1 gpm",
    "Square feet, 900, 900 ft²",
    "Area sq ft, 900, 900 ft²",
    "Head spacing in row, 5, 5 m"
  })
  void aUnitInTheWordsOfAHeadingIsTakenInAnyDesign(String heading, String value, String typed)
      throws ListProblem {
    ForeignList list =
        ForeignList.of((heading + "\n" + value + "\n").getBytes(StandardCharsets.UTF_8), "l.csv");
    Book book = Design.blank(UnitSystem.SI).book();
    ListMatch match = new ListMatch(book, Sheets.ZONES, list);
    match.guess();
    Column column = match.target(0).orElseThrow();
    assertThat(match.entry(0, 0)).isEqualTo(Entries.read(column, typed, book.system()));
  }

  @Test
  void everyOtherNameBelongsToAColumnAndToNoSecondOne() {
    Map<String, String> seen = new HashMap<>();
    Map<String, Column> columns = new HashMap<>();
    List<Column> all =
        IrrigationSheets.schema().tables().stream()
            .flatMap(table -> table.columns().stream())
            .toList();
    for (Column column : all) {
      columns.put(column.reference().key(), column);
      for (String name : Synonyms.of(column)) {
        assertThat(name).matches("[a-z0-9 ]+");
        assertThat(seen.put(name, column.name())).as(name).isNull();
      }
    }
    assertThat(columns.keySet()).containsAll(Synonyms.columns());
  }

  @Test
  void everyNameOverAListBelongsToOneOfItsColumns() {
    for (String table : List.of(Sheets.FOUND, Sheets.PARTS)) {
      Map<String, String> seen = new HashMap<>();
      Set<String> columns = new HashSet<>();
      for (Column column : IrrigationSheets.schema().table(table).inputs()) {
        columns.add(column.reference().key());
        for (String name : ListHeadings.of(column)) {
          assertThat(name).matches("[a-z0-9 ]+");
          assertThat(seen.put(name, column.name())).as(name).isNull();
        }
      }
      assertThat(columns)
          .containsAll(
              ListHeadings.columns().stream().filter(key -> key.startsWith(table + ".")).toList());
    }
  }

  @Test
  void nothingIsGuessedUnlessAsked() throws ListProblem {
    ListMatch match = match("Ground\nclay\n");
    assertThat(match.unmatched()).containsExactly(0);
    assertThat(match.suggestions(0)).first().isEqualTo(Soils.SOIL_TYPE);
  }
}
