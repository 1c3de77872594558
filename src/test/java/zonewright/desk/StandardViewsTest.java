package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.IrrigationSheets;
import zonewright.desk.sheets.StandardViews;
import zonewright.sheet.TableDefinition;

/** Each kind of user finds a view of the wide sheets, with the columns it names and no others. */
class StandardViewsTest {
  @ParameterizedTest
  @CsvSource({
    "parts, Estimator, 15, line",
    "parts, Buyer, 9, supplier",
    "found, On the walk, 11, present-minutes",
    "found, Estimator, 15, change",
    "monthly, Seasonal settings, 19, percent-7",
    "monthly, Water of the year, 15, volume-12",
    "monthly, Student, 38, percent-1",
  })
  void aViewHasTheColumnsItNames(String sheet, String view, int columns, String one) {
    TableDefinition table = IrrigationSheets.schema().table(sheet);
    List<String> shown = StandardViews.of(table).get(view);
    assertThat(shown).hasSize(columns).doesNotHaveDuplicates();
    assertThat(shown.get(0)).isEqualTo(table.columns().get(0).reference().column());
    assertThat(shown).as("among %s", shown).contains(one);
  }
}
