package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.design.IrrigationSheets;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

final class ColumnsCommandTest {
  @Test
  void everyColumnIsListedWithWhatItMeans() {
    String text = CommandRun.of("columns").out();
    String markdown = CommandRun.of("columns", "--markdown").out();

    for (TableDefinition table : IrrigationSheets.schema().tables()) {
      for (Column column : table.columns()) {
        assertThat(text).contains("\n" + column.name(), column.meaning());
        assertThat(markdown).contains("\n| " + column.name() + " |", column.meaning());
      }
    }
  }

  @Test
  void aColumnIsToldWithUnitEquationAndSource() {
    CommandRun run = CommandRun.of("columns", "rate by area");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "Rate by area (in/h): calculated", "Equation: = Zone flow ÷ Area", "Bulletin 912");
  }

  @Test
  void anInputIsToldWithItsRangeInTheUnitsAskedFor() {
    CommandRun run = CommandRun.of("columns", "Slope", "Head spacing", "--units", "si");

    assertThat(run.out()).contains("Takes: from 0 % to 100 %", "Head spacing (m)");
  }

  @Test
  void oneSheetCanBeListedAlone() {
    CommandRun run = CommandRun.of("columns", "--sheet", "months");

    assertThat(run.out()).startsWith("Months\n").doesNotContain("Longest cycle");
  }

  @Test
  void everyRowOfAMarkdownTableHasAsManyCells() {
    assertThat(CommandRun.of("columns", "--markdown").out().lines().filter(l -> l.startsWith("|")))
        .hasSizeGreaterThan(100)
        .allMatch(line -> line.replace("\\|", "").chars().filter(c -> c == '|').count() == 8);
  }
}
