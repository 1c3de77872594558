package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.climate.Radiation;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Working;
import zonewright.units.UnitSystem;

/** How workings speak: nothing of the inside of the program, nothing said twice. */
class WorkingWordsTest {
  private static final Pattern US_UNIT =
      Pattern.compile("\\d (?:ft²|ft|in|gpm|gal|psi|in/h|in/day|°F)(?![\\w/²])");
  private static final Pattern NOTHING_IN_A_UNIT =
      Pattern.compile("[≤≥<>] 0 (?:ft|in|gpm|gal|psi)");

  private static final Pattern LEAK =
      Pattern.compile(
          "\\bin in\\b|\\bof in\\b| in $|(?<!\\d) in [)×÷,]|not known [+−×÷]|0\\.00000");

  private static List<Working> workings(UnitSystem system) {
    Book book = Demo.libraryGarden(system).book();
    List<Working> workings = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.columns()) {
        if (column.formula().isPresent() && book.rows(table.id()) > 0) {
          workings.add(book.working(column.reference(), 0));
        }
      }
    }
    return workings;
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsSaidTwiceAndNoUnitReadsAsAWord(UnitSystem system) {
    List<String> wrong = new ArrayList<>();
    for (Working working : workings(system)) {
      List<String> lines = working.equations();
      boolean twice = lines.stream().distinct().count() < lines.size();
      boolean leaks = lines.stream().anyMatch(line -> LEAK.matcher(line).find());
      if (twice || leaks || NOTHING_IN_A_UNIT.matcher(working.symbols()).find()) {
        wrong.add(working.asText());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void aMetricDesignIsWorkedInMetricUnits() {
    assertThat(
            workings(UnitSystem.SI).stream()
                .filter(working -> working.column().words().isEmpty())
                .map(working -> working.numbers() + " = " + working.shown())
                .filter(line -> US_UNIT.matcher(line).find()))
        .isEmpty();
  }

  @Test
  void aShareAndATimeAreWrittenOnceAsTheCellShowsThem() {
    List<Working> constants =
        workings(UnitSystem.US).stream()
            .filter(working -> working.origin().equals("default") && working.inputs().isEmpty())
            .filter(
                working ->
                    working.column().kind().percent() || working.column().kind().onCalendar())
            .toList();
    assertThat(constants)
        .isNotEmpty()
        .allSatisfy(working -> assertThat(working.equations()).containsExactly(working.shown()));
  }

  @Test
  void verySmallNumbersStandInPowersOfTen() {
    assertThat(Radiation.NET_LONG_WAVE.equation().orElseThrow()).contains("4.903 × 10⁻⁹");
  }
}
