package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.sheet.TableDefinition;

/** Whoever opens a sheet for the first time is told what it is for. */
class SheetPurposesTest {
  static Iterable<TableDefinition> tables() {
    return IrrigationSheets.schema().tables();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everySheetSaysWhatItIsForInSentences(TableDefinition table) {
    assertThat(table.about()).matches("[A-Z].{20,}\\.");
  }
}
