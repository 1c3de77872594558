package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

class AtAGlanceTest {
  @Test
  void whatIsLookedAtFirstIsThereUnderThatName() {
    AtAGlance.results()
        .forEach(
            (id, names) -> {
              TableDefinition table = IrrigationSheets.schema().table(id);
              assertThat(table.columns()).extracting(Column::name).containsAll(names);
              assertThat(table.columns())
                  .filteredOn(column -> !AtAGlance.shows(table, column))
                  .as("what may wait in " + id)
                  .isNotEmpty();
            });
  }

  /** Lines are found again by their names. */
  @Test
  void noGroupOfLinesOfAOneRowSheetIsCalledAsALine() {
    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      if (table.single()) {
        assertThat(table.columns())
            .extracting(Column::name)
            .doesNotContainAnyElementsOf(table.columns().stream().map(Column::band).toList());
      }
    }
  }
}
