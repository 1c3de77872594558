package zonewright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every bundled table promises, whatever it is about. */
class TradeTablesTest {
  private static final Pattern UNIT = Pattern.compile(".*\\(([^()]+)\\)");
  private static final Set<String> UNITS =
      Set.of("in", "in/h", "in/ft", "in/in", "ft", "mm", "gpm", "psi", "ohm/1000 ft");

  /** Headings whose cells are numbers without a unit. */
  private static final Set<String> PLAIN_NUMBERS =
      Set.of(
          "Plant factor",
          "Allowed depletion",
          "Low",
          "Typical",
          "High",
          "Distribution uniformity",
          "Irrigation efficiency",
          "Hazen-Williams C");

  /** How far a figure has been checked; a cell may say different words for different columns. */
  private static final List<String> STANDINGS =
      List.of("verified", "from memory", "derived", "common practice", "computed from columns");

  static List<TradeTable> tables() {
    return TradeTable.all().toList();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyTableHasRowsAsWideAsItsHeadings(TradeTable table) {
    assertThat(table.rows())
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.size()).isEqualTo(table.headings().size()));
  }

  // Source of the line ends: RFC 4180, section 2, rule 1.
  @ParameterizedTest
  @MethodSource("tables")
  void everyTableIsUtf8WithTheLineEndsOfRfc4180(TradeTable table) {
    String text = TradeTable.text(table.path());
    assertThat(text).endsWith("\r\n").doesNotStartWith("\uFEFF");
    assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
  }

  // A spreadsheet program cannot address a table column whose heading holds a square bracket.
  @ParameterizedTest
  @MethodSource("tables")
  void headingsAreUniqueAndCanBeUsedInStructuredReferences(TradeTable table) {
    assertThat(table.headings())
        .doesNotHaveDuplicates()
        .allSatisfy(heading -> assertThat(heading).isNotBlank().doesNotContain("[", "]", "#", "'"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowSaysWhereItComesFromAndHowFarThatWasChecked(TradeTable table) {
    int width = table.headings().size();
    assertThat(table.headings().subList(width - 2, width)).containsExactly("Source", "Status");
    assertThat(table.rows())
        .allSatisfy(
            row -> {
              assertThat(row.get("Source")).isNotBlank();
              assertThat(row.get("Status").split("; "))
                  .allSatisfy(part -> assertThat(STANDINGS).anyMatch(part::contains));
            });
  }

  @ParameterizedTest
  @MethodSource("tables")
  void noRowCanBeMistakenForAnother(TradeTable table) {
    int keyColumns = table.path().equals("plants/plant-factors.csv") ? 3 : 1;
    assertThat(table.rows().stream().map(row -> row.toList().subList(0, keyColumns)))
        .doesNotHaveDuplicates()
        .allSatisfy(key -> assertThat(key).noneMatch(String::isBlank));
  }

  /** A comma would split an entry of a drop-down list, and {@code * ? ~} are lookup wildcards. */
  @ParameterizedTest
  @MethodSource("tables")
  void keysCanStandInDropDownListsAndLookups(TradeTable table) {
    assertThat(table.rows())
        .allSatisfy(
            row ->
                assertThat(row.get(0))
                    .isEqualTo(row.get(0).strip())
                    .doesNotContain(",", "*", "?", "~", "\"")
                    .hasSizeLessThanOrEqualTo(40));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyFigureIsAPlainNumberAndNeverNegative(TradeTable table) {
    Set<String> mayBeBlank = new HashSet<>(Set.of("Low", "Typical", "High"));
    if (table.path().equals("pipes/pipes.csv")) {
      // Pipe made to its inside diameter has no one outside diameter, and averages are not printed
      // for every class.
      mayBeBlank.addAll(
          Set.of("Outside diameter (in)", "Least wall (in)", "Average inside diameter (in)"));
    }
    for (String heading : table.headings()) {
      boolean hasUnit = UNIT.matcher(heading).matches();
      if (!hasUnit && !PLAIN_NUMBERS.contains(heading)) {
        continue;
      }
      for (CSVRecord row : table.rows()) {
        String cell = row.get(heading);
        if (cell.isEmpty() && mayBeBlank.contains(heading)) {
          continue;
        }
        assertThat(cell).as("%s of %s", heading, row.get(0)).matches("[0-9]+(\\.[0-9]+)?");
        assertThat(new BigDecimal(cell)).isNotNegative();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void unitsInHeadingsAreThoseTheTradeWrites(TradeTable table) {
    assertThat(table.headings())
        .filteredOn(heading -> heading.contains("("))
        .allSatisfy(
            heading -> {
              var unit = UNIT.matcher(heading);
              assertThat(unit.matches()).isTrue();
              assertThat(UNITS).contains(unit.group(1));
            });
  }

  @Test
  void aTableThatIsNotThereIsNamed() {
    assertThat(catchThrowable(() -> TradeTable.read("soil/no.csv")))
        .hasMessageContaining("zonewright/soil/no.csv");
  }
}
